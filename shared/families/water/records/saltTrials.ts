import { count, gPerLitre, minutes, text } from '../../../units/quantities';
import type { SaltCode, SaltEvidence, SaltStanding } from '../kernels/salt';
import { SALT_EVIDENCE, SALT_FISH, SALT_STAGES, saltMajority, saltStanding } from '../kernels/salt';
import { column, defineFunction, fields, rows } from '../../../functions/define';
import { choice, num } from '../../../functions/params';

export const SALT_CONFLICT =
  'Most trials with larvae and fry have them alive at 2 g/L and about 4 g/L for days; one ' +
  'grew more of them at 4 to ' +
  '6 g/L. One paper found half dead at 0.6 to 0.7 g/L: it stands alone, 6 to 14 times below the others, so try 50 ' +
  'fish for a day first. Hybrids bear less: stop at 4. Never above 6 with larvae, never 10.';
export const SALT_SOURCES = [
  'GBULUBO98',
  'KAWAMURA17',
  'FRYSALT11',
  'CLARSALT',
  'HETSALT',
  'HYBSALT',
  'HETEROPN20',
  'BORODE05',
  'CALABAR',
];
const stageParam = choice(SALT_STAGES, {
  doc: 'Age: eggs, larvae (from hatch to weaned fry), fingerlings or juveniles.',
  aliases: {
    'yolk-sac fry': 'larvae',
    'yolk sac fry': 'larvae',
    'swim-up fry': 'larvae',
    'swim up fry': 'larvae',
    fry: 'larvae',
    egg: 'eggs',
    larva: 'larvae',
    fingerling: 'fingerlings',
    juvenile: 'juveniles',
  },
});

const WORDS: Readonly<Record<SaltCode, string>> = {
  borne: 'Borne',
  disputed: 'Disputed',
  harmful: 'Harmful',
  untried: 'Not tried so strong',
};
const told = ({ fish, result, exposure, isOutlier }: SaltEvidence): string =>
  `${fish}, ${exposure}: ${result}${isOutlier ? ' (stands alone)' : ''}`;
const listOf = (
  trials: readonly { readonly trial: SaltEvidence; readonly says: SaltStanding }[],
  kind: SaltStanding,
): string =>
  trials
    .filter(({ says }) => says === kind)
    .map(({ trial }) => told(trial))
    .join('; ');

export const saltLimits = defineFunction({
  id: 'SALT.LIMITS',
  version: 2,
  family: 'Water',
  summary: 'Published salt limits of catfish eggs, fry and juveniles, with what each trial saw.',
  questions: [
    'how much salt can they bear',
    'salt limits of eggs and fry',
    'published salt trials',
    'salt limit',
  ],
  params: {
    stage: choice(['all', ...SALT_STAGES] as const, { default: 'all', doc: 'Stage to list, or all.' }),
  },
  returns: rows(
    {
      fish: column('Fish', text),
      stage: column('Stage', text),
      borne: column('Borne up to', gPerLitre, 'Blank where the text names no level.'),
      harm: column('Harm at', gPerLitre, 'Killed half or more, or hatched none.'),
      exposure: column('Exposure', text),
      result: column('Result', text),
      source: column('Source', text),
    },
    'One row per published trial.',
  ),
  valid: 'As reported; other strains, waters and temperatures differ',
  sources: SALT_SOURCES,
  cautions: ['BATH'],
  help: SALT_CONFLICT,
  examples: [
    {
      args: ['eggs'],
      gives: [
        ['African catfish', 'eggs', '5', '8', 'incubation', 'hatch normal at 0 to 5, none at 8', 'GBULUBO98'],
        [
          'Heterobranchus longifilis',
          'eggs',
          '3',
          '9',
          'incubation',
          'hatch 88 % at 0, 78 at 3, 69 at 6, 53 at 7.5, none at 9',
          'HETSALT',
        ],
        ['hybrid', 'eggs', '0', '', 'incubation', 'hatch falls steadily from 0 to 10', 'BORODE05'],
      ],
      because: 'Three abstracts.',
    },
    {
      args: ['adults'],
      fails: { code: '#VALUE!', says: 'expected one of' },
      because: 'No such stage in the list.',
    },
  ],
  compute: ({ stage }) =>
    SALT_EVIDENCE.filter((e) => stage === 'all' || e.stage === stage).map(
      ({ fish, stage: at, borne, harm, exposure, result, source, isOutlier }) => ({
        fish,
        stage: at,
        borne: borne ?? '',
        harm: harm ?? '',
        exposure,
        result: isOutlier ? `${result} (stands alone)` : result,
        source,
      }),
    ),
});

export const saltCheck = defineFunction({
  id: 'SALT.CHECK',
  family: 'Water',
  summary: 'Whether a salt strength and time is within what trials saw catfish of a stage bear.',
  params: {
    strength: num(gPerLitre, { min: 0, max: 300, doc: 'Salt in the bath or vat.' }),
    time: num(minutes, { above: 0, max: 100000, doc: 'Minutes in it; 1440 is a day.' }),
    stage: stageParam,
    fish: choice(SALT_FISH, {
      doc: 'Whose young; a hybrid bears less.',
      aliases: {
        longifilis: 'Heterobranchus longifilis',
        catfish: 'African catfish',
        clarias: 'African catfish',
      },
      default: 'African catfish',
    }),
  },
  returns: fields(
    {
      verdict: column('Verdict', text),
      bears: column('Trials that bear it', count),
      harms: column('Trials that saw harm', count),
      remark: column(
        'Which',
        text,
        'Every trial that says something, relatives too; the one that stands alone is named.',
      ),
      code: column('Code', text, 'borne, disputed, harmful or untried.'),
    },
    'The majority of the trials with that fish and age; relatives are listed, not counted.',
  ),
  version: 2,
  valid: 'African catfish and near kin, hours to weeks; what is borne for days is borne for minutes',
  sources: SALT_SOURCES,
  cautions: ['BATH'],
  questions: [
    'is this salt bath safe',
    'too much salt for fry',
    'can fingerlings bear this salt',
    'how much salt can fry stand',
    'is 5 grams of salt per litre safe for larvae',
    'salt bath for catfish fry',
    'can I put salt with eggs',
  ],
  help: SALT_CONFLICT,
  examples: [
    {
      args: [2, 1440, 'fry'],
      gives: [
        [
          'Borne: 2 of 3 trials with larvae of African catfish had them alive. Try 50 fish for a day first.',
          '2',
          '1',
          'For: African catfish, 21 d: 49 to 55 % alive at 2, 4, 5 and 6; 24 to 31 at 0, 1, 3 and 7; African ' +
            'catfish, days: half dead at 8 to 11 raised by 1 a day; after 50 to 59 h at 10 at once. ' +
            'Against: African catfish, 24 h: half the yolk-sac fry dead at 0.61, of the swim-up fry at 0.70 ' +
            '(stands alone). ' +
            'Relatives for: hybrid, 96 h: 14 days old: 90, 88, 78, 10 % alive at 0, 2, 4, 6; half at 4.4; ' +
            'Heterobranchus longifilis, 96 h: half dead at 4.35.',
          'borne',
        ],
      ],
      because: 'Two trials against one that stands alone; whatever word is typed for young fish.',
    },
    {
      args: [10, 1440, 'swim-up fry'],
      gives: 'Harmful: 2 of 3 trials with larvae of African catfish saw half or more dead.',
      because: 'Nobody kept larvae at 10 g/L for days.',
    },
    {
      args: [5, 15, 'adults'],
      fails: { code: '#VALUE!', says: 'expected one of' },
      because: 'No such stage in the list.',
    },
  ],
  compute: ({ strength, stage, fish }) => {
    const trials = SALT_EVIDENCE.filter((e) => e.stage === stage).map((trial) => ({
      trial,
      says: saltStanding(strength, trial),
    }));
    const own = trials.filter(({ trial }) => trial.fish === fish);
    const kin = trials.filter(({ trial }) => trial.fish !== fish);
    const code = saltMajority(own.map(({ says }) => says));
    const [bears, harms] = (['bears', 'harms'] as const).map(
      (kind) => own.filter(({ says }) => says === kind).length,
    );
    const outcome: Readonly<Record<SaltCode, string>> = {
      borne: `${bears ?? 0} of ${own.length} trials with ${stage} of ${fish} had them alive. Try 50 fish for a day first.`,
      disputed: `as many trials with ${stage} of ${fish} had them alive as saw half dead. Go lower.`,
      harmful: `${harms ?? 0} of ${own.length} trials with ${stage} of ${fish} saw half or more dead.`,
      untried: `no trial with ${stage} of ${fish} says anything of ${strength} g/L. Go lower.`,
    };
    const lists = [
      ['For', listOf(own, 'bears')],
      ['Against', listOf(own, 'harms')],
      ['Relatives for', listOf(kin, 'bears')],
      ['Relatives against', listOf(kin, 'harms')],
    ] as const;
    return {
      verdict: `${WORDS[code]}: ${outcome[code]}`,
      bears: bears ?? 0,
      harms: harms ?? 0,
      remark: lists.flatMap(([what, list]) => (list === '' ? [] : [`${what}: ${list}.`])).join(' '),
      code,
    };
  },
});

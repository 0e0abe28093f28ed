import {
  celsius,
  gPerLitre,
  gram,
  litre,
  microsiemens,
  minutes,
  share,
  text,
} from '../../../units/quantities';
import { refuse } from '../../../base/values';
import type { SaltEvidence } from '../kernels/salt';
import { MG_SALT_PER_MICROSIEMENS, SALT_EVIDENCE, SALT_STAGES, saltGrams } from '../kernels/salt';
import { column, defineFunction, fields, rows, value } from '../../../functions/define';
import { choice, num } from '../../../functions/params';

const CONFLICT =
  'The papers on African catfish disagree tenfold: one kills half the yolk-sac fry in ' +
  'a day at 0.61 g/L, another keeps fry two days at 10 g/L and hatches eggs up to 5 ' +
  'g/L. Go by the careful one, and try a few fish first.';
const SOURCES = ['GBULUBO98', 'FRYSALT11', 'CLARSALT', 'HETSALT', 'HYBSALT'];
const stageParam = choice(SALT_STAGES, {
  doc: 'Stage of the fish.',
  aliases: {
    'yolk sac fry': 'yolk-sac fry',
    'swim up fry': 'swim-up fry',
    egg: 'eggs',
    larva: 'larvae',
    fingerling: 'fingerlings',
    juvenile: 'juveniles',
  },
});

export const saltDose = defineFunction({
  id: 'SALT.DOSE',
  family: 'Water',
  summary: 'Grams of salt for a wished strength in a vat, a wash for sticky eggs or a bath.',
  questions: [
    'how much salt to add',
    '3 g per litre salt',
    'how many kg salt for 1000 litres',
    'salt for egg wash',
    '0.9% saline',
    'how much salt I go put',
  ],
  params: {
    volume: num(litre, { above: 0, max: 1e7, doc: 'Water to be salted.' }),
    wanted: num(gPerLitre, { min: 0, max: 300, doc: 'Salt wanted. 0.5 % is 5 g/L.' }),
    present: num(gPerLitre, { min: 0, max: 300, default: 0, doc: 'Salt in the water now. 0 when left out.' }),
    purity: num(share, { above: 0, max: 1, default: 1, doc: 'Share of the product that is salt.' }),
  },
  returns: value(gram, 'Plain salt, without iodide or anti-caking agent by custom.'),
  valid:
    'Exact to 1.6 % up to 30 g/L, where the water swells by the salt; it says nothing ' +
    'about what fish bear (SALT.CHECK)',
  sources: ['DEFINITION', ...SOURCES],
  cautions: ['BATH'],
  help: `Before salting water with eggs or fry look at SALT.CHECK and SALT.LIMITS. ${CONFLICT}`,
  examples: [
    { args: [20, 0.5], gives: '10.0', because: '20 L at half a gram per litre.' },
    { args: [1000, 5, 1, 0.95], gives: '4211', because: 'Four grams per litre more, salt of 95 %.' },
    {
      args: [1000, 1, 5],
      fails: { code: '#VALUE!', says: 'already' },
      because: 'Salt cannot be taken out by adding.',
    },
  ],
  compute: ({ volume, wanted, present, purity }) =>
    wanted < present
      ? refuse(
          `wanted: the water already holds ${present} g/L, more than ${wanted}. Exchange water (EXCHANGE.VOLUME).`,
        )
      : saltGrams(volume, wanted, present, purity),
});

export const saltFromConductivity = defineFunction({
  id: 'SALT.CONTENT',
  family: 'Water',
  summary: 'Salt in fresh water from the rise of its conductivity, g/L.',
  questions: ['salt from conductivity', 'check salt with TDS meter', 'tds to salt'],
  params: {
    reading: num(microsiemens, {
      min: 0,
      max: 100000,
      doc: 'Conductivity with the salt, at 20 °C.',
      published: {
        max: 950,
        source: 'WATERUNITS',
        because: 'The factor holds for weak salt, up to 0.5 g/L; weigh the salt in above that.',
      },
    }),
    before: num(microsiemens, {
      min: 0,
      max: 100000,
      default: 0,
      doc: 'Conductivity of the water before salting. 0 when left out.',
    }),
    temperature: num(celsius, {
      min: 0,
      max: 40,
      default: 20,
      doc: 'Temperature the readings refer to: 20, or 25 for a meter that compensates to 25.',
    }),
  },
  returns: value(gPerLitre, 'Salt.'),
  valid: 'Sodium chloride up to 0.5 g/L; 2 % per °C from memory',
  sources: ['WATERUNITS', 'ECMEM'],
  examples: [
    { args: [800], gives: '0.42', because: '0.53 mg/L for each µS/cm at 20 °C.' },
    { args: [5000], fails: { code: '#N/A', says: '0.5 g/L' }, because: 'Too strong for the factor.' },
  ],
  compute: ({ reading, before, temperature }) =>
    (Math.max(0, reading - before) * MG_SALT_PER_MICROSIEMENS) / 1000 / (1 + 0.02 * (temperature - 20)),
});

export const saltLimits = defineFunction({
  id: 'SALT.LIMITS',
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
      harm: column('Harm at', gPerLitre, 'Killed half, killed all or hatched none, as the result says.'),
      exposure: column('Exposure', text),
      result: column('Result', text),
      source: column('Source', text),
    },
    'One row per published trial.',
  ),
  valid: 'As reported; other strains, waters and temperatures differ',
  sources: SOURCES,
  cautions: ['BATH'],
  help: CONFLICT,
  examples: [
    {
      args: ['eggs'],
      gives: [
        ['African catfish', 'eggs', '8', 'incubation', 'hatch normal at 0 to 5, none at 8 g/L', 'GBULUBO98'],
      ],
      because: 'Abstract of Gbulubo and Erondu 1998.',
    },
    {
      args: ['adults'],
      fails: { code: '#VALUE!', says: 'expected one of' },
      because: 'No such stage in the list.',
    },
  ],
  compute: ({ stage }) =>
    SALT_EVIDENCE.filter((e) => stage === 'all' || e.stage === stage).map(
      ({ fish, stage: at, harm, exposure, result, source }) => ({
        fish,
        stage: at,
        harm,
        exposure,
        result,
        source,
      }),
    ),
});

const verdictFor = (strength: number, time: number, rowsOf: readonly SaltEvidence[]): string => {
  const isShort = time <= 15;
  const worst = rowsOf.reduce((least, e) => (e.harm < least.harm ? e : least));
  const bath = rowsOf.find((e) => e.exposure.startsWith('15 min'));
  if (bath && isShort && strength <= bath.borne)
    return 'Within what was used for 15 minutes. Watch the fish and end it at the first sign of distress.';
  if (bath && isShort) return `Too strong: no more than ${bath.borne} g/L for 15 minutes was published.`;
  if (strength >= worst.harm) return `Dangerous: ${worst.result} (${worst.fish}).`;
  if (strength > worst.harm / 2) return `Near the harmful level: ${worst.result} (${worst.fish}).`;
  return 'Below half of the lowest level that did harm in the trials found.';
};

export const saltCheck = defineFunction({
  id: 'SALT.CHECK',
  family: 'Water',
  summary: 'Whether a salt strength and time is within what trials saw catfish of a stage bear.',
  questions: ['is this salt bath safe', 'too much salt for fry', 'can fingerlings bear this salt'],
  params: {
    strength: num(gPerLitre, { min: 0, max: 300, doc: 'Salt in the bath or vat.' }),
    time: num(minutes, { above: 0, max: 100000, doc: 'Minutes in it; 1440 is a day.' }),
    stage: stageParam,
  },
  returns: fields(
    {
      verdict: column('Verdict', text),
      harm: column('Lowest harm found at', gPerLitre),
      borne: column('Borne in the same trial', gPerLitre),
      remark: column('Remark', text),
    },
    'Against the most careful trial found for the stage.',
  ),
  valid: 'African catfish and near kin; baths of up to 15 minutes only where a trial used them',
  sources: SOURCES,
  cautions: ['BATH'],
  help: CONFLICT,
  examples: [
    {
      args: [0.5, 15, 'yolk-sac fry'],
      gives: [
        [
          'Within what was used for 15 minutes. Watch the fish and end it at the first sign of distress.',
          '0.61',
          '0.8',
          CONFLICT,
        ],
      ],
      because: 'The trial used 0.2 to 0.8 g/L.',
    },
    {
      args: [5, 1440, 'swim-up fry'],
      gives: 'Dangerous: 0.2 to 1.0 g/L for 15 min used; half dead in 24 h at 0.70 g/L (African catfish).',
      because: 'The habit of 5 g/L is no harmless one for fry.',
    },
    {
      args: [5, 15, 'adults'],
      fails: { code: '#VALUE!', says: 'expected one of' },
      because: 'No such stage in the list.',
    },
  ],
  compute: ({ strength, time, stage }) => {
    const found = SALT_EVIDENCE.filter((e) => e.stage === stage);
    const worst = found.reduce((least, e) => (e.harm < least.harm ? e : least));
    return {
      verdict: verdictFor(strength, time, found),
      harm: worst.harm,
      borne: worst.borne,
      remark: CONFLICT,
    };
  },
});

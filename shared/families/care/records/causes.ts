import type { Cause } from '../kernels/causes';
import { hatchCauses, LARVAL_CAUSES, PATTERNS } from '../kernels/causes';
import { count, share, text } from '../../../units/quantities';
import { refuse } from '../../../base/values';
import { column, defineFunction, rows } from '../../../functions/define';
import { choice, flag, num } from '../../../functions/params';

const columns = {
  order: column('Look', count),
  cause: column('May be', text),
  look: column('Check', text),
  figure: column('What is known', text),
};
const numbered = (causes: readonly Cause[]) => causes.slice(0, 4).map((c, i) => ({ order: i + 1, ...c }));
const HELP =
  'Two to four causes in the order to look at them, never one verdict and never a drug. ' +
  'Write down what you find: the next run learns from it.';

export const hatchWhy = defineFunction({
  id: 'HATCH.WHY',
  family: 'Checks',
  summary: 'Why did the hatch fail? Likely causes from what was counted, with what to look at next.',
  params: {
    fertilised: num(share, { min: 0, max: 1, optional: true, doc: 'Share fertilised at 12 h, if counted.' }),
    hatched: num(share, { min: 0, max: 1, optional: true, doc: 'Share of all eggs that hatched.' }),
    whiteSoon: flag(false, 'TRUE when nearly all were white within hours.'),
    cotton: flag(false, 'TRUE when cotton grew on the eggs.'),
    early: flag(false, 'TRUE when they hatched early and weak, or very drawn out.'),
    deformed: num(share, { min: 0, max: 1, optional: true, doc: 'Share of bent or swollen larvae.' }),
  },
  returns: rows(columns, 'In the order to look at them.'),
  valid: 'African catfish; a guide put together from seen trials and practice, not a diagnosis',
  sources: ['AUDU23', 'RURANGWA98', 'SWING', 'ACEH19', 'SHARAF12', 'PRACTICE'],
  cautions: ['BANNED'],
  questions: [
    'why did my eggs not hatch',
    'eggs turned white',
    'fungus on eggs',
    'low hatch rate',
    'bad hatching cause',
    'larvae are bent',
    'eggs failed',
  ],
  help: HELP,
  examples: [
    {
      args: [0.95, 0.02],
      gives: [
        [
          '1',
          'Stripped too late or too early',
          'Hours from injection to strip, temperature of that night (SPAWN.STRIP.ADVICE)',
          '99 % fertilised at 15 h, hatch 2 % at 17 h in one trial (Audu 2023)',
        ],
        [
          '2',
          'Temperature swing or heat',
          'Lowest and highest of the night',
          '57 % hatch in the narrowest range, none at 19 to 37 °C',
        ],
        [
          '3',
          'Oxygen short at the eggs',
          'Oxygen in the last hours, heaps of eggs, still water',
          '30 to 83 % hatch with none to 12 h of shower; best near saturation',
        ],
        [
          '4',
          'pH or very soft or hard water',
          'pH at strip and next morning, hardness',
          'Best 6.7 to 7.6; none at 3.4 or 10',
        ],
      ],
      because: 'Well fertilised and hardly any hatch.',
    },
    {
      args: [null, null],
      fails: { code: '#VALUE!', says: 'Give what was seen' },
      because: 'Nothing was said.',
    },
    { args: [95, 0.02], fails: { code: '#VALUE!', says: '95%' }, because: 'A share of 95 % is 0.95.' },
  ],
  compute: (signs) => {
    const seen = [signs.fertilised, signs.hatched, signs.deformed].some((x) => x !== undefined);
    if (!seen && !signs.whiteSoon && !signs.cotton && !signs.early)
      return refuse('fertilised: Give what was seen: a share fertilised or hatched, or a TRUE.');
    const causes = hatchCauses(signs);
    return causes.length > 0
      ? numbered(causes)
      : [
          {
            order: 1,
            cause: 'Nothing stands out',
            look: 'Compare with your own last runs',
            figure: '28 to 90 % hatch is seen in this fish',
          },
        ];
  },
});

export const larvaeWhy = defineFunction({
  id: 'LARVAE.WHY',
  family: 'Checks',
  summary: 'Why do larvae or fry die? Likely causes from the pattern, with what to look at next.',
  params: {
    pattern: choice(PATTERNS, {
      doc:
        'What it looks like: all at once, day 3 to 8, few big ones, bodies missing, bellies ' +
        'burst, at weaning, slow every day.',
      aliases: {
        sudden: 'all at once',
        cannibals: 'few big ones',
        missing: 'bodies missing',
        weaning: 'at weaning',
        'burst bellies': 'bellies burst',
      },
    }),
  },
  returns: rows(columns, 'In the order to look at them.'),
  valid: 'African catfish; a guide put together from seen trials and practice, not a diagnosis',
  sources: ['JANSSEN85', 'HOU15', 'CHEP11', 'MAKERERE', 'RIS87', 'KISANGANI', 'PRACTICE'],
  cautions: ['BANNED', 'AMMONIA'],
  questions: [
    'why are my larvae dying',
    'fry die at day 5',
    'fry disappear',
    'fish eat each other',
    'swollen belly fry',
    'all my fry died',
  ],
  help: HELP,
  examples: [
    {
      args: ['few big ones'],
      gives: [
        [
          '1',
          'Eaten by the bigger ones',
          'Tails bitten, size spread (SPAWN.SIZE.SPREAD), grade now',
          '37 % in 14 days; 0.2 % left at day 45 unsorted',
        ],
      ],
      because: 'Numbers melt without bodies.',
    },
    { args: ['sad'], fails: { code: '#VALUE!', says: 'expected one of' }, because: 'Not a pattern.' },
  ],
  compute: ({ pattern }) => numbered(LARVAL_CAUSES[pattern]),
});

// Long: records of one subject, each with its texts, questions and examples.
import { GRADING_INTERVAL, ONSET, OVER, TAIL_FIRST_ENDS, gradingDays } from '../kernels/cannibalism';
import { conditionFactor } from '../kernels/condition';
import { sizeClasses, sizeSpread } from '../kernels/sizeSpread';
import {
  centimetre,
  count,
  day,
  days,
  fishGram,
  millimetre,
  moment,
  ratio,
  share,
  text,
} from '../../../units/quantities';
import { gramsFromKilograms } from '../../../units/convert';
import type { CellError } from '../../../base/values';
import { refuse } from '../../../base/values';
import { column, defineFunction, fields, rows, value } from '../../../functions/define';
import { num, series } from '../../../functions/params';

const weightsParam = series(fishGram, {
  min: 0.0005,
  max: 30000,
  atLeast: 2,
  doc: 'Weight of each fish in the sample, one per row.',
});
const firstFeeding = num(moment, { min: 1, max: 2958465, doc: 'Date and time of first feeding.' });

/** One unit in a hundred of the middle fish is not a size, it is kilograms. */
const HARDLY_ONE_UNIT = 500;
const unitSlip = (weights: readonly number[]): CellError | undefined => {
  const middle = [...weights].sort((a, b) => a - b)[Math.floor(weights.length / 2)] ?? NaN;
  const row = weights.findIndex((w) => w * HARDLY_ONE_UNIT < middle || w > middle * HARDLY_ONE_UNIT);
  return row < 0
    ? undefined
    : refuse(
        `weights, row ${row + 1}: ${weights[row]} g, while most weigh about ${middle} g. Was it typed in kilograms or milligrams?`,
      );
};

const spreadAdvice = (largest: number, mean: number): string =>
  `The largest is ${(largest / mean).toFixed(1)} times the mean. In one published trial two of 100 fish, 6.6 and 10 times the starting weight, caused over 68 % of the deaths.`;

export const spread = defineFunction({
  id: 'SIZE.SPREAD',
  family: 'Rearing',
  summary:
    'Size spread of a weighed sample: mean, deviation, coefficient of variation, smallest and largest.',
  questions: [
    'uneven sizes',
    'percent shooters',
    'too many shooters',
    'percentage of jumpers',
    'shooters too many',
  ],
  params: { weights: weightsParam },
  returns: fields(
    {
      fish: column('Fish', count),
      mean: column('Mean', fishGram),
      deviation: column('Deviation', fishGram),
      variation: column('Variation', share),
      smallest: column('Smallest', fishGram),
      largest: column('Largest', fishGram),
      advice: column('In words', text),
    },
    'The sample in figures, and what one published trial saw.',
  ),
  valid: 'A fair sample: big fish escape the net first, small ones hide at the bottom',
  sources: ['DEFINITION', 'CANNJUV'],
  help:
    'Variation is the standard deviation over the mean. No published limit was found ' +
    'above which to grade; grade every two weeks (SPAWN.GRADING.DATES) and whenever ' +
    'single fish run ahead.',
  examples: [
    {
      args: [[[1], [2], [3]]],
      gives: [
        [
          '3',
          '2',
          '1',
          '0.5',
          '1',
          '3',
          'The largest is 1.5 times the mean. In one published trial two of 100 fish, 6.6 and ' +
            '10 times the starting weight, caused over 68 % of the deaths.',
        ],
      ],
      because: 'Mean 2 g, deviation 1 g with n − 1.',
    },
    {
      args: [[[4.1], [0.0042], [3.9], [4.3]]],
      fails: { code: '#VALUE!', says: 'row 2' },
      because: '0.0042 kg typed among grams.',
    },
    {
      args: [[[4.1], [0], [3.9]]],
      fails: { code: '#VALUE!', says: 'row 2' },
      because: 'A fish weighs something.',
    },
  ],
  compute: ({ weights }) => {
    const slip = unitSlip(weights);
    if (slip) return slip;
    const answer = sizeSpread(weights);
    return { ...answer, advice: spreadAdvice(answer.largest, answer.mean) };
  },
});

export const classes = defineFunction({
  id: 'SIZE.CLASSES',
  family: 'Rearing',
  summary: 'How a weighed sample falls into grading classes: number, share and mean weight of each.',
  questions: ['how many fish of each size class', 'CV of weights', 'grading classes'],
  params: {
    weights: weightsParam,
    limits: series(fishGram, {
      min: 0.0005,
      max: 30000,
      doc: 'Class limits, rising; a fish at a limit goes into the upper class.',
    }),
  },
  returns: rows(
    {
      from: column('From', fishGram),
      to: column('To', fishGram),
      fish: column('Fish', count),
      share: column('Share', share),
      mean: column('Mean', fishGram),
    },
    'One row per class; the last has no upper limit.',
  ),
  valid: 'A fair sample',
  sources: ['DEFINITION'],
  examples: [
    {
      args: [[[1], [2], [3]], [[2]]],
      gives: [
        ['0', '2', '1', '0.333', '1'],
        ['2', '', '2', '0.667', '2.5'],
      ],
      because: 'One fish below 2 g, two from 2 g up.',
    },
    {
      args: [
        [[1], [2], [3]],
        [[2], [1]],
      ],
      fails: { code: '#VALUE!', says: 'must rise' },
      because: 'Limits out of order make no classes.',
    },
  ],
  compute: ({ weights, limits }) => {
    const back = limits.findIndex((limit, i) => i > 0 && limit <= (limits[i - 1] ?? 0));
    if (back > 0) return refuse(`limits, row ${back + 1}: the limits must rise.`);
    return (
      unitSlip(weights) ??
      sizeClasses(weights, limits).map((c) => ({
        ...c,
        to: c.to === Infinity ? null : c.to,
        mean: c.fish === 0 ? null : c.mean,
      }))
    );
  },
});

export const gradingDates = defineFunction({
  id: 'GRADING.DATES',
  family: 'Rearing',
  summary: 'Dates on which to grade, from first feeding until cannibalism has faded.',
  questions: [
    'when to grade',
    'fish eating each other',
    'how many days between sorting',
    'cannabalism',
    'sorting time',
    'dem dey chop each other',
  ],
  params: {
    firstFeeding,
    interval: num(days, {
      min: 1,
      max: 60,
      whole: true,
      default: GRADING_INTERVAL,
      doc: 'Days between gradings: 14 if left out.',
    }),
    last: num(days, {
      min: 1,
      max: 400,
      default: OVER.days,
      doc: 'Last day after first feeding to grade on: 47 if left out.',
    }),
  },
  returns: rows(
    { grading: column('Grading', count), date: column('Date', day), days: column('Days of feeding', days) },
    'One row per grading.',
  ),
  valid: 'African catfish fry and fingerlings in tanks',
  sources: ['MWAN20', 'HECHT88'],
  help:
    'Grading every two weeks gave better growth and feed conversion than every four ' +
    'weeks or none (Mwangi et al. 2020). Cannibalism mattered until about 47 days of ' +
    'feeding (Hecht and Appelbaum 1988). Grade sooner whenever single fish run ahead.',
  examples: [
    {
      args: [45000],
      gives: [
        ['1', '45014', '14'],
        ['2', '45028', '28'],
        ['3', '45042', '42'],
      ],
      because: 'Every two weeks up to day 47.',
    },
    {
      args: [45000, 0],
      fails: { code: '#VALUE!', says: 'interval' },
      because: 'An interval has at least a day.',
    },
  ],
  compute: ({ firstFeeding: from, interval, last }) =>
    gradingDays(interval, last).map((span, i) => ({
      grading: i + 1,
      date: Math.floor(from) + span,
      days: span,
    })),
});

export const cannibalismOnset = defineFunction({
  id: 'CANNIBALISM.ONSET',
  family: 'Rearing',
  summary: 'When cannibalism begins and fades in African catfish, counted from first feeding.',
  questions: ['when to sort', 'when does cannibalism start', 'when to sought', 'when to sort fry'],
  params: { firstFeeding },
  returns: fields(
    { begins: column('Begins', moment), fades: column('Fades', moment) },
    'About 3.5 and 47 days after first feeding, at 8 and 80 mm of length.',
  ),
  valid: 'Mean of one published study; size spread and hunger bring it forward',
  sources: ['HECHT88'],
  examples: [
    { args: [45000.25], gives: [['45003.75', '45047.25']], because: '3.5 and 47 days after first feeding.' },
    { args: ['soon'], fails: { code: '#VALUE!', says: 'text' }, because: 'A date is a number in Excel.' },
  ],
  compute: ({ firstFeeding: from }) => ({ begins: from + ONSET.days, fades: from + OVER.days }),
});

export const cannibalismStage = defineFunction({
  id: 'CANNIBALISM.STAGE',
  family: 'Rearing',
  summary: 'What kind of cannibalism to expect at a mean length.',
  questions: [
    'what kind of cannibalism at this length',
    'do they swallow each other whole yet',
    'biting or swallowing stage',
  ],
  params: { length: num(millimetre, { above: 0, max: 2000, doc: 'Mean total length of the fish.' }) },
  returns: value(text, 'In words.'),
  valid: 'African catfish',
  sources: ['HECHT88'],
  examples: [
    {
      args: [20],
      gives:
        'Biting, prey taken tail first and whole fish swallowed: the worst time. Feed often, ' +
        'give shelter, grade.',
      because: 'Between 8 and 45 mm both kinds occur.',
    },
    { args: [0], fails: { code: '#VALUE!', says: 'above 0' }, because: 'A fish has a length.' },
  ],
  compute: ({ length }) =>
    length < ONSET.length
      ? 'Not yet: it begins at about 8 mm, 3.5 days after first feeding.'
      : length <= TAIL_FIRST_ENDS
        ? 'Biting, prey taken tail first and whole fish swallowed: the worst time. Feed often, ' +
          'give shelter, grade.'
        : length <= OVER.length
          ? "Whole fish swallowed head first where the mouth is wider than the other's head: grade by size."
          : 'Mostly over; keep the sizes apart all the same.',
});

const isPlump = (k: number): boolean => k > 0.2 && k < 5;
const conditionSlip = (weight: number, length: number): string => {
  const likely = [
    isPlump(conditionFactor(weight, length / 10))
      ? `the length looks like millimetres (${length} mm is ${length / 10} cm)`
      : '',
    isPlump(conditionFactor(gramsFromKilograms(weight), length))
      ? `the weight looks like kilograms (${weight} kg is ${gramsFromKilograms(weight)} g)`
      : '',
  ]
    .filter(Boolean)
    .join(', or ');
  return likely ? `${likely}.` : 'check both units.';
};

export const condition = defineFunction({
  id: 'CONDITION.FACTOR',
  family: 'Rearing',
  summary: 'Condition factor from weight and length: how plump a fish is.',
  questions: ['condition factor', 'K factor', 'plump', 'big head thin body'],
  params: {
    weight: num(fishGram, { min: 0.0005, max: 60000, doc: 'Weight of the fish.' }),
    length: num(centimetre, {
      above: 0,
      max: 200,
      doc: 'Length in centimetres; say whether total or fork length.',
    }),
  },
  returns: value(ratio, '100 × weight ÷ length cubed.'),
  valid: 'Compare fish of one species and similar length',
  sources: ['FULTON'],
  native: '100*{weight}/{length}^3',
  examples: [
    { args: [100, 22], gives: '0.939', because: '100 × 100 ÷ 10,648.' },
    {
      args: [5, 95],
      fails: { code: '#VALUE!', says: 'millimetres' },
      because: '95 mm typed as centimetres.',
    },
    {
      args: [0.8, 45],
      fails: { code: '#VALUE!', says: 'kilograms' },
      because: '0.8 kg typed as grams, or 45 mm as centimetres: both are named.',
    },
  ],
  compute: ({ weight, length }) => {
    const k = conditionFactor(weight, length);
    if (k >= 0.05 && k <= 20) return k;
    return refuse(
      `length: ${weight} g at ${length} cm makes a condition factor of ${Number(k.toPrecision(3))}, no fish has that; ${conditionSlip(weight, length)}`,
    );
  },
});

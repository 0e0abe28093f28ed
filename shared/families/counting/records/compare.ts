// Long: records of one subject, each with its texts, questions and examples.
import { ratioDifference, shareDifference } from '../kernels/difference';
import { poissonLimits } from '../kernels/poisson';
import { ratioEstimate } from '../kernels/ratioEstimate';
import { relativeSpread, sampleForShare, subsamplesFor } from '../kernels/sampleSize';
import { count, gram, perGram, ratio, share, text } from '../../../units/quantities';
import { noSolution } from '../../../base/values';
import { column, defineFunction, fields, value } from '../../../functions/define';
import { num, series } from '../../../functions/params';
import { confidenceParam } from './limits';
import { moreThanSample } from './slips';

const whole = (min: number, doc: string) => num(count, { min, max: 1e9, whole: true, doc });
const weights = (which: string) =>
  series(gram, {
    above: 0,
    max: 10000,
    pair: which,
    atLeast: 2,
    doc: `Weights of the samples of the ${which} female or run, two or more.`,
  });
const counts = (which: string) =>
  series(count, {
    min: 0,
    max: 1e7,
    whole: true,
    pair: which,
    atLeast: 2,
    doc: `Eggs counted in those samples of the ${which}.`,
  });

const points = (x: number): string => `${Math.round(Math.abs(x) * 1000) / 10} points`;
const shareVerdict = (low: number, high: number): string =>
  low > 0
    ? `Really different: the first is higher by ${points(low)} to ${points(high)}.`
    : high < 0
      ? `Really different: the second is higher by ${points(high)} to ${points(low)}.`
      : `No real difference shown: anything from the second ${points(low)} higher to the first ${points(high)} higher fits these counts. Larger samples would tell.`;

export const shareCompare = defineFunction({
  id: 'SHARE.COMPARE',
  family: 'Counting',
  summary:
    'Are two hatch, fertilisation or survival shares really different? Difference, ' +
    'interval and a verdict in words.',
  questions: ['is this female better', 'is the difference real', 'which one better pass'],
  params: {
    firstSuccesses: whole(0, 'First run: how many hatched (or fertilised, alive).'),
    firstSample: whole(1, 'First run: out of how many.'),
    secondSuccesses: whole(0, 'Second run: how many.'),
    secondSample: whole(1, 'Second run: out of how many.'),
    confidence: confidenceParam,
  },
  returns: fields(
    {
      difference: column('First − second', share),
      low: column('Low', share),
      high: column('High', share),
      verdict: column('In words', text),
    },
    'Difference of the two shares, its interval, and what it means.',
  ),
  valid: 'Two independent samples; two vats also differ for reasons no count can see',
  sources: ['NEWC98D', 'WILS27'],
  help:
    "Newcombe's interval for the difference, built from the two Wilson intervals. A real " +
    'difference between two runs is not yet a reason: the water, the female and the hour ' +
    'differed too.',
  examples: [
    {
      args: [56, 70, 48, 80],
      gives: [
        ['0.2000', '0.0524', '0.3339', 'Really different: the first is higher by 5.2 points to 33.4 points.'],
      ],
      because: 'Worked example of Newcombe 1998, method 10.',
    },
    {
      args: [9, 10, 3, 10],
      gives: [
        [
          '0.6000',
          '0.1705',
          '0.8090',
          'Really different: the first is higher by 17.1 points to 80.9 points.',
        ],
      ],
      because: 'Second worked example of Newcombe 1998, method 10.',
    },
    {
      args: [95, 90, 48, 80],
      fails: { code: '#VALUE!', says: 'firstSuccesses' },
      because: 'More hatched than were looked at.',
    },
  ],
  compute: ({ firstSuccesses: k1, firstSample: n1, secondSuccesses: k2, secondSample: n2, confidence }) => {
    const why = 'Were the two typed the wrong way round?';
    if (k1 > n1) return moreThanSample(k1, n1, 'firstSuccesses', 'firstSample', why);
    if (k2 > n2) return moreThanSample(k2, n2, 'secondSuccesses', 'secondSample', why);
    const { difference, low, high } = shareDifference(k1, n1, k2, n2, confidence);
    return { difference, low, high, verdict: shareVerdict(low, high) };
  },
});

export const eggsCompare = defineFunction({
  id: 'EGGS.COMPARE',
  family: 'Counting',
  summary:
    'Do two females (or two runs) really differ in eggs per gram? Difference, interval ' +
    'and a verdict in words.',
  questions: [
    'did one female really give better eggs than another',
    'compare two hatch rates',
    'compare two batches',
  ],
  params: {
    firstWeights: weights('first'),
    firstCounts: counts('first'),
    secondWeights: weights('second'),
    secondCounts: counts('second'),
    confidence: confidenceParam,
  },
  returns: fields(
    {
      difference: column('First − second', perGram),
      low: column('Low', perGram),
      high: column('High', perGram),
      verdict: column('In words', text),
    },
    'Difference in eggs per gram, its interval, and what it means.',
  ),
  valid: 'Two or more samples of each; samples blotted alike',
  sources: ['COCH77', 'SATT46'],
  help:
    'Each side is a ratio of sums with its own standard error; the two are joined with ' +
    "Satterthwaite's degrees of freedom.",
  examples: [
    {
      args: [
        [[1], [1], [1]],
        [[700], [710], [690]],
        [[1], [1], [1]],
        [[600], [620], [610]],
      ],
      gives: '90',
      because: '700 against 610 eggs per gram.',
    },
    {
      args: [[[1]], [[700]], [[1], [1]], [[600], [620]]],
      fails: { code: '#N/A', says: 'at least 2' },
      because: 'One sample has no spread to judge by.',
    },
  ],
  compute: ({ firstWeights, firstCounts, secondWeights, secondCounts, confidence }) => {
    const first = ratioEstimate(firstWeights, firstCounts, Infinity, confidence);
    const second = ratioEstimate(secondWeights, secondCounts, Infinity, confidence);
    const answer = ratioDifference(first, second, confidence);
    const { low, high } = answer;
    const per = (x: number): string => `${Math.abs(x).toFixed(0)} eggs per gram`;
    const verdict =
      low > 0
        ? `Really different: the first has ${per(low)} to ${per(high)} more.`
        : high < 0
          ? `Really different: the second has ${per(high)} to ${per(low)} more.`
          : `No real difference shown: the first could have up to ${per(high)} more, or the second up to ${per(low)} more. Take more samples.`;
    return { ...answer, verdict };
  },
});

export const sampleSize = defineFunction({
  id: 'SAMPLE.SIZE',
  family: 'Counting',
  summary: 'How many eggs or fish to look at so that a share is known to within a wished plus-or-minus.',
  questions: [
    'how many eggs must i look at',
    'sample size for a percentage',
    'how many to count to be sure',
    'sample size',
  ],
  params: {
    halfWidth: num(share, {
      min: 0.001,
      max: 0.45,
      doc: 'Wished precision: 5% means plus or minus 5 points.',
    }),
    expected: num(share, {
      min: 0,
      max: 1,
      default: 0.5,
      doc: 'Share you expect. 50% if left out, which asks for the most.',
    }),
    confidence: confidenceParam,
    lot: num(count, {
      min: 1,
      max: 1e12,
      whole: true,
      optional: true,
      doc: 'Number in the whole lot, if it is small.',
    }),
  },
  returns: value(count, 'How many to look at.'),
  valid: "A fair sample; the interval meant is Wilson's",
  sources: ['WILS27', 'COCH77'],
  help:
    'The smallest sample whose Wilson interval has the wished half width at the expected ' +
    'share. The textbook plus-or-minus asks for a few more (385 where this says 381).',
  examples: [
    {
      args: [0.05],
      gives: '381',
      because: 'Half width z/(2√(n + z²)) at 50 %: n = z²/(4·0.05²) − z² = 380.3.',
    },
    { args: [5], fails: { code: '#VALUE!', says: '5%' }, because: 'Excel stores 5 % as 0.05.' },
  ],
  compute: ({ halfWidth, expected, confidence, lot }) =>
    sampleForShare(expected, halfWidth, confidence, lot ?? Infinity),
});

export const samplesNeeded = defineFunction({
  id: 'SAMPLES.NEEDED',
  family: 'Counting',
  summary:
    'How many weighed samples to count so that the number of eggs or fish is known to within a wished share.',
  questions: [
    'how many eggs to count',
    'how many fish should I weigh',
    'how many cups to count',
    'how many I go count',
  ],
  params: {
    sizes: series(gram, {
      above: 0,
      max: 1e6,
      pair: 'samples',
      atLeast: 2,
      doc: 'Weights (or volumes) of the samples already taken.',
    }),
    counts: series(count, {
      min: 0,
      max: 1e7,
      whole: true,
      pair: 'samples',
      atLeast: 2,
      doc: 'Counts of those samples.',
    }),
    halfWidth: num(share, {
      min: 0.001,
      max: 1,
      default: 0.1,
      doc: 'Wished precision as a share of the answer: 10% if left out.',
    }),
    confidence: confidenceParam,
  },
  returns: fields(
    { samples: column('Samples in all', count), spread: column('Spread of one sample', ratio) },
    'Samples of that size needed in all, and the relative spread found so far.',
  ),
  valid: 'More samples of the same size as those already taken',
  sources: ['COCH77'],
  examples: [
    {
      args: [[[1.5], [1.6], [1.9]], [[36], [35], [41]], 0.05],
      gives: [['8', '0.0565']],
      because:
        'The three published samples scatter by 5.65 %: 2.365 × 5.65 %/√8 = 4.7 %, while 7 ' +
        'samples give 5.2 %.',
    },
    {
      args: [[[1.5]], [[36]], 0.05],
      fails: { code: '#N/A', says: 'at least 2' },
      because: 'One sample shows no spread.',
    },
  ],
  compute: ({ sizes, counts: found, halfWidth, confidence }) => {
    const spread = relativeSpread(sizes, found);
    const samples = subsamplesFor(spread, halfWidth, confidence);
    return Number.isFinite(samples)
      ? { samples, spread }
      : noSolution(
          'The samples differ too much: no practical number of them gives that precision. Stir ' +
            'better or take larger samples.',
        );
  },
});

export const countInterval = defineFunction({
  id: 'COUNT.INTERVAL',
  family: 'Counting',
  summary: 'How far chance alone could move one count: the Poisson interval of a number counted once.',
  questions: ['how sure is my count', 'plus or minus', 'how sure be this count'],
  params: { counted: whole(0, 'Number counted.'), confidence: confidenceParam },
  returns: fields(
    { low: column('Low', count), high: column('High', count) },
    'The two ends for the true mean behind the count.',
  ),
  valid: 'Things spread at random; clumping makes the true interval wider',
  sources: ['GARW36'],
  examples: [
    {
      args: [25],
      gives: [['16.18', '36.90']],
      because: "Limits printed for a count of 25 by Garwood's method.",
    },
    { args: [10.5], fails: { code: '#VALUE!', says: 'whole number' }, because: 'A count is a whole number.' },
  ],
  compute: ({ counted, confidence }) => poissonLimits(counted, confidence),
});

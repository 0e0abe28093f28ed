import { lotEstimate } from '../kernels/lotEstimate';
import { count, gram, perGram, text } from '../../../units/quantities';
import { column, defineFunction, fields } from '../../../functions/define';
import { num, series } from '../../../functions/params';
import { confidenceParam } from './limits';
import { intervalBasis, sampleSlip } from './slips';

const METHOD =
  'Ratio of sums: all counts together divided by all sample sizes together. The ' +
  "interval uses the spread of the samples around that ratio (Cochran's ratio " +
  'estimator, shrunk by the share of the lot that was sampled) and t with one degree ' +
  'of freedom less than samples. The average of the single ratios is another estimator ' +
  'and gives another number. A single sample has no spread: its interval is the chance ' +
  'of the count alone and too narrow.';

export const eggsByWeight = defineFunction({
  id: 'EGGS.BYWEIGHT',
  family: 'Counting',
  summary:
    'Number of eggs in a spawn from its weight and a few weighed and counted samples, ' +
    'with an honest interval.',
  questions: [
    'how many eggs do I have',
    'eggs from weight of sample',
    'estimate egg number',
    'eggs per gram count',
    'how many egg',
    'estimating eggs by wieght',
    'how to count egg',
    'how I go count egg',
    'I weigh egg how many be that',
  ],
  params: {
    totalWeight: num(gram, {
      above: 0,
      max: 100000,
      doc: 'Weight of all eggs, water drained or blotted the same way as the samples.',
    }),
    sampleWeights: series(gram, {
      above: 0,
      max: 10000,
      pair: 'samples',
      doc: 'Weight of each sample, one per row.',
    }),
    sampleCounts: series(count, {
      min: 0,
      max: 1e7,
      whole: true,
      pair: 'samples',
      doc: 'Eggs counted in each sample, in the same rows.',
    }),
    confidence: confidenceParam,
  },
  returns: fields(
    {
      eggs: column('Eggs', count),
      low: column('Low', count),
      high: column('High', count),
      perGram: column('Eggs per gram', perGram),
      basis: column('Interval from', text),
    },
    'Eggs in the whole spawn with its interval, eggs per gram, and what the interval rests on.',
  ),
  valid: 'Samples taken from all over the lot; water held on the eggs is the usual error',
  sources: ['COCH77', 'GARW36', 'ROSE537', 'PIPER82'],
  help: `${METHOD} Blot lot and samples alike: water on the eggs is weighed too (Piper et al. 1982).`,
  examples: [
    {
      args: [316.8, [[1.5], [1.6], [1.9]], [[36], [35], [41]]],
      gives: '7,096',
      because: 'Published worked example: 112 eggs in 5.0 g, 22.4 per g, 7,096 eggs.',
    },
    {
      args: [100, [[1]], [[25]]],
      gives: [
        [
          '2500',
          '1618',
          '3690',
          '25',
          'one sample: chance of the count only (Poisson), the true error is larger; take 3 or more',
        ],
      ],
      because: "One sample: the limits printed for a count of 25 by Garwood's method are 16.18 and 36.90.",
    },
    {
      args: [0.15, [[0.8], [0.7]], [[560], [480]]],
      fails: { code: '#VALUE!', says: 'looks like kilograms' },
      because: 'A spawn cannot weigh less than the samples taken from it.',
    },
  ],
  compute: ({ totalWeight, sampleWeights, sampleCounts, confidence }) => {
    const slip = sampleSlip(totalWeight, sampleWeights, sampleCounts, {
      total: 'totalWeight',
      sizes: 'sampleWeights',
      unit: 'g',
      thousandfold: 'kilograms',
    });
    if (slip) return slip;
    const { total, low, high, ratio, samples } = lotEstimate(
      totalWeight,
      sampleWeights,
      sampleCounts,
      confidence,
    );
    return { eggs: total, low, high, perGram: ratio, basis: intervalBasis(samples) };
  },
});

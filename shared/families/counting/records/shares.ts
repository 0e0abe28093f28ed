import { wilsonAt, wilsonCorrectedAt } from '../kernels/wilson';
import { twoSidedNormal } from '../../../maths/normalQuantile';
import { count, share } from '../../../units/quantities';
import { column, defineFunction, fields } from '../../../functions/define';
import { flag, num } from '../../../functions/params';
import { confidenceParam } from './limits';
import { moreThanSample } from './slips';

export const SHARE_COLUMNS = {
  share: column('Share', share),
  low: column('Low', share),
  high: column('High', share),
} as const;

export const shareInterval = (
  k: number,
  n: number,
  confidence: number,
  isCorrected: boolean,
): { share: number; low: number; high: number } => {
  const z = twoSidedNormal(confidence);
  const { low, high } = isCorrected ? wilsonCorrectedAt(k, n, z) : wilsonAt(k, n, z);
  return { share: k / n, low, high };
};

export const shareOf = defineFunction({
  id: 'SHARE.INTERVAL',
  family: 'Counting',
  summary:
    'Share k of n (fertilised, hatched, alive …) with its Wilson interval: how far ' +
    'chance alone could have moved it.',
  questions: [
    'how sure is a percentage',
    'interval of a share',
    'plus minus of a hatch rate',
    'confidence interval of hatch rate',
  ],
  params: {
    successes: num(count, {
      min: 0,
      max: 1e9,
      whole: true,
      doc: 'How many in the sample have the mark: fertilised, hatched, alive.',
    }),
    sample: num(count, { min: 1, max: 1e9, whole: true, doc: 'How many were looked at in all.' }),
    confidence: confidenceParam,
    continuity: flag(false, 'TRUE adds a continuity correction: a wider, more careful interval.'),
  },
  returns: fields(SHARE_COLUMNS, 'The share and the two ends of its interval, never outside 0 to 100 %.'),
  valid: 'Counted independently; clumped eggs from one spot make the true interval wider',
  sources: ['WILS27', 'NEWC98'],
  help:
    'Wilson score interval. It stays inside 0 to 100 % and works at 0 and 100 %, where ' +
    'the textbook plus-or-minus does not. For several separate samples use ' +
    'SPAWN.SHARE.SAMPLES: it sees clumping.',
  examples: [
    { args: [81, 263], gives: [['0.3080', '0.2553', '0.3662']], because: 'Newcombe 1998 table I, method 3.' },
    { args: [0, 20], gives: [['0', '0', '0.1611']], because: 'None of 20 still leaves up to 16 % possible.' },
    {
      args: [312, 300],
      fails: { code: '#VALUE!', says: 'wrong way round' },
      because: 'No more can have hatched than were looked at.',
    },
  ],
  compute: ({ successes, sample, confidence, continuity }) =>
    successes > sample
      ? moreThanSample(successes, sample, 'successes', 'sample', 'Were the two typed the wrong way round?')
      : shareInterval(successes, sample, confidence, continuity),
});

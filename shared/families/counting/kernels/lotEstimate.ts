import { ratioEstimate } from './ratioEstimate';

export interface LotEstimate {
  readonly total: number;
  readonly low: number;
  readonly high: number;
  /** Number per unit of sample size. */
  readonly ratio: number;
  readonly samples: number;
}

/**
 * Number in a whole lot from subsamples of it: lot size times the ratio of the sums.
 *
 * Same units for the lot and the samples. The low end is never below what was actually counted.
 * Source: COCH77. Example: 316.8 g with samples 1.5/1.6/1.9 g holding 36/35/41 eggs → 7,096 eggs.
 */
export const lotEstimate = (
  lot: number,
  sizes: readonly number[],
  counts: readonly number[],
  confidence: number,
): LotEstimate => {
  const { ratio, low, high } = ratioEstimate(sizes, counts, lot, confidence);
  const counted = counts.reduce((total, c) => total + c, 0);
  return {
    total: ratio * lot,
    low: Math.max(counted, low * lot),
    high: high * lot,
    ratio,
    samples: sizes.length,
  };
};

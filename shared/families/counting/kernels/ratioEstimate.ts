import type { CountLimits } from './poisson';
import { poissonLimits } from './poisson';
import { twoSidedStudent } from '../../../maths/studentQuantile';

export interface RatioEstimate extends CountLimits {
  /** Number per unit of sample size. */
  readonly ratio: number;
  /** Standard error of the ratio; NaN for a single sample. */
  readonly error: number;
  readonly degrees: number;
}

const sum = (list: readonly number[]): number => list.reduce((total, x) => total + x, 0);

/**
 * Number per gram (or millilitre) from several subsamples, as the ratio of the sums, with its interval.
 *
 * r = Σc / Σw; s² = Σ(c − r·w)² / (n − 1); variance of r = (1 − f)·s² / (n·w̄²), f = Σw / W the share of the
 * lot that was sampled; interval r ± t(n − 1)·√variance. A single sample has no spread: its interval is
 * Poisson for the count alone. In: sample sizes w > 0, counts c ≥ 0, size of the whole lot W (Infinity when
 * samples are a negligible part). Source: COCH77; single sample GARW36. Counting noise in W itself is not
 * included. Example: 1.5/1.6/1.9 g with 36/35/41 eggs → 22.4 per g.
 */
export const ratioEstimate = (
  sizes: readonly number[],
  counts: readonly number[],
  lot: number,
  confidence: number,
): RatioEstimate => {
  const n = sizes.length;
  const size = sum(sizes);
  const counted = sum(counts);
  const ratio = counted / size;
  if (n === 1) {
    const limits = poissonLimits(counted, confidence);
    return { ratio, low: limits.low / size, high: limits.high / size, error: NaN, degrees: 0 };
  }
  const spread = sizes.reduce((total, w, i) => total + ((counts[i] ?? NaN) - ratio * w) ** 2, 0) / (n - 1);
  const mean = size / n;
  const unsampled = Math.max(0, 1 - size / lot);
  const error = Math.sqrt((unsampled * spread) / n) / mean;
  const half = twoSidedStudent(confidence, n - 1) * error;
  return { ratio, low: Math.max(0, ratio - half), high: ratio + half, error, degrees: n - 1 };
};

import { twoSidedNormal } from '../../../maths/normalQuantile';
import { twoSidedStudent } from '../../../maths/studentQuantile';
import { wilsonAt } from './wilson';

/**
 * How many to look at so that the Wilson interval of a share is no wider than ± a wished half width.
 *
 * Smallest whole n whose interval at p·n has half width ≤ d; the half width falls steadily with n, so halving
 * finds it. A finite lot of N needs n / (1 + (n − 1)/N), COCH77 chapter 4. In: shares. Out: whole number.
 * Source: WILS27. Example: p 0.5, ± 5 points at 95 % → 381 (the textbook plus-or-minus gives 385).
 */
export const sampleForShare = (
  expected: number,
  half: number,
  confidence: number,
  lot = Infinity,
): number => {
  const z = twoSidedNormal(confidence);
  const halfWidth = (n: number): number => {
    const { low, high } = wilsonAt(expected * n, n, z);
    return (high - low) / 2;
  };
  let enough = 1;
  while (halfWidth(enough) > half) enough *= 2;
  let short = Math.floor(enough / 2);
  while (enough - short > 1) {
    const middle = Math.floor((enough + short) / 2);
    if (halfWidth(middle) > half) short = middle;
    else enough = middle;
  }
  return lot === Infinity ? enough : Math.min(lot, Math.ceil(enough / (1 + (enough - 1) / lot)));
};

const MOST_SAMPLES = 100000;

/**
 * How many subsamples like those of a trial bring the interval down to ± a wished share of the answer.
 *
 * Smallest n ≥ 2 with t(n − 1)·v/√n ≤ d, v the spread of one sample relative to its size (COCH77).
 * In: relative spread, relative half width. Out: whole number, NaN when more than 100,000 would be needed.
 * Example: spread 5 %, wished ± 5 % at 95 % → 7.
 */
export const subsamplesFor = (spread: number, half: number, confidence: number): number => {
  const z = twoSidedNormal(confidence);
  // t is never below z, so fewer than this cannot do.
  for (let n = Math.max(2, Math.floor(((z * spread) / half) ** 2)); n <= MOST_SAMPLES; n++)
    if ((twoSidedStudent(confidence, n - 1) * spread) / Math.sqrt(n) <= half) return n;
  return NaN;
};

/**
 * Spread of one sample around the ratio of sums, relative to its expected count. Example: equal ratios → 0.
 */
export const relativeSpread = (sizes: readonly number[], counts: readonly number[]): number => {
  const n = sizes.length;
  const counted = counts.reduce((a, b) => a + b, 0);
  const ratio = counted / sizes.reduce((a, b) => a + b, 0);
  const squares = sizes.reduce((total, w, i) => total + ((counts[i] ?? NaN) - ratio * w) ** 2, 0);
  return Math.sqrt(squares / (n - 1)) / (counted / n);
};

import { twoSidedNormal } from '../../../maths/normalQuantile';
import type { CountLimits } from './poisson';

/**
 * Score interval for a share k/n.
 *
 * centre (p + z²/2n)/(1 + z²/n), half width z·√(p(1 − p)/n + z²/4n²)/(1 + z²/n).
 * In: counts and confidence. Out: shares 0..1. Validity: 0 ≤ k ≤ n, n > 0; fractions allowed for planning.
 * Source: WILS27 as printed by NEWC98 (method 3). Example: 81 of 263 → 0.2553 to 0.3662.
 */
export const wilson = (k: number, n: number, confidence: number): CountLimits =>
  wilsonAt(k, n, twoSidedNormal(confidence));

export const wilsonAt = (k: number, n: number, z: number): CountLimits => {
  if (!(n > 0 && k >= 0 && k <= n)) return { low: NaN, high: NaN };
  const p = k / n;
  const zz = z * z;
  const below = 1 + zz / n;
  const centre = (p + zz / (2 * n)) / below;
  const half = (z * Math.sqrt((p * (1 - p)) / n + zz / (4 * n * n))) / below;
  // The ends are exact at 0 and n; rounding would leave a speck there.
  return { low: k === 0 ? 0 : centre - half, high: k === n ? 1 : centre + half };
};

/**
 * The same with a continuity correction: wider, never too optimistic.
 *
 * Equation of NEWC98 (method 4). Example: 9 of 30 with z = 1.96 → 0.1541262 to 0.4955824.
 */
export const wilsonCorrectedAt = (k: number, n: number, z: number): CountLimits => {
  if (!(n > 0 && k >= 0 && k <= n)) return { low: NaN, high: NaN };
  const p = k / n;
  const q = 1 - p;
  const zz = z * z;
  const below = 2 * (n + zz);
  const low = (2 * n * p + zz - 1 - z * Math.sqrt(zz - 2 - 1 / n + 4 * p * (n * q + 1))) / below;
  const high = (2 * n * p + zz + 1 + z * Math.sqrt(zz + 2 - 1 / n + 4 * p * (n * q - 1))) / below;
  return { low: k === 0 ? 0 : Math.max(0, low), high: k === n ? 1 : Math.min(1, high) };
};

import { twoSidedNormal } from '../../../maths/normalQuantile';
import type { CountLimits } from './poisson';
import type { RatioEstimate } from './ratioEstimate';
import { twoSidedStudent } from '../../../maths/studentQuantile';
import { wilsonAt } from './wilson';

export interface Difference extends CountLimits {
  readonly difference: number;
}

/**
 * Difference of two independent shares with its interval.
 *
 * d = p1 − p2; low = d − √((p1 − l1)² + (u2 − p2)²), high = d + √((u1 − p1)² + (p2 − l2)²), l and u the
 * Wilson ends. Source: NEWC98D, method 10. Example: 56 of 70 against 48 of 80 → 0.2, 0.0524 to 0.3339.
 */
export const shareDifference = (
  k1: number,
  n1: number,
  k2: number,
  n2: number,
  confidence: number,
): Difference => {
  const z = twoSidedNormal(confidence);
  const [a, b] = [wilsonAt(k1, n1, z), wilsonAt(k2, n2, z)];
  const [p1, p2] = [k1 / n1, k2 / n2];
  const difference = p1 - p2;
  return {
    difference,
    low: difference - Math.sqrt((p1 - a.low) ** 2 + (b.high - p2) ** 2),
    high: difference + Math.sqrt((a.high - p1) ** 2 + (p2 - b.low) ** 2),
  };
};

/**
 * Difference of two numbers per gram, each from its own subsamples.
 *
 * d ± t·√(e1² + e2²), degrees of freedom (e1² + e2²)² / (e1⁴/v1 + e2⁴/v2). Source: SATT46, errors from
 * COCH77. Validity: two or more samples on each side; NaN otherwise. Example: equal samples on both sides → 0
 * with limits ± the same.
 */
export const ratioDifference = (
  first: RatioEstimate,
  second: RatioEstimate,
  confidence: number,
): Difference => {
  const [a, b] = [first.error ** 2, second.error ** 2];
  const difference = first.ratio - second.ratio;
  if (a + b === 0) return { difference, low: difference, high: difference };
  const degrees = (a + b) ** 2 / (a ** 2 / first.degrees + b ** 2 / second.degrees);
  const half = twoSidedStudent(confidence, Math.max(1, degrees)) * Math.sqrt(a + b);
  return { difference, low: difference - half, high: difference + half };
};

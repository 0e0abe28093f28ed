import { normalQuantile } from '../../../maths/normalQuantile';
import { incompleteGamma, logGamma } from '../../../maths/specialFunctions';

export interface CountLimits {
  readonly low: number;
  readonly high: number;
}

/**
 * Quantile of the gamma distribution with shape `a` and scale 1.
 *
 * Start: cube-root rule WILSHIL31; then Halley steps kept inside a closing bracket until the error left is
 * below 1e-11 of the answer. NaN outside a > 0, 0 < p < 1. Example: shape 1, share 0.975 → 3.6889.
 */
export const gammaQuantile = (p: number, a: number): number => {
  if (!(a > 0 && p > 0 && p < 1)) return NaN;
  const z = normalQuantile(p);
  const cube = 1 - 1 / (9 * a) + z / (3 * Math.sqrt(a));
  const lga = logGamma(a);
  let x = cube > 0.1 ? a * cube ** 3 : Math.exp((Math.log(p) + lga + Math.log(a)) / a);
  let from = 0;
  let to = Infinity;
  for (let i = 0; i < 200; i++) {
    const over = incompleteGamma(a, x, lga) - p;
    if (over > 0) to = x;
    else from = x;
    const newton = over / Math.exp((a - 1) * Math.log(x) - x - lga);
    const slope = (a - 1) / x - 1;
    // Halley's step cubes the error; near the answer its denominator stays close to 1.
    const step = newton / Math.max(0.5, 1 - (newton * slope) / 2);
    const left = Math.abs(step) ** 3 * (slope * slope + a / (x * x));
    if (left <= 1e-11 * x) return x - step;
    let next = x - step;
    if (!(next > from && next < to)) next = to === Infinity ? 2 * x : (from + to) / 2;
    x = next;
  }
  return x;
};

/**
 * Limits for the true mean behind one count of independent things.
 *
 * low = χ²(α/2; 2k)/2, high = χ²(1 − α/2; 2k + 2)/2. In: count k ≥ 0. Out: counts. Source: GARW36.
 * Example: k = 10 at 95 % → 4.795 to 18.390.
 */
export const poissonLimits = (counted: number, confidence: number): CountLimits => {
  const tail = (1 - confidence) / 2;
  return {
    low: counted === 0 ? 0 : gammaQuantile(tail, counted),
    high: gammaQuantile(1 - tail, counted + 1),
  };
};

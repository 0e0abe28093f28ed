import type { Rng } from '../../../maths/rng';

/**
 * Numbers up to this are tossed one run of failures at a time; above it the bell curve is closer than a
 * hundredth of a deviation.
 */
const EXACT_MEAN = 25;

/**
 * How many of n come through with chance p each.
 * Exact by geometric gaps while fewer than 25 are expected on the rarer side, above that a rounded normal
 * (textbook). In: whole n, share p. Out: whole number 0 to n.
 */
export function binomial(rng: Rng, n: number, p: number): number {
  if (!(p > 0) || n <= 0) return 0;
  if (p >= 1) return n;
  if (p > 0.5) return n - binomial(rng, n, 1 - p);
  const mean = n * p;
  if (mean > EXACT_MEAN)
    return Math.min(n, Math.max(0, Math.round(mean + rng.normal() * Math.sqrt(mean * (1 - p)))));
  const logMiss = Math.log1p(-p);
  let tried = 0;
  let came = -1;
  while (tried <= n) {
    came++;
    tried += Math.floor(Math.log(rng.even()) / logMiss) + 1;
  }
  return came;
}

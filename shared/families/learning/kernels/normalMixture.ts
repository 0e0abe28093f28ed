import { normalQuantile } from '../../../maths/normalQuantile';
import type { Bell } from './belief';

/** Beyond this many standard deviations the tail is below 1e-15. */
const FAR = 8;
const ROOT_TWO_PI = Math.sqrt(2 * Math.PI);

/**
 * Share of the standard normal distribution below z.
 *
 * Φ(z) = ½ + φ(z)·(z + z³/3 + z⁵/(3·5) + z⁷/(3·5·7) + …). In: any z. Out: share; error below 1e-13.
 * Source: MARSAGLIA04. Example: 1.959964 → 0.975.
 */
export const normalShare = (z: number): number => {
  if (z >= FAR) return 1;
  if (z <= -FAR) return 0;
  const zz = z * z;
  let term = z;
  let sum = z;
  for (let odd = 3; Math.abs(term) > 1e-16 * Math.abs(sum); odd += 2) {
    term *= zz / odd;
    sum += term;
  }
  return 0.5 + (sum * Math.exp(-0.5 * zz)) / ROOT_TWO_PI;
};

const MOST_STEPS = 200;
/**
 * The value below which a share of a mixture of bells lies.
 *
 * Newton steps on the mixture's own distribution, kept inside a closing bracket. Weights need not add up to
 * one. Example: one bell 0 ± 1 at 0.975 → 1.959964.
 */
export function mixtureQuantile(bells: readonly Bell[], share: number): number {
  const total = bells.reduce((sum, b) => sum + b.weight, 0);
  const used = bells.filter((b) => b.weight > total * 1e-10);
  let low = Math.min(...used.map((b) => b.mean - FAR * b.sd));
  let high = Math.max(...used.map((b) => b.mean + FAR * b.sd));
  const middle = used.reduce((sum, b) => sum + b.weight * b.mean, 0) / total;
  const variance =
    used.reduce((sum, b) => sum + b.weight * (b.sd * b.sd + (b.mean - middle) ** 2), 0) / total;
  let x = middle + normalQuantile(share) * Math.sqrt(variance);
  for (let step = 0; step < MOST_STEPS; step++) {
    let below = -share * total;
    let density = 0;
    for (const { weight, mean, sd } of used) {
      const z = (x - mean) / sd;
      below += weight * normalShare(z);
      density += (weight * Math.exp(-0.5 * z * z)) / (sd * ROOT_TWO_PI);
    }
    if (below > 0) high = x;
    else low = x;
    let next = x - below / density;
    if (!(next > low && next < high)) next = (low + high) / 2;
    if (Math.abs(next - x) <= 1e-9 * Math.sqrt(variance) || high - low <= 1e-12 * (1 + Math.abs(x)))
      return next;
    x = next;
  }
  return x;
}

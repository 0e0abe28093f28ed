import { incompleteBeta } from '../../../maths/specialFunctions';
import { normalQuantile } from '../../../maths/normalQuantile';

/** Reach of the table in normal deviations, and its points: 0.05 apart. */
const REACH = 6;
const POINTS = 241;
const STEP = (2 * REACH) / (POINTS - 1);
/** Points on the logit of the share at which the distribution is worked out. */
const KNOTS = 160;
/** Beyond this share the tail no longer changes a season. */
const EDGE = 1e-12;

/**
 * A share that varies: the value that stands at a normal deviation, so that correlated normals give
 * correlated shares.
 */
export type ShareAt = (z: number) => number;

/**
 * Parameters of the beta distribution with this mean and deviation: a = mν, b = (1 − m)ν, ν = m(1 − m)/s² − 1
 * (moments, textbook).
 */
export const betaOf = (mean: number, deviation: number): readonly [a: number, b: number] => {
  const size = (mean * (1 - mean)) / (deviation * deviation) - 1;
  return [mean * size, (1 - mean) * size];
};

const logit = (p: number): number => Math.log(p / (1 - p));
const share = (u: number): number => 1 / (1 + Math.exp(-u));

/**
 * Pairs (z, logit share) of the beta distribution where its distribution function is neither 0 nor 1 to the
 * last digits.
 */
function knotsOf(mean: number, deviation: number): readonly (readonly [z: number, u: number])[] {
  const [a, b] = betaOf(mean, deviation);
  const width = deviation / (mean * (1 - mean));
  const middle = logit(mean);
  const reach = Math.min(40, Math.max(2, 12 * width) + 6 * width * width);
  const knots: (readonly [number, number])[] = [];
  for (let i = 0; i <= KNOTS; i++) {
    const u = middle + reach * ((2 * i) / KNOTS - 1);
    const below = incompleteBeta(share(u), a, b);
    if (below > EDGE && below < 1 - EDGE) knots.push([normalQuantile(below), u]);
  }
  return knots;
}

/** Tables made lately: the orders of a season ask for the same few. */
const made = new Map<string, Float64Array>();
const MOST_KEPT = 32;

function tableOf(mean: number, deviation: number): Float64Array {
  const key = `${mean} ${deviation}`;
  const kept = made.get(key);
  if (kept) return kept;
  const knots = knotsOf(mean, deviation);
  const table = new Float64Array(POINTS);
  let k = 0;
  for (let i = 0; i < POINTS; i++) {
    const z = -REACH + i * STEP;
    while (k + 2 < knots.length && (knots[k + 1]?.[0] ?? Infinity) < z) k++;
    const [z0, u0] = knots[k] ?? [0, logit(mean)];
    const [z1, u1] = knots[k + 1] ?? [z0 + 1, u0];
    table[i] = share(u0 + (u1 - u0) * ((z - z0) / (z1 - z0)));
  }
  if (made.size >= MOST_KEPT) made.clear();
  made.set(key, table);
  return table;
}

/**
 * A share that follows a beta distribution, read at a normal deviation: I⁻¹(Φ(z); a, b).
 *
 * In: mean share, standard deviation between runs. Out: function of z. Linear on the logit between points
 * 0.05 apart. Validity: 0 < mean < 1, deviation below √(m(1 − m)); with no deviation, or a mean of 0 or 1,
 * the mean itself. Source: DEFINITION (normal copula). Example: mean 0.5, deviation 0.1 at z = 0 → 0.5.
 */
export function shareSpread(mean: number, deviation: number): ShareAt {
  if (!(deviation > 0) || mean <= 0 || mean >= 1) return () => mean;
  const table = tableOf(mean, deviation);
  return (z) => {
    const at = Math.min(POINTS - 1, Math.max(0, (z + REACH) / STEP));
    const i = Math.min(POINTS - 2, Math.floor(at));
    const low = table[i] ?? mean;
    return low + ((table[i + 1] ?? low) - low) * (at - i);
  };
}

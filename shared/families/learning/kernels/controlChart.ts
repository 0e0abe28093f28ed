/** Expected range of two independent values of a normal distribution, in standard deviations. */
const RANGE_OF_TWO = 1.128;
/**
 * Nine points in a row on one side of the centre come as seldom by chance as one beyond three sigma
 * (NELSON84).
 */
const IN_A_ROW = 9;
const SIGMAS = 3;
/** With fewer runs the limits say nothing; chosen here. Twenty and more is common practice. */
export const LEAST_RUNS = 8;

export type Signal = 'above the limits' | 'below the limits' | 'nine in a row above' | 'nine in a row below';

export interface ChartPoint {
  readonly share: number;
  /** Limits of the p chart: chance of the counting alone. */
  readonly chanceLow: number;
  readonly chanceHigh: number;
  readonly low: number;
  readonly high: number;
  readonly signal: Signal | undefined;
}

export interface ControlChart {
  readonly centre: number;
  /** How many times wider the runs lie than chance of the counting alone would put them. */
  readonly sigmaZ: number;
  /** In the order given. */
  readonly points: readonly ChartPoint[];
  /** False when there are too few runs: then there are no limits (NaN) and no signals. */
  readonly hasLimits: boolean;
}

/** Lengths of the stretches on one side of the centre that each point ends; negative below. */
function stretches(shares: readonly number[], centre: number): number[] {
  let length = 0;
  return shares.map((p) => {
    const side = Math.sign(p - centre);
    length = side === 0 ? 0 : Math.sign(length) === side ? length + side : side;
    return length;
  });
}

const around = (centre: number, reach: number): readonly [number, number] => [
  Math.max(0, centre - reach),
  Math.min(1, centre + reach),
];

/**
 * Control chart of proportions with limits that allow for spread between runs.
 *
 * Equations as published: p̄ = Σk/Σn; σi = √(p̄(1 − p̄)/ni); zi = (pi − p̄)/σi; σz = mean |zi − zi−1| /
 * 1.128; limits p̄ ± 3·σi·σz, cut at 0 and 1 (LANEY02). With σz = 1 they are those of the p chart
 * (NISTPCHART). Here σz counts as 1 where it comes out smaller: limits are never closer than chance of the
 * counting. Signals: one point beyond, nine in a row on one side (NELSON84); more rules would cry wolf. In:
 * counts in order of time. Validity: n > 0, 0 ≤ k ≤ n. Example: 320 of 10 samples of 200 → centre 0.16,
 * limits of chance 0.0822 and 0.2378.
 */
export function controlChart(successes: readonly number[], samples: readonly number[]): ControlChart {
  const sum = (list: readonly number[]): number => list.reduce((total, x) => total + x, 0);
  const centre = sum(successes) / sum(samples);
  const shares = successes.map((k, i) => k / (samples[i] ?? NaN));
  const sigmas = samples.map((n) => Math.sqrt((centre * (1 - centre)) / n));
  const z = shares.map((p, i) => (p - centre) / (sigmas[i] ?? NaN));
  const sigmaZ = sum(z.slice(1).map((x, i) => Math.abs(x - (z[i] ?? NaN)))) / (z.length - 1) / RANGE_OF_TWO;
  const hasLimits = shares.length >= LEAST_RUNS;
  const sides = stretches(shares, centre);
  const points = shares.map((share, i): ChartPoint => {
    const reach = SIGMAS * (sigmas[i] ?? NaN);
    const [chanceLow, chanceHigh] = around(centre, reach);
    if (!hasLimits) return { share, chanceLow, chanceHigh, low: NaN, high: NaN, signal: undefined };
    const [low, high] = around(centre, reach * Math.max(1, sigmaZ || 0));
    const side = sides[i] ?? 0;
    const signal: Signal | undefined =
      share > high
        ? 'above the limits'
        : share < low
          ? 'below the limits'
          : side >= IN_A_ROW
            ? 'nine in a row above'
            : side <= -IN_A_ROW
              ? 'nine in a row below'
              : undefined;
    return { share, chanceLow, chanceHigh, low, high, signal };
  });
  return { centre, sigmaZ, points, hasLimits };
}

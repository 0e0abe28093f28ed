/**
 * What is believed of an unknown before the farm's own runs are seen: a density on a line, as its logarithm
 * up to a constant, and the stretch outside which it is nothing. Scales (spread between runs) are written on
 * the logarithm of the scale.
 */
export interface Belief {
  readonly logDensity: (u: number) => number;
  readonly from: number;
  readonly to: number;
}

/** Bell curves side by side: weight, middle, spread. */
export interface Bell {
  readonly weight: number;
  readonly mean: number;
  readonly sd: number;
}

const logBell = (u: number, { mean, sd }: Bell): number => -0.5 * ((u - mean) / sd) ** 2 - Math.log(sd);

const REACH = 6;
export const fromBells = (bells: readonly Bell[]): Belief => ({
  logDensity: (u) => {
    // From the nearest bell outwards, so that far from all of them nothing is lost to 0.
    let log = -Infinity;
    for (const bell of bells) {
      const next = Math.log(bell.weight) + logBell(u, bell);
      log = Math.max(log, next) + Math.log1p(Math.exp(-Math.abs(log - next)));
    }
    return log;
  },
  from: Math.min(...bells.map(({ mean, sd }) => mean - REACH * sd)),
  to: Math.max(...bells.map(({ mean, sd }) => mean + REACH * sd)),
});

/** One farm in ten is unlike those that were published: its mean may lie this many times further off. */
const UNLIKE_SHARE = 0.1;
const UNLIKE_TIMES = 3;
/**
 * The literature as a bell with heavy tails, so that a farm that is unlike the published ones is believed,
 * not pulled back.
 *
 * Published form: a mixture of the informative prior and a wider one (SCHMIDLI14). Weight 0.1 and width 3 are
 * chosen here.
 */
export const literatureBells = (mean: number, sd: number): readonly Bell[] => [
  { weight: 1 - UNLIKE_SHARE, mean, sd },
  { weight: UNLIKE_SHARE, mean, sd: UNLIKE_TIMES * sd },
];

/**
 * A scale known to a factor: log-normal, two thirds of the belief between median ÷ factor and median ×
 * factor.
 */
export const scaleBelief = (median: number, factor: number): Belief =>
  fromBells([{ weight: 1, mean: Math.log(median), sd: Math.log(factor) }]);

/** Evenly spaced points from a to b. */
export const grid = (from: number, to: number, points: number): number[] =>
  Array.from({ length: points }, (_, i) => from + ((to - from) * i) / (points - 1));

/** Logarithms below the top by more than this carry no weight: e^−16 is a ten-millionth. */
export const NOTHING = 16;

/**
 * Narrows a stretch to where a function of log weight is not nothing: looks at `points`, keeps those near the
 * top and one step beyond, and looks again until the stretch stays. The step between points must stay finer
 * than the function is narrow, which the repeated look takes care of.
 */
export function narrow(
  from: number,
  to: number,
  points: number,
  logWeight: (u: number) => number,
): readonly [number, number] {
  let low = from;
  let high = to;
  for (let look = 0; look < 8; look++) {
    const at = grid(low, high, points);
    const logs = at.map(logWeight);
    const top = Math.max(...logs);
    const first = logs.findIndex((x) => x > top - NOTHING);
    const last = logs.findLastIndex((x) => x > top - NOTHING);
    const a = at[Math.max(0, first - 1)] ?? low;
    const b = at[Math.min(points - 1, last + 1)] ?? high;
    const stays = b - a > 0.6 * (high - low);
    low = a;
    high = b;
    if (stays) break;
  }
  return [low, high];
}

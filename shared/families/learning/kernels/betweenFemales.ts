import { grid, narrow, scaleBelief } from './belief';
import type { CountedSpec, Estimate } from './estimate';

/**
 * Females of one run differ, and so do runs: the analysis of variance of one way of grouping, groups of unequal size
 * (random effects). Within groups: Σ Σ (x − mean of group)² ÷ (N − k). Between: (MS between − MS within) ÷ n₀,
 * n₀ = (N − Σ n² ÷ N) ÷ (k − 1), never below 0.
 *
 * Source: NISTSIRSTV for the mean squares; the parts follow from their expectations (method of moments). Groups of one
 * say nothing of the spread within.
 */
export interface VarianceParts {
  readonly within: number;
  readonly between: number;
  /** Degrees of freedom within groups. */
  readonly freedom: number;
}
const mean = (list: readonly number[]): number => list.reduce((sum, x) => sum + x, 0) / list.length;
const squares = (list: readonly number[], around: number): number =>
  list.reduce((sum, x) => sum + (x - around) ** 2, 0);

export function varianceParts(groups: readonly (readonly number[])[]): VarianceParts {
  const filled = groups.filter(({ length }) => length > 0);
  const [k, all] = [filled.length, filled.flat()];
  const freedom = all.length - k;
  const inside = filled.reduce((sum, group) => sum + squares(group, mean(group)), 0);
  const within = freedom > 0 ? inside / freedom : NaN;
  const grand = mean(all);
  const outside = filled.reduce((sum, group) => sum + group.length * (mean(group) - grand) ** 2, 0);
  const size = (all.length - filled.reduce((sum, { length }) => sum + length ** 2, 0) / all.length) / (k - 1);
  return { within, between: k > 1 ? Math.max(0, (outside / (k - 1) - within) / size) : NaN, freedom };
}

const POINTS = 201;
/**
 * The spread between females from the rows of runs with several, on the logarithm of their eggs: what is believed of
 * it beforehand times the chance of the squares within runs, which are σ² times a chi-square of their degrees of
 * freedom. Middle and ends of what is then believed. A spread has no further run: its ends stand for it.
 */
export function estimateBetween(
  spec: CountedSpec,
  groups: readonly (readonly number[])[],
  confidence = 0.95,
): Estimate {
  const several = groups.filter(({ length }) => length > 1);
  const { within, freedom } = several.length > 0 ? varianceParts(several) : { within: 0, freedom: 0 };
  const belief = scaleBelief(spec.literature, spec.runsFactor);
  const logWeight = (u: number): number =>
    belief.logDensity(u) - freedom * u - (freedom * within) / (2 * Math.exp(2 * u));
  const at = grid(...narrow(belief.from, belief.to, POINTS, logWeight), POINTS);
  const logs = at.map(logWeight);
  const top = Math.max(...logs);
  const weights = logs.map((log) => Math.exp(log - top));
  const total = weights.reduce((sum, w) => sum + w, 0);
  const quantile = (share: number): number => {
    let below = 0;
    for (const [i, w] of weights.entries()) {
      // A grid point stands for the stretch around it.
      if (below + w >= share * total) {
        const step = (at[1] ?? 0) - (at[0] ?? 0);
        return Math.exp((at[i] ?? 0) + ((share * total - below) / w - 0.5) * step);
      }
      below += w;
    }
    return Math.exp(at.at(-1) ?? 0);
  };
  const [low, high] = [quantile((1 - confidence) / 2), quantile((1 + confidence) / 2)];
  // Of the logarithm of a spread, squares of so many degrees of freedom hold this much information.
  const [own, believed] = [2 * freedom, 1 / Math.log(spec.runsFactor) ** 2];
  return {
    value: quantile(0.5),
    low,
    high,
    nextLow: low,
    nextHigh: high,
    ownWeight: own / (own + believed),
    runs: several.length,
  };
}

import type { Belief } from './belief';
import { NOTHING, grid, narrow } from './belief';
import { gammaSums } from './gammaSums';
import { logGammaFast } from '../../../maths/logGammaFast';

/** k of n in one run. */
export interface Counted {
  readonly k: number;
  readonly n: number;
}

export interface SharesModel {
  /** Farm mean share M as ln(M/(1 − M)). */
  readonly mean: Belief;
  /** Steadiness φ of the runs, on its logarithm: runs vary with variance M(1 − M)/(φ + 1). */
  readonly steadiness: Belief;
}

/** One point of the answer: mean share, steadiness, weight (all weights add up to 1). */
export interface SharePoint {
  readonly weight: number;
  readonly mean: number;
  readonly steadiness: number;
  readonly logit: number;
  readonly halfStep: number;
}

const shareOf = (logit: number): number => 1 / (1 + Math.exp(-logit));

/** Likelihood of the counts, beta-binomial, up to what does not depend on M or φ. */
function likelihoodOf(runs: readonly Counted[]): (phi: number) => (mean: number) => number {
  const good = gammaSums(runs.map(({ k }) => k));
  const bad = gammaSums(runs.map(({ n, k }) => n - k));
  const all = gammaSums(runs.map(({ n }) => n));
  const lg = logGammaFast;
  return (phi) => {
    const fixed = runs.length * lg(phi) - all(phi);
    return (mean) => {
      const a = mean * phi;
      const b = phi - a;
      return fixed - runs.length * (lg(a) + lg(b)) + good(a) + bad(b);
    };
  };
}

interface Slice {
  readonly log: number;
  readonly at: readonly number[];
  readonly logs: readonly number[];
  readonly step: number;
}

/** The mean share summed out for one steadiness. */
function slice(
  likelihood: ReturnType<typeof likelihoodOf>,
  model: SharesModel,
  logPhi: number,
  points: number,
): Slice {
  const of = likelihood(Math.exp(logPhi));
  const logAt = (x: number): number => {
    const log = model.mean.logDensity(x) + of(shareOf(x));
    return Number.isNaN(log) ? -Infinity : log;
  };
  const [low, high] = narrow(model.mean.from, model.mean.to, 17, logAt);
  const at = grid(low, high, points);
  const logs = at.map(logAt);
  const top = Math.max(...logs);
  const step = (high - low) / (points - 1);
  const sum = logs.reduce((total, x) => total + Math.exp(x - top), 0) * step;
  return { log: model.steadiness.logDensity(logPhi) + top + Math.log(sum), at, logs, step };
}

const LOOK = 13;
const SLICES = 21;
const POINTS = 41;

/**
 * Partial pooling of counted shares (fertilised, hatched, alive) with the literature.
 *
 * Model as published: k ~ Binomial(n, p), p of a run ~ Beta(Mφ, (1 − M)φ); priors on ln(M/(1 − M)) and ln φ.
 * The two unknowns are summed over a grid (GELMAN13 section 5.3; beta-binomial after SKELLAM48 and
 * WILLIAMS75): one grid over ln φ and for each of its points one of its own over the mean, because a steady
 * farm pins the mean far closer than an unsteady one. No random numbers. In: counts per run, 0 ≤ k ≤ n. Out:
 * points with weights. With no run the literature comes back. Validity: runs exchangeable, animals of a run
 * alike. Example: the 71 rat experiments of TARONE82 → α 2.4, β 14.3.
 */
export function poolShares(runs: readonly Counted[], model: SharesModel): readonly SharePoint[] {
  const likelihood = likelihoodOf(runs);
  const [low, high] = narrow(
    model.steadiness.from,
    model.steadiness.to,
    LOOK,
    (u) => slice(likelihood, model, u, 17).log,
  );
  const found: { log: number; mean: number; logit: number; steadiness: number; halfStep: number }[] = [];
  for (const u of grid(low, high, SLICES)) {
    const { at, logs, step } = slice(likelihood, model, u, POINTS);
    const prior = model.steadiness.logDensity(u) + Math.log(step);
    at.forEach((logit, i) =>
      found.push({
        log: prior + (logs[i] ?? -Infinity),
        mean: shareOf(logit),
        logit,
        steadiness: Math.exp(u),
        halfStep: step / 2,
      }),
    );
  }
  const top = found.reduce((most, { log }) => Math.max(most, log), -Infinity);
  const kept = found.filter(({ log }) => log > top - NOTHING);
  const total = kept.reduce((sum, { log }) => sum + Math.exp(log - top), 0);
  return kept.map(({ log, ...point }) => ({ ...point, weight: Math.exp(log - top) / total }));
}

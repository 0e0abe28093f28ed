import { incompleteBeta } from '../counting/specialFunctions';
import type { Belief } from './belief';
import { NOTHING, grid, narrow } from './belief';
import { logGammaFast } from './logGammaFast';

/** k of n in one run. */
export interface Counted { readonly k: number; readonly n: number }

export interface SharesModel {
  /** Farm mean share M as ln(M/(1 − M)). */
  readonly mean: Belief;
  /** Steadiness φ of the runs, on its logarithm: runs vary with variance M(1 − M)/(φ + 1). */
  readonly steadiness: Belief;
}

/** One point of the answer: mean share, steadiness, weight (all weights add up to 1). */
export interface SharePoint { readonly weight: number; readonly mean: number; readonly steadiness: number; readonly logit: number; readonly halfStep: number }

const shareOf = (logit: number): number => 1 / (1 + Math.exp(-logit));

/** Likelihood of the counts, beta-binomial, up to what does not depend on M or φ. */
function likelihood(runs: readonly Counted[], phi: number): (mean: number) => number {
  const fixed = runs.reduce((sum, { n }) => sum - logGammaFast(n + phi), runs.length * logGammaFast(phi));
  return (mean) => {
    const a = mean * phi;
    const b = phi - a;
    let sum = fixed - runs.length * (logGammaFast(a) + logGammaFast(b));
    for (const { k, n } of runs) sum += logGammaFast(k + a) + logGammaFast(n - k + b);
    return sum;
  };
}

interface Slice { readonly log: number; readonly at: readonly number[]; readonly logs: readonly number[]; readonly step: number }

/** The mean share summed out for one steadiness. */
function slice(runs: readonly Counted[], model: SharesModel, logPhi: number, points: number): Slice {
  const of = likelihood(runs, Math.exp(logPhi));
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
 * Model as published: k ~ Binomial(n, p), p of a run ~ Beta(Mφ, (1 − M)φ); priors on ln(M/(1 − M)) and ln φ. The two unknowns are
 * summed over a grid (GELMAN13 section 5.3; beta-binomial after SKELLAM48 and WILLIAMS75): one grid over ln φ and for each of its
 * points one of its own over the mean, because a steady farm pins the mean far closer than an unsteady one. No random numbers.
 * In: counts per run, 0 ≤ k ≤ n. Out: points with weights. With no run the literature comes back.
 * Validity: runs exchangeable, animals of a run alike. Example: the 71 rat experiments of TARONE82 → α 2.4, β 14.3.
 */
export function poolShares(runs: readonly Counted[], model: SharesModel): readonly SharePoint[] {
  const [low, high] = narrow(model.steadiness.from, model.steadiness.to, LOOK, (u) => slice(runs, model, u, 17).log);
  const found: { log: number; mean: number; logit: number; steadiness: number; halfStep: number }[] = [];
  for (const u of grid(low, high, SLICES)) {
    const { at, logs, step } = slice(runs, model, u, POINTS);
    const prior = model.steadiness.logDensity(u) + Math.log(step);
    at.forEach((logit, i) => found.push({ log: prior + (logs[i] ?? -Infinity), mean: shareOf(logit), logit, steadiness: Math.exp(u), halfStep: step / 2 }));
  }
  const top = found.reduce((most, { log }) => Math.max(most, log), -Infinity);
  const kept = found.filter(({ log }) => log > top - NOTHING);
  const total = kept.reduce((sum, { log }) => sum + Math.exp(log - top), 0);
  return kept.map(({ log, ...point }) => ({ ...point, weight: Math.exp(log - top) / total }));
}

/** Finds where a rising function of a logit crosses a share. */
function crossing(low: number, high: number, wanted: number, below: (logit: number) => number): number {
  let a = low;
  let b = high;
  let fa = below(a) - wanted;
  let fb = below(b) - wanted;
  // Regula falsi with the Illinois halving: the functions are smooth but dear.
  for (let step = 0; step < 60 && b - a > 1e-6; step++) {
    const x = Math.min(Math.max((a * fb - b * fa) / (fb - fa), a + 1e-3 * (b - a)), b - 1e-3 * (b - a));
    const fx = below(x) - wanted;
    if (Math.abs(fx) < 1e-7) return x;
    if (fx > 0) {
      if (b !== high) fa /= 2;
      b = x;
      fb = fx;
    } else {
      if (a !== low) fb /= 2;
      a = x;
      fa = fx;
    }
  }
  return (a + b) / 2;
}

/** The farm's mean share below which the wanted part of the belief lies; every point stands for its own step of the grid. */
export function meanShareAt(points: readonly SharePoint[], wanted: number): number {
  const low = Math.min(...points.map((p) => p.logit - p.halfStep));
  const high = Math.max(...points.map((p) => p.logit + p.halfStep));
  const below = (x: number): number => points.reduce((sum, p) => sum + p.weight * Math.min(1, Math.max(0, (x - p.logit + p.halfStep) / (2 * p.halfStep))), 0);
  return shareOf(crossing(low, high, wanted, below));
}

const AT_ONCE = 4;
/** The share of the next run below which the wanted part of the belief lies: a mixture of beta distributions. */
export function nextShareAt(points: readonly SharePoint[], wanted: number): number {
  const betas: { weight: number; mean: number; phi: number }[] = [];
  // Points of one steadiness lie much closer than a beta is wide: a few are taken together.
  for (let i = 0; i < points.length;) {
    const phi = points[i]?.steadiness ?? NaN;
    let weight = 0;
    let mean = 0;
    let j = i;
    for (; j < Math.min(points.length, i + AT_ONCE) && points[j]?.steadiness === phi; j++) {
      weight += points[j]?.weight ?? 0;
      mean += (points[j]?.weight ?? 0) * (points[j]?.mean ?? 0);
    }
    if (weight > 1e-6) betas.push({ weight, mean: mean / weight, phi });
    i = j;
  }
  const total = betas.reduce((sum, b) => sum + b.weight, 0);
  const below = (x: number): number => betas.reduce((sum, b) => sum + b.weight * incompleteBeta(shareOf(x), b.mean * b.phi, (1 - b.mean) * b.phi), 0) / total;
  return shareOf(crossing(-12, 12, wanted, below));
}

import { logGammaFast } from '../../../maths/logGammaFast';
import type { SharePoint } from './poolShares';

const shareOf = (logit: number): number => 1 / (1 + Math.exp(-logit));
/** Beyond this logit a share cannot be told from 0 or 1. */
const END = 36;

/** Finds where a rising function crosses a value, to a millionth of a logit. */
function crossing(low: number, high: number, wanted: number, below: (logit: number) => number): number {
  let a = low;
  let b = high;
  while (b - a > 1e-6) {
    const x = (a + b) / 2;
    if (below(x) > wanted) b = x;
    else a = x;
  }
  return (a + b) / 2;
}

/**
 * The farm's mean share below which the wanted part of the belief lies; every point stands for its own step
 * of the grid.
 */
export function meanShareAt(points: readonly SharePoint[], wanted: number): number {
  const low = Math.min(...points.map((p) => p.logit - p.halfStep));
  const high = Math.max(...points.map((p) => p.logit + p.halfStep));
  const below = (x: number): number =>
    points.reduce(
      (sum, p) => sum + p.weight * Math.min(1, Math.max(0, (x - p.logit + p.halfStep) / (2 * p.halfStep))),
      0,
    );
  return shareOf(crossing(low, high, wanted, below));
}

interface Beta {
  readonly weight: number;
  readonly a: number;
  readonly b: number;
}
const AT_ONCE = 4;

/**
 * One beta in place of neighbouring points: their mean and their variance, M(1 − M)/(φ + 1) within and φ/(φ +
 * 1) of the variance of M between.
 */
function together(points: readonly SharePoint[], phi: number): Beta {
  const weight = points.reduce((sum, p) => sum + p.weight, 0);
  const mean = points.reduce((sum, p) => sum + p.weight * p.mean, 0) / weight;
  const between = points.reduce((sum, p) => sum + p.weight * (p.mean - mean) ** 2, 0) / weight;
  const variance = (mean * (1 - mean) - between) / (phi + 1) + between;
  const size = Math.max(1e-6, (mean * (1 - mean)) / variance - 1);
  return { weight, a: mean * size, b: (1 - mean) * size };
}

/** Beta distributions of the next run: points of one steadiness taken together a few at a time. */
function betasOf(points: readonly SharePoint[]): Beta[] {
  const betas: Beta[] = [];
  for (let i = 0; i < points.length;) {
    const phi = points[i]?.steadiness ?? NaN;
    const near = points.slice(i, i + AT_ONCE).filter((p) => p.steadiness === phi);
    i += near.length;
    betas.push(together(near, phi));
  }
  return betas.filter(({ weight }) => weight > 1e-6);
}

/** How far from its middle a beta still carries weight, on logits: its tails fall as e^(a·x) and e^(−b·x). */
const reach = ({ a, b }: Beta): readonly [number, number] => {
  const middle = Math.log(a / b);
  const sd = Math.sqrt(1 / a + 1 / b);
  return [
    Math.max(-END, middle - Math.max(7 * sd, 20 / a)),
    Math.min(END, middle + Math.max(7 * sd, 20 / b)),
  ];
};

const STEPS = 800;
/**
 * Quantiles of the share of the next run: a mixture of beta distributions, its density summed along logits,
 * where it is smooth even when runs are often near 0 or 100 %. What lies beyond the ends is added from the
 * tails. In: points of poolShares, wanted parts. Out: one share for each. Example: one beta (1, 1) at 0.975 →
 * 0.975.
 */
export function nextShareAt(points: readonly SharePoint[], wanted: readonly number[]): readonly number[] {
  const betas = betasOf(points);
  const reaches = betas.map(reach);
  const low = Math.min(...reaches.map(([l]) => l));
  const high = Math.max(...reaches.map(([, h]) => h));
  const step = (high - low) / STEPS;
  const density = new Float64Array(STEPS + 1);
  // ln p and ln(1 − p) without loss at either end.
  const logP = density.map(
    (_, i) => Math.min(0, low + step * i) - Math.log1p(Math.exp(-Math.abs(low + step * i))),
  );
  const logQ = density.map(
    (_, i) => Math.min(0, -low - step * i) - Math.log1p(Math.exp(-Math.abs(low + step * i))),
  );
  let tail = 0;
  let rest = 0;
  for (const { weight, a, b } of betas) {
    const log = Math.log(weight) + logGammaFast(a + b) - logGammaFast(a) - logGammaFast(b);
    for (let i = 0; i <= STEPS; i++) {
      const f = Math.exp(log + a * (logP[i] ?? 0) + b * (logQ[i] ?? 0));
      density[i] = (density[i] ?? 0) + f;
      if (i === 0) tail += f / a;
      if (i === STEPS) rest += f / b;
    }
  }
  const sums = new Float64Array(STEPS + 1);
  sums[0] = tail;
  for (let i = 1; i <= STEPS; i++)
    sums[i] = (sums[i - 1] ?? 0) + (step * ((density[i - 1] ?? 0) + (density[i] ?? 0))) / 2;
  const total = (sums[STEPS] ?? 0) + rest;
  return wanted.map((part) => {
    const i = sums.findIndex((sum) => sum >= part * total);
    if (i === 0) return low <= -END ? 0 : shareOf(low);
    if (i < 0) return high >= END ? 1 : shareOf(high);
    const before = sums[i - 1] ?? 0;
    return shareOf(low + step * (i - 1 + (part * total - before) / ((sums[i] ?? 0) - before)));
  });
}

import { binomial } from './binomial';
import type { Rng } from '../../../maths/rng';
import { rngOf } from '../../../maths/rng';
import type { ShareAt } from './shareSpread';
import { shareSpread } from './shareSpread';

/**
 * A share of the chain and how it varies: standard deviations between runs of one season, and between
 * seasons.
 */
export interface StageSpread {
  readonly mean: number;
  readonly runs: number;
  readonly season: number;
}
/**
 * Eggs of a female vary by log-normal factors with mean 1: deviations of their logarithms between females,
 * runs and seasons.
 */
export interface EggSpread {
  readonly females: number;
  readonly runs: number;
  readonly season: number;
}

export interface ChainRun {
  /** Eggs expected of each female if she gives any. */
  readonly eggs: readonly number[];
  /** Which of the stages it passes. */
  readonly stages: readonly number[];
  /** Index of what its fish are counted into. */
  readonly order: number;
  /** A share that does not vary, on top of the stages; above 1 where a stage is shorter than usual. */
  readonly scale?: number;
  /** Fish its vats hold at the most. */
  readonly most?: number;
}
export interface SeasonChain {
  readonly runs: readonly ChainRun[];
  readonly orders: number;
  readonly stages: readonly StageSpread[];
  readonly eggs: EggSpread;
  /** Share of injected females that give eggs. */
  readonly ovulating: number;
  /** Share of runs lost altogether. */
  readonly lost: number;
}

interface Correlated {
  readonly at: ShareAt;
  readonly shared: number;
  readonly own: number;
}
/** A run's deviation is √ρ of the season's and √(1 − ρ) its own; ρ is the season's part of the variance. */
const correlated = ({ mean, runs, season }: StageSpread): Correlated => {
  const total = Math.hypot(runs, season);
  const rho = total > 0 ? (season / total) ** 2 : 0;
  return { at: shareSpread(mean, total), shared: Math.sqrt(rho), own: Math.sqrt(1 - rho) };
};

/** More females than this are summed as one log-normal of the same mean and variance. */
const FEMALES_ONE_BY_ONE = 48;
const factor = (rng: Rng, deviation: number): number =>
  deviation > 0 ? Math.exp(deviation * (rng.normal() - deviation / 2)) : 1;

function manyFemales(rng: Rng, eggs: readonly number[], ovulating: number, deviation: number): number {
  const giving = binomial(rng, eggs.length, ovulating);
  if (giving === 0) return 0;
  const mean = (eggs.reduce((sum, e) => sum + e, 0) / eggs.length) * giving;
  return mean * factor(rng, Math.sqrt(Math.log1p(Math.expm1(deviation * deviation) / giving)));
}

export function eggsStripped(
  rng: Rng,
  eggs: readonly number[],
  ovulating: number,
  deviation: number,
): number {
  if (eggs.length > FEMALES_ONE_BY_ONE) return manyFemales(rng, eggs, ovulating, deviation);
  let sum = 0;
  for (const mean of eggs) if (ovulating >= 1 || rng.even() < ovulating) sum += mean * factor(rng, deviation);
  return sum;
}

/**
 * Fish of each order in each of the drawn seasons.
 *
 * Each draw: season deviations of every share and of the eggs; then run by run eggs of each female
 * (log-normal), shares (beta, correlated through the season), and one binomial for all steps together,
 * because thinning twice is thinning by the product. In: the chain, number of draws, seed. Out: per order one
 * number per draw. Source: DEFINITION.
 */
export function simulateSeason(chain: SeasonChain, draws: number, seed: number): Float64Array[] {
  const rng = rngOf(seed);
  const stages = chain.stages.map(correlated);
  const totals = Array.from({ length: chain.orders }, () => new Float64Array(draws));
  const season = new Float64Array(stages.length);
  for (let draw = 0; draw < draws; draw++) {
    for (let i = 0; i < season.length; i++) season[i] = rng.normal();
    const seasonEggs = factor(rng, chain.eggs.season);
    for (const run of chain.runs) {
      const isLost = chain.lost > 0 && rng.even() < chain.lost;
      let share = run.scale ?? 1;
      for (const i of run.stages) {
        const stage = stages[i];
        if (stage)
          share *= stage.at(stage.shared * (season[i] ?? 0) + (stage.own > 0 ? stage.own * rng.normal() : 0));
      }
      const eggs =
        seasonEggs *
        factor(rng, chain.eggs.runs) *
        eggsStripped(rng, run.eggs, chain.ovulating, chain.eggs.females);
      const total = totals[run.order];
      if (total && !isLost)
        total[draw] =
          (total[draw] ?? 0) + Math.min(run.most ?? Infinity, binomial(rng, Math.round(eggs), share));
    }
  }
  return totals;
}

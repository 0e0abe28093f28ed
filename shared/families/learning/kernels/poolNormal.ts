import type { Bell, Belief } from './belief';
import { grid, narrow } from './belief';

/**
 * Runs of one kind (a hormone preparation, a month): what was measured, and the variance of the measuring, 0
 * where unknown.
 */
export interface PoolKind {
  readonly values: readonly number[];
  readonly errors?: readonly number[];
}

export interface NormalModel {
  /** Farm mean, from the literature: bells. */
  readonly mean: readonly Bell[];
  /** Spread between runs of one kind, on its logarithm. */
  readonly runs: Belief;
  /** Spread between kinds, on its logarithm; left out when all runs are of one kind. */
  readonly kinds?: Belief;
}

/** One case of the unknown spreads: its weight and what then follows, all normal. */
export interface Case {
  readonly weight: number;
  readonly runSd: number;
  readonly kindSd: number;
  readonly farm: Bell;
  /** Mean of each kind, in the order given; one more at the end for a kind never seen. */
  readonly kinds: readonly Bell[];
  /** Pull of the own runs against the literature in this case, 0 to 1. */
  readonly pull: number;
  /** Mean of the own runs alone and its variance; without a run 0 and infinite. */
  readonly own: number;
  readonly ownVariance: number;
}

interface Summed {
  readonly precision: number;
  readonly mean: number;
  readonly logLikelihood: number;
}

/**
 * A kind's runs for one spread: weighted mean, its precision, and the likelihood left when the kind's mean is
 * taken out.
 */
function summed({ values, errors }: PoolKind, variance: number): Summed {
  if (values.length === 0) return { precision: 0, mean: 0, logLikelihood: 0 };
  let precision = 0;
  let weighted = 0;
  let logs = 0;
  for (let i = 0; i < values.length; i++) {
    const v = variance + (errors?.[i] ?? 0);
    precision += 1 / v;
    weighted += (values[i] ?? NaN) / v;
    logs += Math.log(v);
  }
  const mean = weighted / precision;
  let squares = 0;
  for (let i = 0; i < values.length; i++)
    squares += ((values[i] ?? NaN) - mean) ** 2 / (variance + (errors?.[i] ?? 0));
  // Taking out the kind's own mean costs one degree of freedom, hence the last term.
  return { precision, mean, logLikelihood: -0.5 * (logs + squares + Math.log(precision)) };
}

/** Means of the kinds put together for one spread between kinds. */
interface Joined {
  readonly precision: number;
  readonly own: number;
  readonly log: number;
}

function joined(sums: readonly Summed[], kindVariance: number): Joined {
  let precision = 0;
  let weighted = 0;
  let squared = 0;
  let log = 0;
  for (const s of sums) {
    if (s.precision === 0) continue;
    const v = kindVariance + 1 / s.precision;
    precision += 1 / v;
    weighted += s.mean / v;
    squared += (s.mean * s.mean) / v;
    log += s.logLikelihood - 0.5 * Math.log(v);
  }
  if (precision === 0) return { precision, own: 0, log: 0 };
  const own = weighted / precision;
  return { precision, own, log: log - 0.5 * (Math.max(0, squared - own * weighted) + Math.log(precision)) };
}

/** Likelihood of a bell of the literature, on its logarithm. */
const bellLog = ({ precision, own, log }: Joined, bell: Bell): number => {
  if (precision === 0) return Math.log(bell.weight);
  const spread = bell.sd * bell.sd + 1 / precision;
  return log + Math.log(bell.weight) - 0.5 * (Math.log(spread) + (own - bell.mean) ** 2 / spread);
};

function caseOf(
  sums: readonly Summed[],
  { precision, own }: Joined,
  bell: Bell,
  runSd: number,
  kindSd: number,
): Omit<Case, 'weight'> {
  const prior = bell.sd * bell.sd;
  const pull = precision > 0 ? prior / (prior + 1 / precision) : 0;
  const farm = {
    weight: 1,
    mean: bell.mean + pull * (own - bell.mean),
    sd: Math.sqrt(1 / (1 / prior + precision)),
  };
  return {
    runSd,
    kindSd,
    farm,
    pull,
    own,
    ownVariance: 1 / precision,
    kinds: kindSd === 0 ? [] : [...sums, undefined].map((s) => kindBell(s, farm, kindSd)),
  };
}

function kindBell(s: Summed | undefined, farm: Bell, kindSd: number): Bell {
  const own = s && s.precision > 0 ? s.precision / (s.precision + 1 / kindSd ** 2) : 0;
  return {
    weight: 1,
    mean: own * (s?.mean ?? 0) + (1 - own) * farm.mean,
    sd: Math.sqrt((1 - own) * kindSd ** 2 + ((1 - own) * farm.sd) ** 2),
  };
}

const POINTS_ALONE = 41;
const POINTS_EACH = 17;
const LEAST_WEIGHT = 1e-7;

/**
 * Partial pooling of measured runs with the literature.
 *
 * Model as published (random effects, normal-normal): y = θ + e, e ~ N(0, τ² + v); θ of a kind ~ N(μ, σ²);
 * here μ has the literature as prior, τ and σ are unknown. Given τ and σ everything is normal; τ and σ are
 * summed over a grid of their logarithms (GELMAN13 section 5.4, ROVER20), so the answer is a mixture of
 * bells. No random numbers. In: runs by kind in any unit (logarithms for what cannot be negative), v the
 * known variance of a measurement. Out: cases with weights that add up to 1. With no run at all the
 * literature comes back. Validity: kinds and runs exchangeable. Example: the eight schools of RUBIN81 → mean
 * 7.99, standard deviation 5.00.
 */
export function poolNormal(kinds: readonly PoolKind[], model: NormalModel): readonly Case[] {
  const { mean: bells, runs } = model;
  const between = model.kinds;
  const sumsAt = (logRun: number): readonly Summed[] =>
    kinds.map((kind) => summed(kind, Math.exp(2 * logRun)));
  const kindLog = (u: number): number => between?.logDensity(u) ?? 0;
  const kindSd = (u: number): number => (between ? Math.exp(u) : 0);
  const best = (sums: readonly Summed[], kindLogs: readonly number[]): number => {
    let most = -Infinity;
    for (const k of kindLogs) {
      const all = joined(sums, kindSd(k) ** 2);
      for (const bell of bells) most = Math.max(most, kindLog(k) + bellLog(all, bell));
    }
    return most;
  };
  const roughKinds = between ? grid(between.from, between.to, POINTS_EACH) : [0];
  const [low, high] = narrow(
    runs.from,
    runs.to,
    between ? POINTS_EACH : POINTS_ALONE,
    (u) => runs.logDensity(u) + best(sumsAt(u), roughKinds),
  );
  const runAt = grid(low, high, between ? POINTS_EACH : POINTS_ALONE).map((u) => ({
    u,
    log: runs.logDensity(u),
    sums: sumsAt(u),
  }));
  const kindAt = between
    ? grid(
        ...narrow(between.from, between.to, POINTS_EACH, (k) =>
          runAt.reduce((most, { log, sums }) => Math.max(most, log + best(sums, [k])), -Infinity),
        ),
        POINTS_EACH,
      )
    : [0];
  const found: { log: number; build: () => Omit<Case, 'weight'> }[] = [];
  for (const { u, log, sums } of runAt)
    for (const k of kindAt) {
      const all = joined(sums, kindSd(k) ** 2);
      for (const bell of bells)
        found.push({
          log: log + kindLog(k) + bellLog(all, bell),
          build: () => caseOf(sums, all, bell, Math.exp(u), kindSd(k)),
        });
    }
  const top = found.reduce((most, { log }) => Math.max(most, log), -Infinity);
  const total = found.reduce((sum, { log }) => sum + Math.exp(log - top), 0);
  return found
    .map(({ log, build }) => ({ weight: Math.exp(log - top) / total, build }))
    .filter(({ weight }) => weight > LEAST_WEIGHT)
    .map(({ weight, build }) => ({ ...build(), weight }));
}

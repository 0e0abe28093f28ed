import type { Bell, Belief } from './belief';
import { grid, narrow } from './belief';

/** Runs of one kind (a hormone preparation, a month): what was measured, and the variance of the measuring, 0 where unknown. */
export interface Kind {
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
}

interface Summed { readonly precision: number; readonly mean: number; readonly logLikelihood: number }

/** A kind's runs for one spread: weighted mean, its precision, and the likelihood left when the kind's mean is taken out. */
function summed({ values, errors }: Kind, variance: number): Summed {
  let precision = 0;
  let weighted = 0;
  let logs = 0;
  values.forEach((y, i) => {
    const v = variance + (errors?.[i] ?? 0);
    precision += 1 / v;
    weighted += y / v;
    logs += Math.log(v);
  });
  if (values.length === 0) return { precision: 0, mean: 0, logLikelihood: 0 };
  const mean = weighted / precision;
  const squares = values.reduce((sum, y, i) => sum + (y - mean) ** 2 / (variance + (errors?.[i] ?? 0)), 0);
  // The kind's own mean takes one degree of freedom, hence the last term.
  return { precision, mean, logLikelihood: -0.5 * (logs + squares + Math.log(precision)) };
}

interface Answered { readonly logWeight: number; readonly cases: readonly Omit<Case, 'weight'>[]; readonly logs: readonly number[] }

/** Everything that follows once both spreads are given. */
function answered(sums: readonly Summed[], bells: readonly Bell[], runSd: number, kindSd: number): Answered {
  const seen = sums.filter((s) => s.precision > 0);
  let precision = 0;
  let weighted = 0;
  let logs = 0;
  for (const s of seen) {
    const v = kindSd * kindSd + 1 / s.precision;
    precision += 1 / v;
    weighted += s.mean / v;
    logs += s.logLikelihood - 0.5 * Math.log(v);
  }
  const own = precision > 0 ? weighted / precision : 0;
  const squares = seen.reduce((sum, s) => sum + (s.mean - own) ** 2 / (kindSd * kindSd + 1 / s.precision), 0);
  const shared = logs - 0.5 * squares - (precision > 0 ? 0.5 * Math.log(precision) : 0);
  const caseLogs: number[] = [];
  const cases = bells.map((bell) => {
    const prior = bell.sd * bell.sd;
    const spread = prior + 1 / precision;
    caseLogs.push(shared + Math.log(bell.weight) - (precision > 0 ? 0.5 * (Math.log(spread) + (own - bell.mean) ** 2 / spread) : 0));
    const pull = precision > 0 ? prior / spread : 0;
    const farm = { weight: 1, mean: bell.mean + pull * (own - bell.mean), sd: Math.sqrt(1 / (1 / prior + precision)) };
    return { runSd, kindSd, farm, pull, kinds: [...sums, undefined].map((s) => kindBell(s, farm, kindSd)) };
  });
  return { logWeight: Math.max(...caseLogs), cases, logs: caseLogs };
}

function kindBell(s: Summed | undefined, farm: Bell, kindSd: number): Bell {
  if (kindSd === 0) return farm;
  const own = s && s.precision > 0 ? s.precision / (s.precision + 1 / kindSd ** 2) : 0;
  const rest = (1 - own) * kindSd ** 2;
  return { weight: 1, mean: own * (s?.mean ?? 0) + (1 - own) * farm.mean, sd: Math.sqrt(rest + ((1 - own) * farm.sd) ** 2) };
}

const POINTS_ALONE = 41;
const POINTS_EACH = 17;

/**
 * Partial pooling of measured runs with the literature.
 *
 * Model as published (random effects, normal-normal): y = θ + e, e ~ N(0, τ² + v); θ of a kind ~ N(μ, σ²); here μ has the
 * literature as prior, τ and σ are unknown. Given τ and σ everything is normal; τ and σ are summed over a grid of their
 * logarithms (GELMAN13 section 5.4, ROVER20), so the answer is a mixture of bells. No random numbers.
 * In: runs by kind in any unit (logarithms for what cannot be negative), v the known variance of a measurement.
 * Out: cases with weights that add up to 1. With no run at all the literature comes back.
 * Validity: kinds and runs exchangeable. Example: the eight schools of RUBIN81 → mean 7.99, standard deviation 5.00.
 */
export function poolNormal(kinds: readonly Kind[], model: NormalModel): readonly Case[] {
  const { mean: bells, runs } = model;
  const between = model.kinds;
  const sumsAt = (logRun: number): readonly Summed[] => kinds.map((kind) => summed(kind, Math.exp(2 * logRun)));
  const kindLog = (u: number): number => between?.logDensity(u) ?? 0;
  const kindSd = (u: number): number => (between ? Math.exp(u) : 0);
  const best = (sums: readonly Summed[], kindLogs: readonly number[]): number =>
    kindLogs.reduce((most, k) => Math.max(most, kindLog(k) + answered(sums, bells, 0, kindSd(k)).logWeight), -Infinity);
  const roughKinds = between ? grid(between.from, between.to, POINTS_EACH) : [0];
  const [low, high] = narrow(runs.from, runs.to, between ? POINTS_EACH : POINTS_ALONE, (u) => runs.logDensity(u) + best(sumsAt(u), roughKinds));
  const runAt = grid(low, high, between ? POINTS_EACH : POINTS_ALONE).map((u) => ({ u, log: runs.logDensity(u), sums: sumsAt(u) }));
  const kindAt = between
    ? grid(...narrow(between.from, between.to, POINTS_EACH, (k) => runAt.reduce((most, { log, sums }) => Math.max(most, log + best(sums, [k])), -Infinity)), POINTS_EACH)
    : [0];
  const found: { log: number; case: Omit<Case, 'weight'> }[] = [];
  for (const { u, log, sums } of runAt)
    for (const k of kindAt) {
      const { cases, logs } = answered(sums, bells, Math.exp(u), kindSd(k));
      cases.forEach((one, i) => found.push({ log: log + kindLog(k) + (logs[i] ?? -Infinity), case: one }));
    }
  const top = found.reduce((most, { log }) => Math.max(most, log), -Infinity);
  const total = found.reduce((sum, { log }) => sum + Math.exp(log - top), 0);
  return found.map(({ log, case: one }) => ({ ...one, weight: Math.exp(log - top) / total })).filter(({ weight }) => weight > 1e-9);
}

import type { RunRecord } from '../records/schema';
import type { Estimate } from '../families/learning/kernels/estimate';
import { estimateBetween } from '../families/learning/kernels/betweenFemales';
import { estimateCounted, estimateMeasured } from '../families/learning/kernels/estimate';
import type { Observation, Observed, ObserveSettings } from './observe';
import { observe } from './observe';
import { femalesByRun } from './observe/females';
import { byRun } from './observe/runs';
import type { Counted } from '../families/learning/kernels/poolShares';
import type { RateKey, RateSpec } from '../families/learning/rates';
import { OWN_HORMONE, RATE_KEYS, rateSpec } from '../families/learning/rates';
import { DEFAULT_PREPARATION } from '../families/preparations';
import { runNow } from '../base/steps';
import { MONTH_NAMES } from '../units/dates';

/** One rate of the farm, for all runs or for one kind of them. */
export interface FarmRate extends Estimate {
  readonly key: RateKey;
  /** Preparation or month the figure is for; undefined for the farm as a whole. */
  readonly kind: string | number | undefined;
  readonly label: string;
  readonly unit: string;
  readonly format: string;
  /** What is used without own runs, and where the literature alone would put mean and next run. */
  readonly literature: Estimate;
  readonly sources: readonly string[];
  readonly note: string;
}

export interface UnusedCount {
  readonly rate: RateKey;
  readonly because: string;
  readonly count: number;
}
export interface FarmRates {
  readonly rates: readonly FarmRate[];
  readonly unused: readonly UnusedCount[];
  readonly records: number;
  readonly refused: number;
  readonly confidence: number;
}

const MONTHS = MONTH_NAMES.map((_, i) => i + 1);

const kindLabel = (spec: RateSpec, kind: string | number): string =>
  `${spec.label}, ${typeof kind === 'number' ? (MONTH_NAMES[kind - 1] ?? '') : kind}${
    kind === OWN_HORMONE ? ` (against the table of the ${DEFAULT_PREPARATION})` : ''
  }`;

const aboutOf = (spec: RateSpec, key: RateKey) => ({
  key,
  label: spec.label,
  unit: spec.unit,
  format: spec.format,
  sources: spec.sources,
  note: spec.note,
});

const total = (run: readonly Observation[], of: (one: Observation) => number | undefined): number =>
  run.reduce((sum, one) => sum + (of(one) ?? 0), 0);
const countsOf = (seen: readonly Observation[]): Counted[] =>
  byRun(seen).map((run) => ({ k: total(run, (o) => o.k), n: total(run, (o) => o.n) }));
const valuesOf = (seen: readonly Observation[]): number[] =>
  byRun(seen).map((run) => total(run, (o) => o.value) / run.length);

/**
 * Without any run of the farm the value is the literature's own, not the middle of what is believed around
 * it.
 */
function plainly(estimate: Estimate, { literature, most = Infinity }: RateSpec): Estimate {
  const cut = (x: number): number => Math.min(x, most);
  const { value, low, high, nextLow, nextHigh, ownWeight, runs } = estimate;
  return {
    value: ownWeight === 0 ? literature : cut(value),
    low: cut(low),
    high: cut(high),
    nextLow: cut(nextLow),
    nextHigh: cut(nextHigh),
    ownWeight,
    runs,
  };
}

function countedRate(key: RateKey, seen: readonly Observation[], confidence: number): readonly FarmRate[] {
  const spec = rateSpec(key);
  const literature = estimateCounted(spec, [], confidence);
  return [
    {
      ...aboutOf(spec, key),
      kind: undefined,
      literature: plainly(literature, spec),
      ...plainly(seen.length === 0 ? literature : estimateCounted(spec, countsOf(seen), confidence), spec),
    },
  ];
}

function measuredRate(key: RateKey, seen: readonly Observation[], confidence: number): readonly FarmRate[] {
  const spec = rateSpec(key);
  const kinds = spec.kinds?.by === 'month' ? MONTHS : [...new Set(seen.map(({ kind }) => kind ?? ''))].sort();
  const lists = spec.kinds
    ? kinds.map((kind) => ({ values: valuesOf(seen.filter((s) => s.kind === kind)) }))
    : [{ values: valuesOf(seen) }];
  const before = estimateMeasured(spec, [], confidence);
  const after =
    seen.length === 0 ? { farm: before.farm, kinds: [] } : estimateMeasured(spec, lists, confidence);
  const about = aboutOf(spec, key);
  const whole: FarmRate = {
    ...about,
    kind: undefined,
    literature: plainly(before.farm, spec),
    ...plainly(after.farm, spec),
  };
  if (!spec.kinds) return [whole];
  const unseen = before.kinds[0] ?? before.farm;
  return [
    whole,
    ...kinds.map((kind, i): FarmRate => ({
      ...about,
      label: kindLabel(spec, kind),
      kind,
      literature: plainly(unseen, spec),
      ...plainly(after.kinds[i] ?? unseen, spec),
    })),
  ];
}

/** How much females of one run differ; runs are those with several females weighed one by one. */
function spreadRate(records: readonly RunRecord[], confidence: number): FarmRate {
  const spec = rateSpec('femaleSpread');
  const literature = plainly(estimateBetween(spec, [], confidence), spec);
  const groups = femalesByRun(records);
  return {
    ...aboutOf(spec, 'femaleSpread'),
    kind: undefined,
    literature,
    ...(groups.length === 0 ? literature : plainly(estimateBetween(spec, groups, confidence), spec)),
  };
}

/** Adds up the reasons why records could not be used. */
function unusedOf({ skipped }: Observed): UnusedCount[] {
  const counts = new Map<string, UnusedCount>();
  for (const { rate, because } of skipped) {
    const key = `${rate}|${because}`;
    counts.set(key, { rate, because, count: (counts.get(key)?.count ?? 0) + 1 });
  }
  return [...counts.values()].sort((a, b) => b.count - a.count);
}

export interface LearnSettings extends ObserveSettings {
  readonly confidence?: number;
}

/** learnRates in steps, yielding the share done: many records take a while. */
export function* learnSteps(
  records: readonly RunRecord[],
  settings: LearnSettings = {},
): Generator<number, FarmRates> {
  const { confidence = 0.95 } = settings;
  const observed = observe(records, settings);
  const rates: FarmRate[] = [];
  for (const [i, key] of RATE_KEYS.entries()) {
    yield i / RATE_KEYS.length;
    const seen = observed.observations.filter(({ rate }) => rate === key);
    rates.push(
      ...(rateSpec(key).scale === 'share'
        ? countedRate(key, seen, confidence)
        : measuredRate(key, seen, confidence)),
    );
  }
  rates.push(spreadRate(records, confidence));
  return {
    rates,
    unused: unusedOf(observed),
    records: observed.records,
    refused: observed.refused,
    confidence,
  };
}

/**
 * Accepted records → the hatchery's own rates. Every rate comes back, whether or not a run speaks of it: with
 * none it is the literature, said as such (runs 0, own weight 0). Deterministic.
 */
export const learnRates = (records: readonly RunRecord[], settings: LearnSettings = {}): FarmRates =>
  runNow(learnSteps(records, settings));

/** The rate for a kind, or for the farm as a whole where that kind was never seen. */
export const rateOf = (rates: FarmRates, key: RateKey, kind?: string | number): FarmRate | undefined =>
  (kind === undefined ? undefined : rates.rates.find((r) => r.key === key && r.kind === kind)) ??
  rates.rates.find((r) => r.key === key && r.kind === undefined);

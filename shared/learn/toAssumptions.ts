import type { LatencyOffsets } from '../records/rules/rule';
import type { AssumptionKey } from '../families/assumptions';
import { ASSUMPTIONS } from '../families/assumptions';
import type { FarmRate, FarmRates } from './learn';
import type { RateKey } from '../families/learning/rates';
import { OWN_HORMONE, RATE_KEYS, rateSpec } from '../families/learning/rates';
import { DEFAULT_PREPARATION } from '../families/preparations';

export interface PlannedWith {
  /** Month (1 to 12) of stripping: egg yield moves with it. */
  readonly month?: number;
  /** Hormone preparation: latency moves with it. Left out, the one used most. */
  readonly preparation?: string;
}

export interface LearnedFigure {
  readonly value: number;
  /** Where the next run may lie. */
  readonly low: number;
  readonly high: number;
  /** Where the mean of many runs may lie. */
  readonly meanLow: number;
  readonly meanHigh: number;
  readonly runs: number;
}

/** A rate as it was learned, or as it was read back from a sheet. */
export type PlannedRate = Pick<FarmRate, 'key' | 'kind' | Ends | 'runs'> & { readonly isTyped?: boolean };
type Ends = 'value' | 'low' | 'high' | 'nextLow' | 'nextHigh';

/** Same place in steps of a plausible figure: enough for a plan, and what a cell shows is what is used. */
const rounded = (x: number): number => Number(x.toPrecision(4));

/** A figure within what the plan lets anyone type. */
const fitted = (key: AssumptionKey, x: number): number => {
  const { min, max } = ASSUMPTIONS[key];
  return Math.min(max, Math.max(min, rounded(x)));
};

const figure = (
  key: AssumptionKey,
  { value, low, high, nextLow, nextHigh, runs }: Pick<PlannedRate, Ends | 'runs'>,
): LearnedFigure => ({
  value: fitted(key, value),
  low: fitted(key, nextLow),
  high: fitted(key, nextHigh),
  meanLow: fitted(key, low),
  meanHigh: fitted(key, high),
  runs,
});

/** The rate for a kind, or for the farm as a whole where that kind was never seen. */
const pick = (rates: readonly PlannedRate[], key: RateKey, kind?: string | number): PlannedRate | undefined =>
  (kind === undefined ? undefined : rates.find((r) => r.key === key && r.kind === kind)) ??
  rates.find((r) => r.key === key && r.kind === undefined);

/** The kind a plan is about; where it names no preparation, the one used most. */
const kindFor = (
  rates: readonly PlannedRate[],
  key: RateKey,
  { month, preparation }: PlannedWith,
): string | number | undefined => {
  const by = rateSpec(key).kinds?.by;
  if (by !== 'preparation') return by === 'month' ? month : undefined;
  const used = rates.filter((r) => r.key === key && r.kind !== undefined);
  const isOwn = used.some(({ kind, runs }) => kind === OWN_HORMONE && runs > 0);
  const isUsed = used.some(({ kind }) => kind === preparation);
  // Runs of a hormone without a table were compared with this one.
  if (preparation === DEFAULT_PREPARATION && isOwn && !isUsed) return OWN_HORMONE;
  return (
    preparation ??
    used.reduce<PlannedRate | undefined>((most, r) => (most && most.runs >= r.runs ? most : r), undefined)
      ?.kind
  );
};

/**
 * Records often count hatched larvae and then fry, nothing in between. The plan has two steps there, the yolk
 * and the rearing; their shares are raised to one power so that together they give what was counted.
 */
function splitLarvae(rate: PlannedRate): { yolkSurvival: LearnedFigure; frySurvival: LearnedFigure } {
  const yolk = ASSUMPTIONS.yolkSurvival.planned;
  const fry = ASSUMPTIONS.frySurvival.planned;
  const part = (own: number, of: number): number => of ** (Math.log(own) / Math.log(yolk * fry));
  const each = (key: 'yolkSurvival' | 'frySurvival', of: number): LearnedFigure =>
    figure(key, {
      value: part(rate.value, of),
      low: part(rate.low, of),
      high: part(rate.high, of),
      nextLow: part(rate.nextLow, of),
      nextHigh: part(rate.nextHigh, of),
      runs: rate.runs,
    });
  return { yolkSurvival: each('yolkSurvival', yolk), frySurvival: each('frySurvival', fry) };
}

/**
 * Hours of a hormone without a table lie so far from the default one's table; from another's they lie
 * elsewhere. A plan with a preparation that no run names takes no offset from them.
 */
const isOfAnother = (
  rates: readonly PlannedRate[],
  key: RateKey,
  rate: PlannedRate,
  { preparation = DEFAULT_PREPARATION }: PlannedWith,
): boolean =>
  rateSpec(key).kinds?.by === 'preparation' &&
  rate.kind === undefined &&
  preparation !== DEFAULT_PREPARATION &&
  rates.some((r) => r.key === key && r.kind === OWN_HORMONE && r.runs > 0);

const isSaid = (rate: PlannedRate | undefined): boolean =>
  rate !== undefined && (rate.runs > 0 || rate.isTyped === true);

/**
 * Figures of the season plan with what the next run may give, only where own runs (or the user, on the sheet
 * of rates) speak of them.
 */
export function figuresFrom(
  rates: readonly PlannedRate[],
  planned: PlannedWith = {},
): Partial<Record<AssumptionKey, LearnedFigure>> {
  const figures: Partial<Record<AssumptionKey, LearnedFigure>> = {};
  const larvae = pick(rates, 'larvaeToFry');
  if (larvae && isSaid(larvae)) Object.assign(figures, splitLarvae(larvae));
  for (const key of RATE_KEYS) {
    const { assumption } = rateSpec(key);
    const whole = pick(rates, key);
    const rate = pick(rates, key, kindFor(rates, key, planned));
    if (assumption && rate && !isOfAnother(rates, key, rate, planned) && (isSaid(whole) || isSaid(rate)))
      figures[assumption] = figure(assumption, rate);
  }
  return figures;
}

/** The farm's own offsets of the strip, for the check of records; undefined while no run speaks of them. */
export function latencyOffsetsOf(rates: readonly PlannedRate[]): LatencyOffsets | undefined {
  const whole = pick(rates, 'latencyOffset');
  const kinds = rates.filter((r) => r.key === 'latencyOffset' && r.kind !== undefined && isSaid(r));
  if (!isSaid(whole) && kinds.length === 0) return undefined;
  return {
    whole: whole?.value ?? 0,
    by: Object.fromEntries(kinds.map(({ kind, value }) => [String(kind), value])),
  };
}

/** How much females of one run differ, where runs (or the user, on the sheet of rates) say it. */
export function femaleSpreadOf(rates: readonly PlannedRate[]): number | undefined {
  const rate = pick(rates, 'femaleSpread');
  return rate && isSaid(rate) ? rounded(rate.value) : undefined;
}

export const ratesToFigures = (rates: FarmRates, planned: PlannedWith = {}): ReturnType<typeof figuresFrom> =>
  figuresFrom(rates.rates, planned);

/** The same as values alone, ready to be the plan's assumptions. */
export const ratesToAssumptions = (
  rates: FarmRates,
  planned: PlannedWith = {},
): Partial<Record<AssumptionKey, number>> =>
  Object.fromEntries(Object.entries(ratesToFigures(rates, planned)).map(([key, { value }]) => [key, value]));

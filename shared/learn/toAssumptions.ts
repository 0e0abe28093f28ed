import type { AssumptionKey } from '../plan/assumptions';
import { ASSUMPTIONS } from '../plan/assumptions';
import type { FarmRate, FarmRates } from './learn';
import { rateOf } from './learn';
import type { RateKey } from './rates';
import { RATE_KEYS, rateSpec } from './rates';

export interface PlannedWith {
  /** Month (1 to 12) of stripping: egg yield moves with it. */
  readonly month?: number;
  /** Hormone preparation: latency moves with it. Left out, the one used most. */
  readonly preparation?: string;
}

export interface LearnedFigure { readonly value: number; readonly low: number; readonly high: number; readonly runs: number }

/** Same place in steps of a plausible figure: enough for a plan, and what a cell shows is what is used. */
const rounded = (x: number): number => Number(x.toPrecision(4));

/** A figure within what the plan lets anyone type. */
const fitted = (key: AssumptionKey, x: number): number => {
  const { min, max } = ASSUMPTIONS[key];
  return Math.min(max, Math.max(min, rounded(x)));
};

const figure = (key: AssumptionKey, { value, nextLow, nextHigh, runs }: Pick<FarmRate, 'value' | 'nextLow' | 'nextHigh' | 'runs'>): LearnedFigure =>
  ({ value: fitted(key, value), low: fitted(key, nextLow), high: fitted(key, nextHigh), runs });

/** The kind a plan is about; where it names no preparation, the one used most. */
const kindFor = (rates: FarmRates, key: RateKey, { month, preparation }: PlannedWith): string | number | undefined => {
  const by = rateSpec(key).kinds?.by;
  if (by !== 'preparation') return by === 'month' ? month : undefined;
  const used = rates.rates.filter((r) => r.key === key && r.kind !== undefined);
  return preparation ?? used.reduce<FarmRate | undefined>((most, r) => (most && most.runs >= r.runs ? most : r), undefined)?.kind;
};

/**
 * Records often count hatched larvae and then fry, nothing in between. The plan has two steps there, the yolk and the rearing;
 * their shares are raised to one power so that together they give what was counted.
 */
function splitLarvae(rate: FarmRate): { yolkSurvival: LearnedFigure; frySurvival: LearnedFigure } {
  const yolk = ASSUMPTIONS.yolkSurvival.planned;
  const fry = ASSUMPTIONS.frySurvival.planned;
  const part = (own: number, of: number): number => of ** (Math.log(own) / Math.log(yolk * fry));
  const each = (key: 'yolkSurvival' | 'frySurvival', of: number): LearnedFigure =>
    figure(key, { value: part(rate.value, of), nextLow: part(rate.nextLow, of), nextHigh: part(rate.nextHigh, of), runs: rate.runs });
  return { yolkSurvival: each('yolkSurvival', yolk), frySurvival: each('frySurvival', fry) };
}

/** Figures of the season plan with what the next run may give, only where own runs speak of them. */
export function ratesToFigures(rates: FarmRates, planned: PlannedWith = {}): Partial<Record<AssumptionKey, LearnedFigure>> {
  const figures: Partial<Record<AssumptionKey, LearnedFigure>> = {};
  const larvae = rateOf(rates, 'larvaeToFry');
  if (larvae && larvae.runs > 0) Object.assign(figures, splitLarvae(larvae));
  for (const key of RATE_KEYS) {
    const { assumption } = rateSpec(key);
    const whole = rateOf(rates, key);
    const rate = rateOf(rates, key, kindFor(rates, key, planned));
    if (assumption && rate && whole && whole.runs > 0) figures[assumption] = figure(assumption, { ...rate, runs: rate.kind === undefined ? whole.runs : rate.runs });
  }
  return figures;
}

/** The same as values alone, ready to be the plan's assumptions. */
export const ratesToAssumptions = (rates: FarmRates, planned: PlannedWith = {}): Partial<Record<AssumptionKey, number>> =>
  Object.fromEntries(Object.entries(ratesToFigures(rates, planned)).map(([key, { value }]) => [key, value]));

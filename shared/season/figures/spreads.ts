import type { Assumed } from '../../families/assumptions';
import type { OrderBook } from '../book/orderBook';
import type { EggSpread, StageSpread } from '../../families/money/odds/simulate';

/**
 * How much a season and its runs vary, until the hatchery's own runs say. Chosen here, no source; the
 * published means they surround differ far more (hatch 28 to 59 % between two seasons, GRAAF95).
 */
const RUNS = 0.3; // of √(m(1 − m)), between runs of a season; chosen here, no source
const SEASON = 0.2; // of √(m(1 − m)), shared by a season; chosen here, no source

export const usualShareSpread = (mean: number): StageSpread => {
  const most = Math.sqrt(mean * (1 - mean));
  return { mean, runs: RUNS * most, season: SEASON * most };
};
/** Deviations of the logarithm of eggs; chosen here, no source. */
export const USUAL_EGG_SPREAD: EggSpread = { females: 0.3, runs: 0.15, season: 0.2 };

/** Survivals that vary, in the order of the chain. */
export const SPREAD_SHARES = ['hatch', 'yolkSurvival', 'frySurvival', 'nurserySurvival'] as const;
export type SpreadShare = (typeof SPREAD_SHARES)[number];

/** A beta distribution must stay narrower than this part of √(m(1 − m)), its widest. */
const WIDEST = 0.95;
/** Spread of a survival: the hatchery's own where the book says it. */
export function shareSpreadOf(
  { spreads }: Pick<OrderBook, 'spreads'>,
  a: Assumed,
  key: SpreadShare,
): StageSpread {
  const mean = a[key];
  const { runs, season } = spreads[key] ?? usualShareSpread(mean);
  const most = WIDEST * Math.sqrt(mean * (1 - mean));
  const cut = Math.min(1, most / Math.hypot(runs, season));
  return runs + season > 0 ? { mean, runs: runs * cut, season: season * cut } : { mean, runs: 0, season: 0 };
}
export const eggSpreadOf = ({ spreads }: Pick<OrderBook, 'spreads'>): EggSpread =>
  spreads.eggs ?? USUAL_EGG_SPREAD;

/**
 * How much of a season's deviation all stages share: in the one source that has both, eggs and hatch were poor
 * and good in the same seasons (GRAAF95); how much is chosen here, no source.
 */
const TOGETHER: Readonly<Record<SpreadShare | 'eggs', number>> = {
  eggs: 0.5,
  hatch: 0.5,
  yolkSurvival: 0.3,
  frySurvival: 0.2,
  nurserySurvival: 0.2,
};
/** A season's deviation of a stage: √ρ of what all share and √(1 − ρ) its own. In and out: normal deviations. */
export const seasonShareOf = (key: SpreadShare | 'eggs', common: number, own: number): number =>
  Math.sqrt(TOGETHER[key]) * common + Math.sqrt(1 - TOGETHER[key]) * own;

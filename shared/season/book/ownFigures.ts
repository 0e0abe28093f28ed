import type { LearnedFigure } from '../../learn/toAssumptions';
import type { AssumptionKey } from '../../families/assumptions';
import type { OrderBook } from './orderBook';
import { SPREAD_SHARES, USUAL_EGG_SPREAD } from '../figures/spreads';

export interface OwnFigures {
  readonly assumptions: Readonly<Partial<Record<AssumptionKey, number>>>;
  readonly spreads: OrderBook['spreads'];
  /** Egg weight of body weight by month, where the runs show that months differ. */
  readonly eggShares: OrderBook['eggShares'];
}

/** Normal deviations between the ends of a 95 % interval. */
const WIDTH_95 = 2 * 1.959964;
const rounded = (x: number): number => Math.round(x * 1e4) / 1e4;

interface Ends {
  readonly next: readonly [number, number];
  readonly mean: readonly [number, number];
}
/**
 * What a learned interval says of the spread: one more run differs from the mean by the spread between runs;
 * how far the mean itself is not known yet is shared by all runs of a season. Moments of a bell of the same
 * width, on the scale given.
 */
function spreadOf({ next, mean }: Ends): { readonly runs: number; readonly season: number } {
  const season = Math.abs(mean[1] - mean[0]) / WIDTH_95;
  const both = Math.abs(next[1] - next[0]) / WIDTH_95;
  return { runs: rounded(Math.sqrt(Math.max(0, both * both - season * season))), season: rounded(season) };
}
const endsOf = (
  { low, high, meanLow, meanHigh }: LearnedFigure,
  scale: (x: number) => number = (x) => x,
): Ends => ({ next: [scale(low), scale(high)], mean: [scale(meanLow), scale(meanHigh)] });

/** Eggs are weight times eggs in a gram: their spreads on logarithms add up as squares. */
function eggSpread(
  figures: readonly LearnedFigure[],
  females: number | undefined,
): OrderBook['spreads']['eggs'] {
  if (figures.length === 0) return females === undefined ? undefined : { ...USUAL_EGG_SPREAD, females };
  const parts = figures.map((figure) => spreadOf(endsOf(figure, Math.log)));
  return {
    females: females ?? USUAL_EGG_SPREAD.females,
    runs: rounded(Math.hypot(...parts.map(({ runs }) => runs))),
    season: rounded(Math.hypot(...parts.map(({ season }) => season))),
  };
}

/**
 * The hatchery's own rates as an order book takes them: figures, how much they vary for the odds, egg yields
 * by month. Only what its runs speak of. `figuresIn`: the learned figures of a month, or of the whole year;
 * `femaleSpread`: how much females of one run differ.
 */
export function ownFigures(
  figuresIn: (month?: number) => Readonly<Partial<Record<AssumptionKey, LearnedFigure>>>,
  femaleSpread?: number,
): OwnFigures {
  const figures = figuresIn();
  const months = Array.from({ length: 12 }, (_, i) => figuresIn(i + 1).eggShare?.value ?? null);
  const eggs = eggSpread(
    [figures.eggShare, figures.eggsPerGram].filter((figure) => figure !== undefined),
    femaleSpread,
  );
  return {
    assumptions: Object.fromEntries(Object.entries(figures).map(([key, { value }]) => [key, value])),
    spreads: {
      ...Object.fromEntries(
        SPREAD_SHARES.flatMap((key) => {
          const figure = figures[key];
          return figure ? [[key, spreadOf(endsOf(figure))]] : [];
        }),
      ),
      ...(eggs ? { eggs } : {}),
    },
    eggShares:
      figures.eggShare && months.some((share) => share !== figures.eggShare?.value) ? months : undefined,
  };
}

import { ASSUMPTIONS } from '../../../families/assumptions';
import type { OrderBook } from '../../../season/book/orderBook';
import { SPREAD_SHARES, USUAL_EGG_SPREAD, usualShareSpread } from '../../../season/figures/spreads';
import { EGGS_VARY, FIGURES, FIGURE_HEADINGS, SPREAD_HEADINGS } from '../workings/figureList';
import type { Entry, ReadSheet } from './sheetReading';
import { numberIn, rowsUnder } from './sheetReading';

/** Figures and spreads read back from their sheet. */

/** An order book as it stands in cells: what readOrderBook checks. */
export type BookInput = { readonly [K in keyof OrderBook]?: unknown };

/** Figures of the sheet that somebody typed or learned; ours, untouched, are left to us. */
export function figuresOf(sheet: ReadSheet): Readonly<Record<string, Entry>> {
  const rows = rowsUnder(sheet, FIGURE_HEADINGS);
  return Object.fromEntries(
    FIGURES.flatMap(({ key, label, planned }) => {
      const row = rows.find((r) => r.Figure === label);
      const value = row?.Value;
      // Ours, untouched, is left to us: a later edition may know it better.
      return row === undefined || value === undefined || (value === planned && row.Whose !== 'your own')
        ? []
        : [[key, value] as const];
    }),
  );
}

/** Deviations within this of the usual ones were not typed by anybody. */
const SAME = 5e-4;
const isNear = (x: Entry, usual: number): boolean => typeof x === 'number' && Math.abs(x - usual) <= SAME;

/**
 * Spreads somebody learned or typed; the usual ones are left out, so that they are not taken for the farm's
 * own.
 */
export function spreadsOf(
  sheet: ReadSheet,
  figures: Readonly<Record<string, Entry>>,
): Readonly<Record<string, unknown>> {
  const rows = rowsUnder(sheet, SPREAD_HEADINGS);
  const [what, runs, season, females] = SPREAD_HEADINGS;
  const shares = SPREAD_SHARES.flatMap((key) => {
    const row = rows.find((r) => r[what] === FIGURES.find((a) => a.key === key)?.label);
    const usual = usualShareSpread(numberIn(figures[key]) ?? ASSUMPTIONS[key].planned);
    return !row || (isNear(row[runs], usual.runs) && isNear(row[season], usual.season))
      ? []
      : [[key, { runs: row[runs], season: row[season] }] as const];
  });
  const eggs = rows.find((r) => r[what] === EGGS_VARY);
  const isUsual =
    !eggs ||
    (isNear(eggs[runs], USUAL_EGG_SPREAD.runs) &&
      isNear(eggs[season], USUAL_EGG_SPREAD.season) &&
      isNear(eggs[females], USUAL_EGG_SPREAD.females));
  return {
    ...Object.fromEntries(shares),
    ...(isUsual ? {} : { eggs: { runs: eggs[runs], season: eggs[season], females: eggs[females] } }),
  };
}

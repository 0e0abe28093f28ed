import { SheetBuilder } from '../../workbook/build';
import type { SheetModel } from '../../workbook/model';
import type { OrderBook } from '../orderBook';
import type { SeasonBook } from '../result';

export const TITLES = ['Summary', 'Orders', 'Runs', 'Calendar', 'Vats', 'Shopping', 'Money', 'Bars'] as const;
export type Title = (typeof TITLES)[number];

export const WHOLE = '#,##0';
export const MONEY = '#,##0.00';
export const DAY = 'ddd d mmm yy';
export const MOMENT = 'ddd d mmm yy hh:mm';

/** Headings of every table stand in this row, its lines below. */
export const HEAD = 4;

/** What the sheets of a season share. */
export interface Season { readonly book: OrderBook; readonly plan: SeasonBook }

export const sheetOf = ({ book }: Season, title: Title, heading: string, subtitle: string, layout: Omit<SheetModel, 'name' | 'cells'>): SheetBuilder =>
  new SheetBuilder(title, { isProtected: true, hasGridlines: false, ...layout, print: { landscape: true, footer: `${book.hatchery} · season`, ...layout.print } })
    .put('B1', heading, 'title').height(1, 26).put('B2', subtitle, 'subtitle');

const POINTS_PER_LINE = 13.5;
/** Height of a row whose longest text wraps in a column of that many characters. */
export const heightFor = (text: string, width: number): number => Math.max(16, Math.ceil(text.length / width) * POINTS_PER_LINE + 3);

export const lastRow = (lines: number): number => HEAD + Math.max(1, lines);

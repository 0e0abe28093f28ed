import { columnLetters, quoteSheet } from '../../sheet/formula/address';
import type { Assumed } from '../../families/assumptions';
import { assumed } from '../../families/assumptions';
import { nameOf } from '../living/names';
import type { Content } from '../../sheet/workbook/build';
import { SheetBuilder } from '../../sheet/workbook/build';
import type { CellModel, NameModel, SheetModel, StyleName } from '../../sheet/workbook/model';
import type { OrderBook } from '../../season/orderBook';
import type { SeasonBook } from '../../season/result';

/**
 * Sheets of a season, in the order they stand. None is called like a sheet of the plan of one run, so that
 * both fit in one workbook.
 */
export const TITLES = {
  season: 'Season',
  setup: 'Setup',
  orders: 'Orders',
  parents: 'Parents',
  vats: 'Vats',
  runs: 'Runs',
  fish: 'Fish',
  pairs: 'Pairs',
  days: 'Season days',
  water: 'Vat water',
  eggCounts: 'Egg counts',
  fryCounts: 'Fry counts',
  stays: 'Stays',
  feed: 'Feed by day',
  feedRuns: 'Feed by run',
  shopping: 'Shopping',
  money: 'Money',
  figures: 'Figures',
  notes: 'Season notes',
  bars: 'Bars',
} as const;
export type Title = keyof typeof TITLES;

export const WHOLE = '#,##0';
export const MONEY = '#,##0.00';
export const DAY = 'ddd d mmm yy';
export const MOMENT = 'ddd d mmm yy hh:mm';
export const SHARE = '0.0%';

/** Headings of every table stand in this row, its lines below. */
export const HEAD = 4;
export const FIRST = HEAD + 1;
export const lastRow = (lines: number): number => HEAD + Math.max(1, lines);

/** Name of a cell of the season: season_price_feed. */
export const seasonName = (key: string): string => `season_${nameOf(key)}`;

/** What the sheets of a season share. */
export class Pages {
  readonly names: NameModel[] = [];
  readonly assumed: Assumed;
  constructor(
    readonly book: OrderBook,
    readonly plan: SeasonBook,
  ) {
    this.assumed = assumed(book.assumptions);
  }

  sheet(
    title: Title,
    heading: Content,
    subtitle: string,
    layout: Omit<SheetModel, 'name' | 'cells'>,
  ): SheetBuilder {
    return new SheetBuilder(TITLES[title], {
      isProtected: true,
      hasGridlines: false,
      ...layout,
      print: { landscape: true, footer: `${this.book.hatchery} · season`, ...layout.print },
    })
      .put('B1', heading, 'title')
      .height(1, 26)
      .put('B2', subtitle, 'subtitle');
  }

  define(key: string, refersTo: string): void {
    this.names.push({ name: seasonName(key), refersTo });
  }
  /** A formula with {key} in place of the names. */
  readonly fx = (formula: string): string =>
    formula.replace(/\{(\w+)\}/g, (_, key: string) => seasonName(key));
}

/** A column of a table: what its heading says, how wide it is, how its cells look. */
export interface Column {
  readonly title: string;
  readonly width: number;
  readonly style: StyleName;
  readonly format?: string;
}

/** A table whose columns are known by key, from column B on. */
export class Columns<K extends string> {
  readonly letters: Readonly<Record<K, string>>;
  private readonly keys: readonly K[];
  constructor(
    private readonly columns: Readonly<Record<K, Column>>,
    private readonly title: Title,
    first = 1,
  ) {
    this.keys = Object.keys(columns) as K[];
    this.letters = Object.fromEntries(this.keys.map((key, i) => [key, columnLetters(first + i)])) as Record<
      K,
      string
    >;
  }
  get widths(): number[] {
    return this.keys.map((key) => this.columns[key].width);
  }
  get first(): string {
    return this.letters[this.keys[0] as K];
  }
  get last(): string {
    return this.letters[this.keys.at(-1) as K];
  }
  get titles(): readonly (readonly [K, string])[] {
    return this.keys.map((key) => [key, this.columns[key].title]);
  }
  titleOf(key: K): string {
    return this.columns[key].title;
  }

  headings(sheet: SheetBuilder, height = 32): void {
    sheet
      .row(
        `${this.first}${HEAD}`,
        this.keys.map((key) => this.columns[key].title),
        'heading',
      )
      .height(HEAD, height);
  }
  /** Cells of a row, each in the look of its column; a cell may bring its own style and format. */
  row(sheet: SheetBuilder, row: number, contents: Readonly<Partial<Record<K, Content>>>): void {
    for (const key of this.keys) {
      const { style, format } = this.columns[key];
      const content: Content = contents[key] ?? '';
      const own = (typeof content === 'object' ? content : {}) as CellModel;
      const look = format === undefined ? {} : { format };
      sheet.put(`${this.letters[key]}${row}`, content, own.style ?? style, {
        ...look,
        ...(own.format === undefined ? {} : { format: own.format }),
      });
    }
  }
  /** Absolute reference to one cell, from any sheet. */
  cell(key: K, row: number): string {
    return `${quoteSheet(TITLES[this.title])}!$${this.letters[key]}$${row}`;
  }
  /** Absolute reference to a column of so many lines, from any sheet. */
  range(key: K, lines: number): string {
    return `${quoteSheet(TITLES[this.title])}!$${this.letters[key]}$${FIRST}:$${this.letters[key]}$${lastRow(lines)}`;
  }
  /** The same within its own sheet. */
  own(key: K, lines: number): string {
    return `${this.letters[key]}${FIRST}:${this.letters[key]}${lastRow(lines)}`;
  }
}

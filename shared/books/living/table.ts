import { columnLetters, quoteSheet } from '../../sheet/formula/address';
import type { Content, SheetBuilder } from '../../sheet/workbook/build';
import type { CellModel, StyleName } from '../../sheet/workbook/model';

/** A column of a table: what its heading says, how wide it is, how its cells look. */
export interface TableColumn {
  readonly title: string;
  readonly width: number;
  readonly style: StyleName;
  readonly format?: string;
}
export type ColumnsOf<K extends string> = Readonly<Record<K, TableColumn>>;

/** Where a table stands: every sheet can point into every other before either is written. */
export class Table<K extends string> {
  readonly letters: Readonly<Record<K, string>>;
  readonly keys: readonly K[];
  /** First and last row of its lines; a table without lines keeps one open. */
  readonly first: number;
  readonly last: number;

  constructor(
    readonly title: string,
    readonly columns: ColumnsOf<K>,
    readonly head: number,
    readonly lines: number,
  ) {
    this.keys = Object.keys(columns) as K[];
    this.letters = Object.fromEntries(this.keys.map((key, i) => [key, columnLetters(i + 1)])) as Record<
      K,
      string
    >;
    this.first = head + 1;
    this.last = head + Math.max(1, lines);
  }

  get widths(): number[] {
    return this.keys.map((key) => this.columns[key].width);
  }
  get left(): string {
    return this.letters[this.keys[0] as K];
  }
  get right(): string {
    return this.letters[this.keys.at(-1) as K];
  }
  /** The table with its headings, on its own sheet. */
  get area(): string {
    return `${this.left}${this.head}:${this.right}${this.last}`;
  }
  /** A cell of the same line: the column stays, the row moves. */
  here(key: K, row: number): string {
    return `$${this.letters[key]}${row}`;
  }
  /** The same from another sheet. */
  there(key: K, row: number): string {
    return `${quoteSheet(this.title)}!$${this.letters[key]}${row}`;
  }
  /** All lines of a column, on its own sheet. */
  own(key: K, to: K = key): string {
    return `${this.letters[key]}${this.first}:${this.letters[to]}${this.last}`;
  }
  /** All lines of a column, from any sheet. */
  range(key: K): string {
    return this.down(key, this.first);
  }
  /** A column from a row down to its last line. */
  private down(key: K, from: number): string {
    return `${quoteSheet(this.title)}!$${this.letters[key]}$${from}:$${this.letters[key]}$${this.last}`;
  }
  /** The line `at` of a column, counted from 1. */
  lookup(key: K, at: string): string {
    return `INDEX(${this.range(key)},${at})`;
  }
  /** The line of a column whose `by` is `wanted`. */
  find(key: K, by: K, wanted: string): string {
    // Gnumeric finds nothing in a single cell: a table of one line is looked through with its heading.
    const from = this.first === this.last ? this.head : this.first;
    return `INDEX(${this.down(key, from)},MATCH(${wanted},${this.down(by, from)},0))`;
  }

  /** Every line of every column, from any sheet; its headings beside. */
  get body(): string {
    return `${quoteSheet(this.title)}!$${this.left}$${this.first}:$${this.right}$${this.last}`;
  }
  get heads(): string {
    return `${quoteSheet(this.title)}!$${this.left}$${this.head}:$${this.right}$${this.head}`;
  }
  /** The cell of a line `at` under the heading that a cell names. */
  under(at: string, heading: string): string {
    return `INDEX(${this.body},${at},MATCH(${heading},${this.heads},0))`;
  }

  headings(sheet: SheetBuilder, height = 32): void {
    sheet
      .row(
        `${this.left}${this.head}`,
        this.keys.map((key) => this.columns[key].title),
        'heading',
      )
      .height(this.head, height);
  }
  /** Cells of a line, each in the look of its column; a cell may bring its own style and format. */
  line(sheet: SheetBuilder, row: number, contents: Readonly<Partial<Record<K, Content>>>): void {
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
}

export const col = (title: string, width: number, style: StyleName, format?: string): TableColumn => ({
  title,
  width,
  style,
  ...(format === undefined ? {} : { format }),
});

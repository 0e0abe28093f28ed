import type { Area } from '../../sheet/formula/address';
import { addressOf } from '../../sheet/formula/address';
import type { Cell } from '../../base/values';

/**
 * A sheet as columns of cells. Only rows that hold anything are kept, so a sheet whose size says 1,048,576
 * rows costs what is in it. Positions are kept rows (0, 1, 2, …); `rows` gives the row of the sheet behind
 * each.
 */
export interface SheetCells {
  readonly name: string;
  readonly rows: readonly number[];
  /** By sheet column; a column nobody wrote in is undefined. */
  readonly columns: readonly (SheetColumn | undefined)[];
  readonly merges: readonly Area[];
  /** Written by Spawnbook itself: its figures are worked out, not recorded. */
  readonly isWorkedOut?: boolean;
  /** What could not be read, as sentences. */
  readonly lost: readonly string[];
}

export interface SheetColumn {
  /** Shorter than the sheet where the rest is blank. */
  readonly values: readonly Cell[];
  /** 1 where the number format shows a date or a time. */
  readonly dates: readonly number[];
  /** Text of formulas, as typed or as stored; undefined where a value was typed. */
  readonly formulas: readonly (string | undefined)[];
}

interface OpenColumn {
  values: Cell[];
  dates: number[];
  formulas: (string | undefined)[];
}

/** Columns beyond this are not read: no record book is so wide, a stray cell at the far end is. */
export const MOST_COLUMNS = 400;

/**
 * Places of one sheet, blank ones between filled ones included. A book of 50,000 rows and 20 columns has a
 * million; a file of 30 kB could ask for a thousand times as many.
 */
export const MOST_PLACES = 8_000_000;

/** Takes cells row by row, in any order of columns. */
export class SheetReader {
  readonly rows: number[] = [];
  readonly columns: (OpenColumn | undefined)[] = [];
  readonly merges: Area[] = [];
  readonly lost = new Set<string>();
  private position = -1;
  private places = 0;

  constructor(readonly name: string) {}

  private fill<T>(list: T[], blank: T, value: T): void {
    this.places += this.position - list.length;
    while (list.length < this.position) list.push(blank);
    list[this.position] = value;
  }

  put(row: number, column: number, value: Cell, isDate: boolean, formula: string | undefined): void {
    if (column >= MOST_COLUMNS) {
      this.lost.add(
        `Cells to the right of column ${addressOf(0, MOST_COLUMNS - 1).replace(/\d+$/, '')} were not read.`,
      );
      return;
    }
    if (this.position < 0 || this.rows[this.position] !== row) {
      if (this.position >= 0 && row < (this.rows[this.position] ?? 0)) {
        this.lost.add('Rows that stand in the wrong order in the file were not read.');
        return;
      }
      this.rows.push(row);
      this.position++;
      this.places++;
    }
    if (this.places > MOST_PLACES) {
      this.lost.add(
        `The sheet is too large: cells from about row ${row + 1} on were not read. Keep the records in fewer rows and columns.`,
      );
      return;
    }
    const into = (this.columns[column] ??= { values: [], dates: [], formulas: [] });
    this.fill(into.values, null, value);
    if (isDate) this.fill(into.dates, 0, 1);
    if (formula !== undefined) this.fill<string | undefined>(into.formulas, undefined, formula);
  }

  build(): SheetCells {
    return {
      name: this.name,
      rows: this.rows,
      columns: this.columns,
      merges: this.merges,
      lost: [...this.lost],
    };
  }
}

export const valueAt = (sheet: SheetCells, position: number, column: number): Cell =>
  sheet.columns[column]?.values[position] ?? null;
export const formulaAt = (sheet: SheetCells, position: number, column: number): string | undefined =>
  sheet.columns[column]?.formulas[position];
export const isDateAt = (sheet: SheetCells, position: number, column: number): boolean =>
  sheet.columns[column]?.dates[position] === 1;
export const cellName = (sheet: SheetCells, position: number, column: number): string =>
  addressOf(sheet.rows[position] ?? 0, column);

export interface RangeCells {
  readonly name: string;
  /** 0-based place of the first cell on its sheet. */
  readonly top: number;
  readonly left: number;
  readonly values: readonly (readonly Cell[])[];
  /** As a host gives them: text that starts with = is a formula, anything else is the value. */
  readonly formulas?: readonly (readonly unknown[])[];
  readonly formats?: readonly (readonly string[])[];
}

/** A range of the open workbook. `isDateFormat` tells number formats of dates from others. */
export function sheetFromRange(range: RangeCells, isDateFormat: (format: string) => boolean): SheetCells {
  const builder = new SheetReader(range.name);
  const known = new Map<string, boolean>();
  const isDate = (format: string | undefined): boolean => {
    if (!format || format === 'General') return false;
    let answer = known.get(format);
    if (answer === undefined) known.set(format, (answer = isDateFormat(format)));
    return answer;
  };
  for (const [r, line] of range.values.entries()) {
    for (const [c, value] of line.entries()) {
      const formula = range.formulas?.[r]?.[c];
      const hasFormula = typeof formula === 'string' && formula.startsWith('=');
      if ((value === null || value === '') && !hasFormula) continue;
      builder.put(
        range.top + r,
        range.left + c,
        value,
        isDate(range.formats?.[r]?.[c]),
        hasFormula ? formula : undefined,
      );
    }
  }
  return builder.build();
}

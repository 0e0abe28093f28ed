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

/** Numbers lie together and cost eight bytes each; what is no number stands beside them. */
export class SheetColumn {
  /** By position; NaN where the cell holds no number. Shorter than the sheet where the rest is blank. */
  numbers = new Float64Array(FIRST_ROOM);
  length = 0;
  private others: (Cell | undefined)[] = [];
  private dates = new Uint8Array(0);
  /** Text of formulas, as typed or as stored; undefined where a value was typed. */
  readonly formulas: (string | undefined)[] = [];

  cellAt(position: number): Cell {
    if (!(position < this.length)) return null;
    const number = this.numbers[position] as number;
    return number === number ? number : (this.others[position] ?? null);
  }
  /** NaN where the cell holds no number. */
  numberAt(position: number): number {
    return position < this.length ? (this.numbers[position] as number) : NaN;
  }
  /** Does the number format show a date or a time? */
  isDateAt(position: number): boolean {
    return this.dates[position] === 1;
  }

  /** Cells that hold something, but no number. */
  eachOther(visit: (value: Cell, position: number) => void): void {
    for (let position = 0; position < this.others.length; position++) {
      const value = this.others[position];
      if (value !== undefined) visit(value, position);
    }
  }

  /** Positions only grow; those passed over are blank. */
  put(position: number, value: Cell): void {
    if (typeof value === 'number' && !Number.isNaN(value)) this.putNumber(position, value);
    else {
      this.putNumber(position, NaN);
      while (this.others.length < position) this.others.push(undefined);
      this.others[position] = value ?? undefined;
    }
  }
  putNumber(position: number, value: number): void {
    if (position >= this.numbers.length) {
      const room = new Float64Array(Math.max(FIRST_ROOM, 2 * position));
      room.set(this.numbers);
      this.numbers = room;
    }
    if (this.length < position) this.numbers.fill(NaN, this.length, position);
    this.numbers[position] = value;
    this.length = position + 1;
  }
  putDate(position: number): void {
    if (position >= this.dates.length) {
      const room = new Uint8Array(Math.max(FIRST_ROOM, 2 * position));
      room.set(this.dates);
      this.dates = room;
    }
    this.dates[position] = 1;
  }
  putFormula(position: number, formula: string): void {
    while (this.formulas.length < position) this.formulas.push(undefined);
    this.formulas[position] = formula;
  }
}
const FIRST_ROOM = 16;

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
  readonly columns: (SheetColumn | undefined)[] = [];
  readonly merges: Area[] = [];
  readonly lost = new Set<string>();
  private position = -1;
  private row = -1;
  private places = 0;

  constructor(readonly name: string) {}

  /** The column a cell goes into; undefined where it is not read. */
  private into(row: number, column: number): SheetColumn | undefined {
    if (column >= MOST_COLUMNS) {
      this.lost.add(
        `Cells to the right of column ${addressOf(0, MOST_COLUMNS - 1).replace(/\d+$/, '')} were not read.`,
      );
      return undefined;
    }
    if (this.row !== row) {
      if (row < this.row) {
        this.lost.add('Rows that stand in the wrong order in the file were not read.');
        return undefined;
      }
      this.rows.push(row);
      this.row = row;
      this.position++;
      this.places++;
    }
    if (this.places > MOST_PLACES) {
      this.lost.add(
        `The sheet is too large: cells from about row ${row + 1} on were not read. Keep the records in fewer rows and columns.`,
      );
      return undefined;
    }
    const into = (this.columns[column] ??= new SheetColumn());
    this.places += Math.max(0, this.position - into.length);
    return into;
  }

  put(row: number, column: number, value: Cell, isDate: boolean, formula: string | undefined): void {
    const into = this.into(row, column);
    if (!into) return;
    into.put(this.position, value);
    if (isDate) into.putDate(this.position);
    if (formula !== undefined) into.putFormula(this.position, formula);
  }
  putNumber(row: number, column: number, value: number, isDate: boolean): void {
    const into = this.into(row, column);
    if (!into) return;
    into.putNumber(this.position, value);
    if (isDate) into.putDate(this.position);
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
  sheet.columns[column]?.cellAt(position) ?? null;
export const formulaAt = (sheet: SheetCells, position: number, column: number): string | undefined =>
  sheet.columns[column]?.formulas[position];
export const isDateAt = (sheet: SheetCells, position: number, column: number): boolean =>
  sheet.columns[column]?.isDateAt(position) ?? false;
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

import type { FieldName } from '../fields';
import { fieldSpec } from '../fields';
import type { Cell } from '../../base/values';
import { isError } from '../../base/values';
import type { CellRun } from './content';
import type { DateOrder } from './dates';
import { readClock, readDate } from './dates';
import type { Decimal } from './numbers';
import { readNumber } from './numbers';
import { converter, unitForField, unitOfWord } from './units';

/** How the cells of a column are read. Every choice is shown with the mapping. */
export interface Reading {
  readonly field: FieldName;
  readonly unit: string | undefined;
  readonly decimal: Decimal;
  readonly order: DateOrder;
}

export interface ReadNumbers {
  /** In the unit of the field; NaN where the cell is blank, an error or not readable. */
  readonly values: Float64Array;
  /** Indexes of cells that hold text where a number or date belongs. */
  readonly unreadable: readonly number[];
  /** How many numbers or dates stood in the cells as text. */
  readonly asText: number;
  /** Clock times without a date: shares of a day. */
  readonly isClock: boolean;
}

/** Signs people write for "nothing" or "not known". */
const NOTHING =
  /^(?:-+|–|—|n\/?a|nil|none|null|\?+|\.+|x|xx+|#n\/a|not (?:known|taken|done|counted)|nd|unknown)$/i;
export const isNothing = (text: string): boolean => NOTHING.test(text.trim());

/**
 * The number of one cell; undefined where there is nothing to read, NaN where there is but it cannot be read.
 */
const numberIn = (
  cell: Cell,
  reading: Reading,
  isMoment: boolean,
  convert: (value: number) => number,
): number | undefined => {
  if (typeof cell === 'number') return isMoment ? cell : convert(cell);
  if (typeof cell !== 'string' || cell === '' || isNothing(cell)) return undefined;
  return isMoment ? momentOf(cell, reading) : numberOf(cell, reading, convert);
};

export function readNumbers(run: CellRun, reading: Reading): ReadNumbers {
  const isMoment = fieldSpec(reading.field).kind === 'moment';
  const values = new Float64Array(run.length).fill(NaN);
  const unreadable: number[] = [];
  let asText = 0;
  let clocks = 0;
  let filled = 0;
  const convert = converter(reading.field, reading.unit);
  for (let i = 0; i < run.length; i++) {
    const cell = run.cellAt(i);
    const value = numberIn(cell, reading, isMoment, convert);
    if (value === undefined) continue;
    if (Number.isNaN(value)) {
      unreadable.push(i);
      continue;
    }
    if (typeof cell === 'string') asText++;
    values[i] = value;
    filled++;
    if (value >= 0 && value < 1) clocks++;
  }
  return { values, unreadable, asText, isClock: isMoment && filled > 0 && clocks > filled / 2 };
}

const momentOf = (text: string, { order }: Reading): number =>
  readDate(text, order) ?? readClock(text) ?? NaN;

/** A unit in the cell itself goes before the unit of the column. */
function numberOf(text: string, { field, decimal }: Reading, convert: (value: number) => number): number {
  const { value, unit } = readNumber(text, decimal);
  if (unit === '') return convert(value);
  const named = unitForField(field, unitOfWord(unit));
  return named === undefined
    ? unitOfWord(unit) === undefined && !/^(?:eggs?|fry|fish|larvae|pcs|nos?|pieces)$/i.test(unit)
      ? NaN
      : convert(value)
    : converter(field, named)(value);
}

/** Texts of a column, trimmed; '' where blank. Numbers read as tags: 12 → "12". */
export function readTexts(run: CellRun): string[] {
  const texts: string[] = [];
  for (let i = 0; i < run.length; i++) {
    const cell = run.cellAt(i);
    texts.push(
      cell === null || isError(cell) || typeof cell === 'boolean'
        ? ''
        : typeof cell === 'string'
          ? isNothing(cell)
            ? ''
            : cell.trim()
          : String(cell),
    );
  }
  return texts;
}

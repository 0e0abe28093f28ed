import type { Cell } from '../../../base/values';
import { isError } from '../../../base/values';
import { momentText } from '../../../units/dates';
import type { FieldName } from '../../fields';
import { fieldSpec } from '../../fields';
import { isNothingText, KIND, kindOfText } from '../../shape/kinds';
import { conceptsOf } from '../../words/lexicon';
import type { CellRun } from './content';
import type { DateOrder } from './dates';
import { clockIn, clockOfDigits, readDate } from './dates';
import type { DecimalMark } from './numbers';
import { readNumber } from './numbers';
import { converter, unitForField, unitOfText } from './units';

/** How the cells of a column are read. Every choice is shown with the mapping. */
export interface ReadValue {
  readonly field: FieldName;
  readonly unit: string | undefined;
  readonly decimal: DecimalMark;
  readonly order: DateOrder;
  /** What a number stands for: 1000 under "Fry ('000)". */
  readonly times?: number;
  /** The year of dates written without one. */
  readonly year?: number;
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

/** How numbers in a column of moments write the hour: 0.9375, 2230 or 22.3. */
type ClockStyle = 'serial' | 'digits' | 'point';

function clockStyle(run: CellRun): ClockStyle {
  let [digits, points, others] = [0, 0, 0];
  for (let i = 0; i < Math.min(run.length, 400); i++) {
    const value = run.numberAt(i);
    if (Number.isNaN(value) || run.isDate(i)) continue;
    if (value > 24 && value < 10_000 && Number.isInteger(value)) digits++;
    else if (value >= 1 && value < 24.6) points++;
    else others++;
  }
  return digits > others && digits >= points
    ? 'digits'
    : points > others && points > digits
      ? 'point'
      : 'serial';
}

/**
 * The number a text says; undefined where there is nothing to read, NaN where there is but it cannot be read.
 */
const textIn = (
  cell: Cell,
  reading: ReadValue,
  style: ClockStyle | undefined,
  convert: (value: number) => number,
): number | undefined => {
  if (typeof cell !== 'string' || cell.trim() === '' || isNothingText(cell)) return undefined;
  return style === undefined ? numberOf(cell, reading, convert) : momentOf(cell, reading);
};

function momentOfNumber(value: number, isDate: boolean, style: ClockStyle): number {
  if (isDate || style === 'serial' || value < 1 || value >= 10_000) return value;
  return clockOfDigits(style === 'digits' ? value : Math.round(100 * value)) ?? NaN;
}

export function readNumbers(run: CellRun, reading: ReadValue): ReadNumbers {
  const isMoment = fieldSpec(reading.field).kind === 'moment';
  const values = new Float64Array(run.length).fill(NaN);
  const unreadable: number[] = [];
  let asText = 0;
  let clocks = 0;
  let filled = 0;
  const style = isMoment ? clockStyle(run) : undefined;
  const inUnit = converter(reading.field, reading.unit);
  const times = reading.times ?? 1;
  const convert = times === 1 ? inUnit : (value: number): number => inUnit(times * value);
  for (let i = 0; i < run.length; i++) {
    const number = run.numberAt(i);
    const isNumber = !Number.isNaN(number);
    const value = !isNumber
      ? textIn(run.cellAt(i), reading, style, convert)
      : style === undefined
        ? convert(number)
        : momentOfNumber(number, run.isDate(i), style);
    if (value === undefined) continue;
    if (Number.isNaN(value)) {
      unreadable.push(i);
      continue;
    }
    if (!isNumber) asText++;
    values[i] = value;
    filled++;
    if (value >= 0 && value < 1) clocks++;
  }
  return { values, unreadable, asText, isClock: isMoment && filled > 0 && clocks > filled / 2 };
}

const momentOf = (text: string, { order, year }: ReadValue): number => {
  const date = readDate(text, order, year);
  if (date !== undefined) return date;
  const clock = clockIn(text);
  if (clock) return clock.share ?? NaN;
  return /^\s*\d{3,4}\s*(?:h|hrs?)?\.?\s*$/i.test(text) ? (clockOfDigits(parseInt(text, 10)) ?? NaN) : NaN;
};

/** A unit in the cell itself goes before the unit of the column. */
function numberOf(text: string, { field, decimal }: ReadValue, convert: (value: number) => number): number {
  const { value, unit } = readNumber(text, decimal);
  if (unit === '' || Number.isNaN(value)) return convert(value);
  const said = unitOfText(unit);
  const named = unitForField(field, said?.unit);
  if (named !== undefined) return converter(field, named)(value);
  return said === undefined && !isKnownTail(unit) ? NaN : convert(value);
}
/** Words behind a number that name what is counted: 120 fish, 20,000 larves. */
const isKnownTail = (unit: string): boolean =>
  /^[\p{L}\s.]+$/u.test(unit) &&
  [...conceptsOf(unit).keys()].some((concept) => !concept.startsWith('value_'));

/** The numbers of a column as typed, units left alone; NaN where there is none. */
export function plainNumbers(run: CellRun, decimal: DecimalMark): Float64Array {
  const values = new Float64Array(run.length).fill(NaN);
  for (let i = 0; i < run.length; i++) {
    const number = run.numberAt(i);
    if (!Number.isNaN(number)) {
      if (!run.isDate(i)) values[i] = number;
      continue;
    }
    const cell = run.cellAt(i);
    if (typeof cell === 'string' && kindOfText(cell) === KIND.number && /\p{N}/u.test(cell))
      values[i] = readNumber(cell, decimal).value;
  }
  return values;
}

const MOST_SAMPLES = 4;
const LONGEST_SAMPLE = 24;
/** The first few different values, as they stand. */
export function samplesOf(run: CellRun): string[] {
  const found = new Set<string>();
  for (let i = 0; i < Math.min(run.length, 200) && found.size < MOST_SAMPLES; i++) {
    const cell = run.cellAt(i);
    if (cell === null || cell === '' || typeof cell === 'boolean' || isError(cell)) continue;
    found.add(
      typeof cell === 'number' && run.isDate(i)
        ? momentText(cell).replace(/ 00:00$/, '')
        : String(cell).slice(0, LONGEST_SAMPLE),
    );
  }
  return [...found];
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
          ? isNothingText(cell)
            ? ''
            : cell.trim()
          : String(cell),
    );
  }
  return texts;
}

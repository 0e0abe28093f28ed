// Long: every kind of content a column may have is counted in one walk over its cells.
import type { NumericField } from '../../fields';
import type { Cell } from '../../../base/values';
import { isError } from '../../../base/values';
import { hoursFromDays } from '../../../units/convert';
import type { SheetCells } from '../../read/sheetCells';
import { SheetColumn } from '../../read/sheetCells';
import { isNothingText } from '../../shape/kinds';
import type { DateOrder } from './dates';
import { clockIn, clockOfDigits, isEitherOrder, orderIn, readDate } from './dates';
import { isCounted } from '../../meaning/sums';
import type { DecimalMark } from './numbers';
import { decimalIn, isOpenToBoth, readNumber } from './numbers';
import { fitOfMiddle } from './plausible';
import { converter, ownUnit, unitForField, unitOfText, UNITS } from './units';

/**
 * Where the cells of one column are: the sheet's column, at kept rows. A form gives other places; `cellAt`
 * hides the difference.
 */
export interface CellRun {
  readonly length: number;
  readonly cellAt: (index: number) => Cell;
  /** NaN where the cell holds no number; most cells of long tables do, and this makes no object of them. */
  readonly numberAt: (index: number) => number;
  readonly isDate: (index: number) => boolean;
}

export const runOf = (sheet: SheetCells, column: number, positions: readonly number[]): CellRun => {
  const cells = sheet.columns[column] ?? new SheetColumn();
  return {
    length: positions.length,
    cellAt: (i) => cells.cellAt(positions[i] ?? NaN),
    numberAt: (i) => cells.numberAt(positions[i] ?? NaN),
    isDate: (i) => cells.isDateAt(positions[i] ?? NaN),
  };
};

/** What a column holds, before anything is decided about it. */
export interface ColumnContent {
  readonly filled: number;
  readonly numbers: number;
  readonly dates: number;
  readonly clocks: number;
  readonly words: number;
  readonly errors: number;
  /** Share of the numbers that are not whole. */
  readonly fractions: number;
  /** Dates that say the hour too. */
  readonly stamps: number;
  /** Whole numbers that read as hours and minutes: 2230. */
  readonly digitClocks: number;
  /** Of the numbers as typed. */
  readonly middle: number;
  /** Nearly the highest of them. */
  readonly high: number;
  /** Different numbers, different words. */
  readonly kinds: number;
  readonly wordKinds: number;
  /** The unit most cells carry themselves. */
  readonly unit: string | undefined;
  readonly decimal: DecimalMark | undefined;
  readonly hasOpenNumbers: boolean;
  /** At least two numbers have one mark and three digits behind it, and no number says otherwise. */
  readonly isOpenAlways: boolean;
  /** The decimal mark if that mark parts thousands. */
  readonly thousands: DecimalMark | undefined;
  readonly order: DateOrder | undefined;
  readonly hasMixedOrders: boolean;
  readonly hasEitherDates: boolean;
  /** 1, 2, 3 down the lines. */
  readonly isCounted: boolean;
}

const SAMPLE = 500;

class Tally {
  filled = 0;
  numbers = 0;
  dates = 0;
  clocks = 0;
  words = 0;
  errors = 0;
  fractions = 0;
  stamps = 0;
  digitClocks = 0;
  readonly list: number[] = [];
  readonly texts = new Set<string>();
  /** Which numbers say their unit. */
  readonly said: [index: number, unit: string][] = [];
  readonly decimals = new Map<DecimalMark, number>();
  readonly orders = new Map<DateOrder, number>();
  readonly units = new Map<string, number>();
  hasOpenNumbers = false;
  open = 0;
  openMark: DecimalMark | undefined;
  hasEitherDates = false;

  constructor(private readonly fallback: DecimalMark) {}

  take(cell: Cell, isDate: boolean): void {
    if (cell === null || cell === '' || typeof cell === 'boolean') return;
    this.filled++;
    if (isError(cell)) {
      this.errors++;
      return;
    }
    if (typeof cell === 'number') this.takeNumber(cell, isDate);
    else this.takeText(cell);
  }

  private takeNumber(value: number, isDate: boolean): void {
    if (!isDate) this.count(value);
    else if (value < 1) this.clocks++;
    else {
      this.dates++;
      if (!Number.isInteger(value)) this.stamps++;
    }
  }

  private count(value: number): void {
    this.numbers++;
    this.list.push(value);
    if (!Number.isInteger(value)) this.fractions++;
    // 45 may be a quarter to one at night, and is a number.
    if (hoursFromDays(clockOfDigits(value) ?? 0) >= 1) this.digitClocks++;
  }

  private takeText(text: string): void {
    const day = readDate(text, 'day first') ?? readDate(text, 'month first');
    if (day !== undefined) this.takeDay(text, day);
    else if (clockIn(text) && /[:h]|\p{L}/iu.test(text)) this.takeClock(text);
    else if (isNothingText(text)) this.filled--;
    else this.takeFigure(text);
  }

  private takeDay(text: string, day: number): void {
    this.dates++;
    if (!Number.isInteger(day)) this.stamps++;
    const order = orderIn(text);
    if (order) this.orders.set(order, (this.orders.get(order) ?? 0) + 1);
    if (isEitherOrder(text)) this.hasEitherDates = true;
  }

  private takeClock(text: string): void {
    this.clocks++;
    // "14 h" is an hour of the day or fourteen hours.
    const span = /^\s*(\d+(?:[.,]\d+)?)\s*(?:h|hrs?|hours?|heures?|horas?|jam|min)\.?\s*$/i.exec(text);
    if (span) this.count(Number((span[1] ?? '').replace(',', '.')));
  }

  private takeFigure(text: string): void {
    const decimal = decimalIn(text);
    const { value, unit } = readNumber(text, decimal ?? this.fallback);
    if (Number.isNaN(value)) {
      this.words++;
      this.texts.add(text);
      return;
    }
    this.count(value);
    // 22.30 is half past ten or a number with two decimals.
    if (/^\s*\d{1,2}\.[0-5]\d\s*$/.test(text) && value < 24) this.digitClocks++;
    if (unit !== '') {
      this.units.set(unit, (this.units.get(unit) ?? 0) + 1);
      this.said.push([this.list.length - 1, unit]);
    }
    if (decimal) this.decimals.set(decimal, (this.decimals.get(decimal) ?? 0) + 1);
    else if (isOpenToBoth(text)) {
      this.hasOpenNumbers = true;
      this.open++;
      this.openMark = text.includes('.') ? ',' : '.';
    }
  }
}

/** In grams, in millilitres. */
const SIZES: readonly Readonly<Record<string, number>>[] = [
  { mg: 1e-3, g: 1, kg: 1e3, oz: 28.349_523, lb: 453.592_37 },
  { mL: 1, L: 1e3, m3: 1e6 },
];
/** Kilograms in some cells and grams in others are numbers of one kind: all in the unit most of them say. */
function inOneUnit({ list, said, units }: Tally): void {
  if (units.size < 2) return;
  const own = unitOfText(mostOf(units) ?? '')?.unit ?? '';
  for (const [i, unit] of said) {
    const other = unitOfText(unit)?.unit ?? '';
    const sizes = SIZES.find((one) => own in one && other in one);
    if (sizes) list[i] = ((list[i] ?? NaN) * (sizes[other] ?? NaN)) / (sizes[own] ?? NaN);
  }
}

const mostOf = <T>(counts: ReadonlyMap<T, number>): T | undefined =>
  [...counts].sort((a, b) => b[1] - a[1])[0]?.[0];

/** `fallback` is the decimal mark of numbers that can be read both ways. */
export function contentOf(run: CellRun, fallback: DecimalMark = '.'): ColumnContent {
  const tally = new Tally(fallback);
  const step = Math.max(1, Math.floor(run.length / SAMPLE));
  for (let i = 0; i < run.length; i += step) tally.take(run.cellAt(i), run.isDate(i));
  inOneUnit(tally);
  const isLineNumber = step === 1 && tally.dates === 0 && isCounted(tally.list);
  const sorted = tally.list.sort((a, b) => a - b);
  const { filled, numbers, dates, clocks, words, errors, hasOpenNumbers, hasEitherDates, orders } = tally;
  const { fractions, stamps, digitClocks } = tally;
  return {
    filled,
    numbers,
    dates,
    clocks,
    words,
    errors,
    fractions: numbers > 0 ? fractions / numbers : 0,
    stamps,
    digitClocks: clocks > 0 || digitClocks >= 0.8 * numbers ? digitClocks : 0,
    hasOpenNumbers,
    isOpenAlways: tally.open >= 2 && tally.decimals.size === 0,
    thousands: tally.openMark,
    hasEitherDates,
    middle: sorted[sorted.length >> 1] ?? NaN,
    high: sorted[Math.floor(0.95 * (sorted.length - 1))] ?? NaN,
    kinds: new Set(sorted).size,
    wordKinds: tally.texts.size,
    unit: mostOf(tally.units),
    decimal: mostOf(tally.decimals),
    order: mostOf(orders),
    isCounted: isLineNumber,
    hasMixedOrders: orders.has('day first') && orders.has('month first'),
  };
}

export interface UnitChoice {
  readonly unit: string | undefined;
  readonly because: string | undefined;
  readonly isAgainstHeader: boolean;
}

const ABOVE_ONE = 'most values are above 1, so they are percent';
const SHARE_UNIT_SLACK = 1.0001;
/** Are shares written as parts of one? A percent sign over them counts where some are above one and a half. */
const isOfOne = ({ middle, high }: ColumnContent, named: string | undefined): boolean =>
  middle <= SHARE_UNIT_SLACK && !(named === '%' && middle > 0 && high > 1.5);
const shareUnit = (content: ColumnContent, named: string | undefined): UnitChoice =>
  isOfOne(content, named) ? plain('share') : plain('%', named === '%' ? undefined : ABOVE_ONE);

const plain = (unit: string | undefined, because?: string, isAgainstHeader = false): UnitChoice => ({
  unit,
  because,
  isAgainstHeader,
});

/**
 * The unit a column is kept in: what its header says, unless the values say otherwise. `times` is what a
 * number of the column stands for, `fitOf` how usual a value in the field's own unit is.
 */
export function chooseUnit(
  field: NumericField,
  header: string | undefined,
  content: ColumnContent,
  times = 1,
  fitOf: (value: number) => number = (value) => fitOfMiddle(field, value),
): UnitChoice {
  const known = UNITS[field];
  const own = ownUnit(field);
  const named = unitForField(field, header);
  if (!known || own === undefined || Number.isNaN(content.middle)) return plain(named ?? own);
  // A percent format stores 85 % as 0.85, whatever the header says. The middle decides: one value above 1 is
  // a fault, not a unit.
  if (own === 'share') return shareUnit(content, named);
  const middle = content.middle * times;
  const fit = (unit: string): number => fitOf(converter(field, unit)(middle));
  const best = Object.keys(known).reduce((a, b) => (fit(b) > fit(a) + 0.3 ? b : a), named ?? own);
  if (best === (named ?? own)) return plain(best);
  if (named === undefined)
    return plain(best, `no unit in the header; a middle of ${shortNumber(middle)} looks like ${best}`);
  return fit(named) < 0.35
    ? plain(best, `the header says ${named}, but a middle of ${shortNumber(middle)} looks like ${best}`, true)
    : plain(named);
}

export const shortNumber = (value: number): string => String(Number(value.toPrecision(4)));

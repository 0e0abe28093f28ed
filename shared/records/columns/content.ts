import type { FieldName, NumericField } from '../fields';
import { fieldSpec } from '../fields';
import type { Cell } from '../../base/values';
import { isError } from '../../base/values';
import type { SheetCells } from '../read/sheetCells';
import type { DateOrder } from './dates';
import { isEitherOrder, orderIn, readClock, readDate } from './dates';
import type { Decimal } from './numbers';
import { decimalIn, isOpenToBoth, readNumber } from './numbers';
import { fitOfMiddle } from './plausible';
import { converter, ownUnit, unitForField, UNITS } from './units';

/**
 * Where the cells of one column are: the sheet's column, at kept rows. A form gives other places; `cellAt`
 * hides the difference.
 */
export interface CellRun {
  readonly length: number;
  readonly cellAt: (index: number) => Cell;
  readonly isDate: (index: number) => boolean;
}

export const runOf = (sheet: SheetCells, column: number, positions: readonly number[]): CellRun => {
  const { values = [], dates = [] } = sheet.columns[column] ?? {};
  return {
    length: positions.length,
    cellAt: (i) => values[positions[i] ?? -1] ?? null,
    isDate: (i) => dates[positions[i] ?? -1] === 1,
  };
};

/** What a column holds, before anything is decided about it. */
export interface Content {
  readonly filled: number;
  readonly numbers: number;
  readonly dates: number;
  readonly clocks: number;
  readonly words: number;
  readonly errors: number;
  /** Of the numbers as typed. */
  readonly middle: number;
  readonly decimal: Decimal | undefined;
  readonly hasOpenNumbers: boolean;
  readonly order: DateOrder | undefined;
  readonly hasMixedOrders: boolean;
  readonly hasEitherDates: boolean;
}

const SAMPLE = 500;

class Tally {
  filled = 0;
  numbers = 0;
  dates = 0;
  clocks = 0;
  words = 0;
  errors = 0;
  readonly list: number[] = [];
  readonly decimals = new Map<Decimal, number>();
  readonly orders = new Map<DateOrder, number>();
  hasOpenNumbers = false;
  hasEitherDates = false;

  constructor(private readonly fallback: Decimal) {}

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
    if (isDate && value >= 1) this.dates++;
    else if (isDate) this.clocks++;
    else {
      this.numbers++;
      this.list.push(value);
    }
  }

  private takeText(text: string): void {
    if (readDate(text, 'day first') !== undefined || readDate(text, 'month first') !== undefined) {
      this.dates++;
      const order = orderIn(text);
      if (order) this.orders.set(order, (this.orders.get(order) ?? 0) + 1);
      if (isEitherOrder(text)) this.hasEitherDates = true;
    } else if (readClock(text) !== undefined && /[:hapm]/i.test(text)) this.clocks++;
    else {
      const decimal = decimalIn(text);
      const { value } = readNumber(text, decimal ?? this.fallback);
      if (Number.isNaN(value)) {
        this.words++;
        return;
      }
      this.numbers++;
      this.list.push(value);
      if (decimal) this.decimals.set(decimal, (this.decimals.get(decimal) ?? 0) + 1);
      else if (isOpenToBoth(text)) this.hasOpenNumbers = true;
    }
  }
}

const mostOf = <T>(counts: ReadonlyMap<T, number>): T | undefined =>
  [...counts].sort((a, b) => b[1] - a[1])[0]?.[0];

/** `fallback` is the decimal mark of numbers that can be read both ways. */
export function contentOf(run: CellRun, fallback: Decimal = '.'): Content {
  const tally = new Tally(fallback);
  const step = Math.max(1, Math.floor(run.length / SAMPLE));
  for (let i = 0; i < run.length; i += step) tally.take(run.cellAt(i), run.isDate(i));
  const sorted = tally.list.sort((a, b) => a - b);
  const { filled, numbers, dates, clocks, words, errors, hasOpenNumbers, hasEitherDates, orders } = tally;
  return {
    filled,
    numbers,
    dates,
    clocks,
    words,
    errors,
    hasOpenNumbers,
    hasEitherDates,
    middle: sorted[sorted.length >> 1] ?? NaN,
    decimal: mostOf(tally.decimals),
    order: mostOf(orders),
    hasMixedOrders: orders.has('day first') && orders.has('month first'),
  };
}

export interface UnitChoice {
  readonly unit: string | undefined;
  readonly because: string | undefined;
  readonly isAgainstHeader: boolean;
}

const SHARE_UNIT_SLACK = 1.0001;

/** The unit a column is kept in: what its header says, unless the values say otherwise. */
export function chooseUnit(field: NumericField, header: string | undefined, content: Content): UnitChoice {
  const known = UNITS[field];
  const own = ownUnit(field);
  const named = unitForField(field, header);
  const plain = (unit: string | undefined, because?: string, isAgainstHeader = false): UnitChoice => ({
    unit,
    because,
    isAgainstHeader,
  });
  if (!known || own === undefined || Number.isNaN(content.middle)) return plain(named ?? own);
  // A percent format stores 85 % as 0.85, whatever the header says. The middle decides: one value above 1 is
  // a fault, not a unit.
  if (own === 'share')
    return content.middle <= SHARE_UNIT_SLACK
      ? plain('share')
      : plain('%', named === '%' ? undefined : 'most values are above 1, so they are percent');
  const fit = (unit: string): number => fitOfMiddle(field, converter(field, unit)(content.middle));
  const best = Object.keys(known).reduce((a, b) => (fit(b) > fit(a) + 0.3 ? b : a), named ?? own);
  if (best === (named ?? own)) return plain(best);
  if (named === undefined)
    return plain(
      best,
      `no unit in the header; a middle of ${shortNumber(content.middle)} looks like ${best}`,
    );
  return fit(named) < 0.35
    ? plain(
        best,
        `the header says ${named}, but a middle of ${shortNumber(content.middle)} looks like ${best}`,
        true,
      )
    : plain(named);
}

export const shortNumber = (value: number): string => String(Number(value.toPrecision(4)));

/** How well the cells fit a field: 1 fully, 0 not at all. */
export function fitOfContent(field: FieldName, unit: string | undefined, content: Content): number {
  const { filled, numbers, dates, clocks, words, errors } = content;
  const usable = filled - errors;
  if (usable <= 0) return 0.4;
  const { kind } = fieldSpec(field);
  if (kind === 'moment')
    return (
      (dates +
        clocks * 0.9 +
        (numbers > 0 && content.middle > 30_000 && content.middle < 80_000 ? numbers * 0.8 : 0)) /
      usable
    );
  // Tags and tank numbers are often plain numbers.
  if (kind === 'text') return (words + numbers * 0.75 + dates * 0.2) / usable;
  const numeric = field as NumericField;
  return (numbers / usable) * (0.25 + 0.75 * fitOfMiddle(numeric, converter(field, unit)(content.middle)));
}

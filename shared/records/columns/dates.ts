/** Dates and times that arrive as text. Serials count days from 1899-12-30, as sheets do. */

import { dayParts, monthOfWord, serialOfCalendarDay } from '../../units/dates';

export type DateOrder = 'day first' | 'month first' | 'year first';

/** The day with day and month exchanged; undefined when there is none or it is the same. */
export function swappedDay(serial: number): number | undefined {
  const { year, month, day } = dayParts(serial);
  const swapped = day === month ? undefined : serialOfCalendarDay(year, day, month);
  return swapped === undefined ? undefined : swapped + (serial - Math.floor(serial));
}

const longYear = (year: number, digits: number): number =>
  digits > 2 ? year : year < 70 ? 2000 + year : 1900 + year;

const TIME =
  /^(?:(\d{1,2})(?:[:.h](\d{2})(?::(\d{2}))?)\s*(am|pm|a\.m\.|p\.m\.|h|hrs?|uhr)?|(\d{1,2})\s*(am|pm))$/i;
/** Share of a day; undefined when the text is no clock time. */
export function readClock(text: string): number | undefined {
  const match = TIME.exec(text.trim());
  if (!match) return undefined;
  const half = (match[4] ?? match[6] ?? '').toLowerCase();
  let hour = Number(match[1] ?? match[5]);
  if (half.startsWith('p') && hour < 12) hour += 12;
  if (half.startsWith('a') && hour === 12) hour = 0;
  const [minute, second] = [Number(match[2] ?? 0), Number(match[3] ?? 0)];
  return hour < 24 && minute < 60 && second < 60 ? (hour + minute / 60 + second / 3600) / 24 : undefined;
}

interface Written {
  readonly a: number;
  readonly b: number;
  readonly c: number;
  readonly digits: readonly number[];
  readonly rest: string;
}
const NUMERIC = /^(\d{1,4})\s*[-/. ]\s*(\d{1,2})\s*[-/. ]\s*(\d{2,4})(?:[T,\s]+(.*))?$/;
const NAMED =
  /^(?:[a-z]{2,9},?\s+)?(\d{1,2})(?:st|nd|rd|th)?[\s\-/.]*([a-z]{3,9})\.?[\s\-/.,]*(\d{2,4})(?:[T,\s]+(.*))?$/i;
const NAMED_FIRST =
  /^(?:[a-z]{2,9},?\s+)??([a-z]{3,9})\.?\s+(\d{1,2})(?:st|nd|rd|th)?,?\s+(\d{4})(?:[T,\s]+(.*))?$/i;

const written = (text: string): Written | undefined => {
  const match = NUMERIC.exec(text);
  return match
    ? {
        a: Number(match[1]),
        b: Number(match[2]),
        c: Number(match[3]),
        digits: [match[1]?.length ?? 0, match[2]?.length ?? 0, match[3]?.length ?? 0],
        rest: match[4] ?? '',
      }
    : undefined;
};

/** The order a text can only mean; undefined when day and month could be either, or it has no such date. */
export function orderIn(text: string): DateOrder | undefined {
  const date = written(text.trim());
  if (!date) return undefined;
  if ((date.digits[0] ?? 0) > 2) return 'year first';
  if (date.a > 12 && date.b <= 12) return 'day first';
  return date.b > 12 && date.a <= 12 ? 'month first' : undefined;
}
/** Day and month could be either: 03/04/2026. */
export const isEitherOrder = (text: string): boolean => {
  const date = written(text.trim());
  return date !== undefined && orderIn(text) === undefined && date.a !== date.b;
};

const withClock = (day: number | undefined, rest: string): number | undefined => {
  if (day === undefined || rest.trim() === '') return day;
  const clock = readClock(rest.replace(/(?:\.\d+)?Z$|\s*[+-]\d\d:?\d\d$/i, ''));
  return clock === undefined ? undefined : day + clock;
};

const fromFigures = (
  { a, b, c, digits, rest }: Written,
  text: string,
  order: DateOrder,
): number | undefined => {
  const own = orderIn(text) ?? (order === 'year first' ? 'day first' : order);
  if (own === 'year first') return withClock(serialOfCalendarDay(a, b, c), rest);
  const year = longYear(c, digits[2] ?? 0);
  return withClock(
    own === 'day first' ? serialOfCalendarDay(year, b, a) : serialOfCalendarDay(year, a, b),
    rest,
  );
};

const fromWords = (year: string, month: string, day: string, rest: string): number | undefined => {
  const number = monthOfWord(month);
  return number > 0
    ? withClock(serialOfCalendarDay(longYear(Number(year), year.length), number, Number(day)), rest)
    : undefined;
};

/** Serial of a date written as text, with its time if it has one; undefined when it is none. */
export function readDate(text: string, order: DateOrder): number | undefined {
  const trimmed = text.trim();
  const date = written(trimmed);
  if (date) return fromFigures(date, trimmed, order);
  const [, day = '', month = '', year = '', rest = ''] = NAMED.exec(trimmed) ?? [];
  if (day) return fromWords(year, month, day, rest);
  const [, first = '', second = '', third = '', last = ''] = NAMED_FIRST.exec(trimmed) ?? [];
  return first ? fromWords(third, first, second, last) : undefined;
}

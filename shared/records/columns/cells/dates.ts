/** Dates and times that arrive as text. Serials count days from 1899-12-30, as sheets do. */

import { serialOfCalendarDay } from '../../../units/dates';
import { plainDigits } from '../../../units/plainDigits';
import { fold } from '../../words/fold';
import { monthOf } from '../../words/lexicon';

export type DateOrder = 'day first' | 'month first' | 'year first';

const longYear = (year: number, digits: number): number =>
  digits > 2 ? year : year < 70 ? 2000 + year : 1900 + year;

const TIME =
  /^(?:(?:a|at|saa|jam|pukul|karfe)\s+)?(\d{1,2})(?:\s*[:.h]\s*(\d{2})(?:\s*[:.]\s*(\d{2}))?(?:\s*min)?|(\d{2})(?=\s*h)|\s*h)?\s*(.*)$/;
const BEFORE_NOON =
  /^(?:am?|a\.? ?m\.?|matin|manha|manana|da manha|de la manana|du matin|pagi|pg|morning|sang|subuh|dini hari|asubuhi|madrugada|safe|shokal|subah|ص)$/;
const AFTER_NOON =
  /^(?:pm?|p\.? ?m\.?|soir|du soir|noite|da noite|noche|de la noche|tarde|da tarde|de la tarde|malam|mlm|petang|ptg|sore|night|evening|afternoon|usiku|jioni|chieu|toi|dem|raat|dare|apres-midi|م)$/;
const PLAIN_TAIL = /^(?:h|hr|hrs|hours|uhr|min|gio|g|wita|wib)?\.?$/;
const NIGHT = /noite|noche|malam|mlm|night|usiku|dem|raat|dare/;
const SPOKEN: Readonly<Record<string, number>> = {
  minuit: 0,
  midnight: 0,
  'meia-noite': 0,
  medianoche: 0,
  'tengah malam': 0,
  midi: 0.5,
  noon: 0.5,
  'meio-dia': 0.5,
  mediodia: 0.5,
  'tengah hari': 0.5,
};
const OLD_HOURS = new Map(Object.entries(SPOKEN));

interface Half {
  readonly isAm: boolean;
  readonly isPm: boolean;
  readonly isNight: boolean;
}
/** What stands behind the figures: morning, evening or nothing; undefined where it is something else. */
function halfOf(tail: string): Half | undefined {
  const half = { isAm: BEFORE_NOON.test(tail), isPm: AFTER_NOON.test(tail), isNight: NIGHT.test(tail) };
  return half.isAm || half.isPm || PLAIN_TAIL.test(tail) ? half : undefined;
}
function hourIn(written: number, { isAm, isPm, isNight }: Half): number {
  if (isPm && written < 12 && !(isNight && written < 5)) return written + 12;
  return isAm && written === 12 ? 0 : written;
}

/** A clock time as far as it is written like one: `share` is undefined when there is no such hour. */
export function clockIn(text: string): { readonly share: number | undefined } | undefined {
  const plain = fold(plainDigits(text));
  const spoken = OLD_HOURS.get(plain);
  if (spoken !== undefined) return { share: spoken };
  const time = TIME.exec(plain);
  return time ? clockOf(time, plain) : undefined;
}
function clockOf(time: RegExpExecArray, plain: string): ReturnType<typeof clockIn> {
  const [, hours = '', colon, seconds = '0', bare, tail = ''] = time;
  const half = halfOf(tail.trim());
  const minutes = colon ?? bare;
  if (!half || (minutes === undefined && !plain.includes('h') && !half.isAm && !half.isPm)) return undefined;
  const hour = hourIn(Number(hours), half);
  const [minute, second] = [Number(minutes ?? 0), Number(seconds)];
  return {
    share: hour < 24 && minute < 60 && second < 60 ? (hour + minute / 60 + second / 3600) / 24 : undefined,
  };
}

/** Share of a day; undefined when the text is no clock time. */
export const readClock = (text: string): number | undefined => clockIn(text)?.share;

/** 2230 and 730 as people write hours without a mark; undefined when there is no such hour. */
export function clockOfDigits(value: number): number | undefined {
  const [hour, minute] = [Math.floor(value / 100), value % 100];
  return Number.isInteger(value) && value >= 0 && hour < 24 && minute < 60
    ? (hour + minute / 60) / 24
    : undefined;
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
  /^(?:[\p{L}.]{2,12},?\s+)?(\d{1,2})(?:st|nd|rd|th|er|o|º)?[\s\-/.]*(?:de\s+)?(\p{L}{3,12})\.?(?:[\s\-/.,]*(?:de\s+)?(\d{4}|\d{2}(?!\d|[:h])))?(?:[T,\s]+(.*))?$/iu;
const NAMED_FIRST =
  /^(?:\p{L}{2,9},?\s+)??(\p{L}{3,12})\.?\s+(\d{1,2})(?:st|nd|rd|th)?,?\s+(\d{4})(?:[T,\s]+(.*))?$/iu;
/** Day and month alone: 14/3. */
const NO_YEAR = /^(\d{1,2})\s*[-/]\s*(\d{1,2})$/;
/** Years of dates that are written without one, where nothing else on the sheet says it; a leap year. */
export const YEAR_UNSAID = 2000;

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

const fromWords = (
  year: string,
  month: string,
  day: string,
  rest: string,
  unsaid: number,
): number | undefined => {
  const number = monthOf(month);
  return number > 0
    ? withClock(
        serialOfCalendarDay(year === '' ? unsaid : longYear(Number(year), year.length), number, Number(day)),
        rest,
      )
    : undefined;
};

const bareDay = (text: string, order: DateOrder, unsaid: number): number | undefined => {
  const match = NO_YEAR.exec(text);
  if (!match) return undefined;
  const [a, b] = [Number(match[1]), Number(match[2])];
  return order === 'month first' ? serialOfCalendarDay(unsaid, a, b) : serialOfCalendarDay(unsaid, b, a);
};
function namedDay(text: string, unsaid: number): number | undefined {
  const [, day = '', month = '', year = '', rest = ''] = NAMED.exec(text) ?? [];
  if (day) return fromWords(year, month, day, rest, unsaid);
  const [, first = '', second = '', third = '', last = ''] = NAMED_FIRST.exec(text) ?? [];
  return first ? fromWords(third, first, second, last, unsaid) : undefined;
}

/** Serial of a date written as text, with its time if it has one; undefined when it is none. */
export function readDate(text: string, order: DateOrder, unsaid = YEAR_UNSAID): number | undefined {
  const trimmed = plainDigits(text)
    .replace(/[\u200e\u200f]/g, '')
    .trim();
  const date = written(trimmed);
  if (date) return fromFigures(date, trimmed, order);
  return bareDay(trimmed, order, unsaid) ?? namedDay(trimmed, unsaid);
}

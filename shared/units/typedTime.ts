import { plainDigits } from './plainDigits';
import { FIRST_DAY, LAST_DAY, dayText, isoDateOfSerial, serialOfCalendarDay, weekdayText } from './dates';

/** Hours and days as people type them. */

export type TypedTime =
  | { readonly kind: 'blank' }
  | { readonly kind: 'time'; readonly value: number; readonly understood: string }
  /** 3/4/2027: the third of April or the fourth of March. */
  | { readonly kind: 'open'; readonly readings: readonly [number, number] }
  | { readonly kind: 'none' };

const two = (n: number): string => String(n).padStart(2, '0');
/** 22.5 → "22:30". */
export const hourText = (hour: number): string => {
  const minutes = Math.round(hour * 60);
  return `${two(Math.floor(minutes / 60))}:${two(minutes % 60)}`;
};
const hour = (value: number): TypedTime =>
  value >= 0 && value <= 24 ? { kind: 'time', value, understood: hourText(value) } : { kind: 'none' };

const HALF = /^(am|pm|a\.m\.|p\.m\.)$/;
const twelve = (h: number, half: string): number =>
  half === '' ? h : h > 12 || h < 1 ? NaN : (h % 12) + (half.startsWith('p') ? 12 : 0);

/**
 * A clock time: 22:30, 22h30, 22.30, 2230, 10:30 pm, 22 h, 7.5, noon. Out: hours 0 to 24. Two digits behind a
 * point are minutes when there can be so many, one digit is a part of the hour.
 */
export function readTypedHour(typed: string): TypedTime {
  const text = plainDigits(typed.trim()).toLowerCase();
  if (text === '') return { kind: 'blank' };
  if (/^(noon|midday)$/.test(text)) return hour(12);
  if (text === 'midnight') return hour(24);
  const match =
    /^(\d{1,2})\s*(?:(?:[:.,]|h|hrs?|u|uhr)\s*(\d{1,2})?)?\s*(h|hrs?|hours?|uhr|am|pm|a\.m\.|p\.m\.)?$/.exec(
      text,
    );
  const solid = /^(\d{2})(\d{2})\s*(h|hrs?)?$/.exec(text);
  if (solid) return Number(solid[2]) < 60 ? hour(Number(solid[1]) + Number(solid[2]) / 60) : { kind: 'none' };
  if (!match) return { kind: 'none' };
  const half = HALF.test(match[3] ?? '') ? (match[3] ?? '') : '';
  const whole = twelve(Number(match[1]), half);
  const behind = match[2];
  if (behind === undefined) return hour(whole);
  const isPart = behind.length === 1 && /[.,]/.test(text);
  if (isPart) return hour(whole + Number(behind) / 10);
  return Number(behind) < 60 ? hour(whole + Number(behind) / 60) : { kind: 'none' };
}

/** Beginnings of the months in the languages of the trade around the tropics; no source, dictionaries. */
const MONTHS: readonly RegExp[] = [
  /^(jan|ene)/,
  /^(feb|fév|fev)/,
  /^(mar|mär|mrz|machi)/,
  /^(apr|avr|abr)/,
  /^(may|mai|mei)/,
  /^(jun|juin)/,
  /^(jul|juil)/,
  /^(aug|aoû|aou|ago)/,
  /^(sep|set)/,
  /^(oct|okt|out)/,
  /^(nov)/,
  /^(dec|déc|dez|dic|des)/,
];
const monthOf = (word: string): number => MONTHS.findIndex((month) => month.test(word.toLowerCase())) + 1;
const CENTURY = 2000;
const yearOf = (text: string): number => (text.length <= 2 ? CENTURY + Number(text) : Number(text));
const day = (serial: number | undefined): TypedTime =>
  serial === undefined
    ? { kind: 'none' }
    : {
        kind: 'time',
        value: serial,
        understood: `${weekdayText(serial)} ${dayText(serial)} ${isoDateOfSerial(serial).slice(0, 4)}`,
      };

function inWords(text: string, today: number | undefined): TypedTime | undefined {
  const match =
    /^(?:\p{L}+\.?,?\s+)?(\d{1,2})(?:st|nd|rd|th|er|\.)?[\s-]*(?:de\s+)?(\p{L}{3,})\.?[\s,-]*(?:de\s+)?(\d{4}|\d{2})?$/iu.exec(
      text,
    ) ??
    swapped(/^(?:\p{L}{3,}day,?\s+)?(\p{L}{3,})\.?\s*(\d{1,2})(?:st|nd|rd|th)?,?\s*(\d{4})?$/iu.exec(text));
  if (!match) return undefined;
  const [, date, word = '', year] = match;
  const month = monthOf(word);
  if (month === 0) return { kind: 'none' };
  return year === undefined
    ? nextOne(month, Number(date), today)
    : day(serialOfCalendarDay(yearOf(year), month, Number(date)));
}
const swapped = (match: RegExpExecArray | null): readonly (string | undefined)[] | undefined =>
  match ? [match[0], match[2], match[1], match[3]] : undefined;

/** Without a year: the next such day from today on. */
function nextOne(month: number, date: number, today: number | undefined): TypedTime {
  if (today === undefined) return { kind: 'none' };
  const year = Number(isoDateOfSerial(today).slice(0, 4));
  const here = serialOfCalendarDay(year, month, date);
  return here !== undefined && here >= today ? day(here) : day(serialOfCalendarDay(year + 1, month, date));
}

type DayOrder = 'day first' | 'month first';
function inFigures(text: string, order: DayOrder | undefined): TypedTime | undefined {
  const figures = /^(\d{1,2})[-/.\s](\d{1,2})[-/.\s](\d{4}|\d{2})$/.exec(text);
  if (!figures) return undefined;
  const [a, b, year] = [Number(figures[1]), Number(figures[2]), yearOf(figures[3] ?? '')];
  const dayFirst = serialOfCalendarDay(year, b, a);
  const monthFirst = serialOfCalendarDay(year, a, b);
  if (dayFirst === undefined || monthFirst === undefined || dayFirst === monthFirst)
    return day(dayFirst ?? monthFirst);
  if (order !== undefined) return day(order === 'day first' ? dayFirst : monthFirst);
  return { kind: 'open', readings: [dayFirst, monthFirst] };
}

/**
 * A day: 2027-03-31, 31/3/2027, 31.03.27, 31 March 2027, 31 mars, Mar 31, or the number a sheet keeps. Day and
 * month in figures are told apart where one is above 12, else by `order` (of the column), else both come back.
 */
export function readTypedDay(
  typed: string,
  { today, order }: { readonly today?: number; readonly order?: DayOrder } = {},
): TypedTime {
  const text = plainDigits(typed.trim());
  if (text === '') return { kind: 'blank' };
  const iso = /^(\d{4})[-/.](\d{1,2})[-/.](\d{1,2})(?:[T ]00:00.*)?$/.exec(text);
  if (iso) return day(serialOfCalendarDay(Number(iso[1]), Number(iso[2]), Number(iso[3])));
  if (/^\d{5}$/.test(text)) {
    const serial = Number(text);
    return serial >= FIRST_DAY && serial <= LAST_DAY ? day(serial) : { kind: 'none' };
  }
  return inFigures(text, order) ?? inWords(text, today) ?? { kind: 'none' };
}

/** What to ask about a day that may be two. */
export const openDaySentence = (typed: string, [a, b]: readonly [number, number]): string =>
  `“${typed.trim()}” can be ${dayText(a)} or ${dayText(b)}. Type it as ${isoDateOfSerial(a)} or ${isoDateOfSerial(b)}.`;

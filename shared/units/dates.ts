/**
 * Days, hours and months, once. A serial counts days as spreadsheets do: 1 January 1970 is 25 569, the part
 * behind the point is the share of the day. Every date is read in UTC, because a serial knows no time zone.
 * A sheet believes that 1900 was a leap year; from March 1900 on serials and the calendar agree.
 */

/** Serial number of 1 January 1970, where the calendar of the language begins. */
export const UNIX_EPOCH_SERIAL = 25_569;
export const MS_PER_DAY = 86_400_000;
const MS_PER_MINUTE = 60_000;
const MINUTES_PER_DAY = 1_440;

/** First and last day that is planned, paid or typed as a number: 1 January 2000 and 31 December 2099. */
export const FIRST_DAY = 36_526;
export const LAST_DAY = 73_050;

/** January to December. */
export const MONTH_NAMES = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
] as const;
export const MONTH_WORDS = MONTH_NAMES.map((name) => name.slice(0, 3));
/** Monday first, as the weeks of a plan begin. */
export const WEEKDAY_WORDS = ['Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat', 'Sun'] as const;
/** Serial 2 was a Monday. */
const MONDAY = 2;
const DAYS_PER_WEEK = 7;

/** The minute a serial stands for. */
export const dateOf = (serial: number): Date =>
  new Date(Math.round((serial - UNIX_EPOCH_SERIAL) * MINUTES_PER_DAY) * MS_PER_MINUTE);
/** Midnight at the start of a serial's day. */
export const midnightOf = (serial: number): Date =>
  new Date((Math.floor(serial) - UNIX_EPOCH_SERIAL) * MS_PER_DAY);
export const serialOfDate = (date: Date): number => date.getTime() / MS_PER_DAY + UNIX_EPOCH_SERIAL;

/** Serial of a day, months 1 to 12; a day or month beyond its end runs on, as DATE does: 30 February is 2 March. */
export const serialOfDay = (year: number, month: number, day: number): number =>
  serialOfDate(new Date(Date.UTC(year, month - 1, day)));

/** Serial of a day that exists; undefined for 30 February. */
export function serialOfCalendarDay(year: number, month: number, day: number): number | undefined {
  const date = new Date(Date.UTC(year, month - 1, day));
  return date.getUTCMonth() === month - 1 && date.getUTCDate() === day ? serialOfDate(date) : undefined;
}

export interface DayParts {
  readonly year: number;
  /** 1 January … 12 December. */
  readonly month: number;
  readonly day: number;
}
export const dayParts = (serial: number): DayParts => {
  const date = midnightOf(serial);
  return { year: date.getUTCFullYear(), month: date.getUTCMonth() + 1, day: date.getUTCDate() };
};

/** 0 January … 11 December, as lists by month are counted. */
export const monthIndexOf = (serial: number): number => midnightOf(serial).getUTCMonth();
/** 1 Monday … 7 Sunday. */
export const weekdayOf = (serial: number): number =>
  ((((Math.floor(serial) - MONDAY) % DAYS_PER_WEEK) + DAYS_PER_WEEK) % DAYS_PER_WEEK) + 1;
export const mondayOf = (serial: number): number =>
  Math.floor((Math.floor(serial) - MONDAY) / DAYS_PER_WEEK) * DAYS_PER_WEEK + MONDAY;

/** "2027-03-31" → serial; undefined when there is no such day. */
export function serialOfIsoDate(text: string): number | undefined {
  const match = /^(\d{4})-(\d{2})-(\d{2})$/.exec(text.trim());
  return match ? serialOfCalendarDay(Number(match[1]), Number(match[2]), Number(match[3])) : undefined;
}
/** "2027-03-31T10:00:00", with or without a zone → serial; undefined when it is no moment. */
export const serialOfIsoMoment = (text: string): number | undefined => {
  const hasZone = /Z|[+-]\d\d:?\d\d$/.test(text);
  const ms = Date.parse(hasZone ? text : `${text}${text.includes('T') ? '' : 'T00:00:00'}Z`);
  return Number.isFinite(ms) ? serialOfDate(new Date(ms)) : undefined;
};
/** Serial → "2027-03-31". */
export const isoDateOfSerial = (serial: number): string => midnightOf(serial).toISOString().slice(0, 10);

/** "7:30" → 7.5 hours; undefined when it is no clock time. */
export function hourOfClock(text: string): number | undefined {
  const match = /^(\d{1,2}):(\d{2})$/.exec(text.trim());
  const [hour, minute] = [Number(match?.[1]), Number(match?.[2])];
  return hour < 24 && minute < 60 ? hour + minute / 60 : undefined;
}

/** Month 1 to 12 of a word that begins with the month's first three English letters; 0 when none does. */
export const monthOfWord = (word: string): number =>
  MONTH_WORDS.findIndex((month) => month.toLowerCase() === word.slice(0, 3).toLowerCase()) + 1;

const two = (n: number): string => String(n).padStart(2, '0');
/** "14:05", to the nearest minute. */
export const timeText = (serial: number): string =>
  `${two(dateOf(serial).getUTCHours())}:${two(dateOf(serial).getUTCMinutes())}`;
/** "3 May": a month in letters cannot be taken for a day. */
export const dayText = (serial: number): string =>
  `${dateOf(serial).getUTCDate()} ${MONTH_WORDS[dateOf(serial).getUTCMonth()] ?? ''}`;
/** "Mon". */
export const weekdayText = (serial: number): string =>
  WEEKDAY_WORDS[(dateOf(serial).getUTCDay() + 6) % DAYS_PER_WEEK] ?? '';
/** "3 May 2026 14:05" for a sentence; the number itself where it is no date. */
export const momentText = (serial: number): string =>
  Number.isNaN(dateOf(serial).getTime())
    ? String(serial)
    : `${dayText(serial)} ${dateOf(serial).getUTCFullYear()} ${timeText(serial)}`;
/** "2026-05-03" or "2026-05-03 14:05": the one order of day, month and year that cannot be misread. */
export const isoMomentText = (serial: number): string => {
  const isMidnight = Math.round(serial * MINUTES_PER_DAY) % MINUTES_PER_DAY === 0;
  const date = dateOf(serial).toISOString();
  return isMidnight ? date.slice(0, 10) : `${date.slice(0, 10)} ${date.slice(11, 16)}`;
};
/** Serial of the day a clock on the wall shows: the local year, month and day, whatever the zone. */
export const serialOfLocalDay = (now: Date): number =>
  serialOfDay(now.getFullYear(), now.getMonth() + 1, now.getDate());

/** 1 January 2000 and 1 January 2100. */
const [CENTURY_FROM, CENTURY_TO] = [36_526, 73_051];
/** Whether a cell holds a moment of this century: what else stands in a column of days is no day. */
export const isMomentCell = (cell: unknown): cell is number =>
  typeof cell === 'number' && cell > CENTURY_FROM && cell < CENTURY_TO;

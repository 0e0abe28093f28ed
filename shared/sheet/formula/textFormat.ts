import { UNIX_EPOCH_SERIAL, MONTH_NAMES } from '../../units/dates';

/**
 * Number formats, the part that plans and the terminal use: 0 # , . % and the date and time letters. Text in
 * quotes is kept.
 */

const DAYS = ['Sunday', 'Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday'];
const TOKEN = /"[^"]*"|\\.|\[[^\]]*\]|AM\/PM|y+|m+|d+|h+|s+|./giy;

const two = (n: number): string => String(n).padStart(2, '0');
const isDateFormat = (format: string): boolean =>
  /[ymdhs]/i.test(format.replace(/"[^"]*"|\\.|\[[^\]]*\]/g, ''));

type Part = (date: Date, hour: number) => string;
const PARTS: Readonly<Record<string, Part>> = {
  yy: (date) => two(date.getUTCFullYear() % 100),
  yyyy: (date) => String(date.getUTCFullYear()),
  m: (date) => String(date.getUTCMonth() + 1),
  mm: (date) => two(date.getUTCMonth() + 1),
  mmm: (date) => (MONTH_NAMES[date.getUTCMonth()] ?? '').slice(0, 3),
  mmmm: (date) => MONTH_NAMES[date.getUTCMonth()] ?? '',
  d: (date) => String(date.getUTCDate()),
  dd: (date) => two(date.getUTCDate()),
  ddd: (date) => (DAYS[date.getUTCDay()] ?? '').slice(0, 3),
  dddd: (date) => DAYS[date.getUTCDay()] ?? '',
  h: (_date, hour) => String(hour),
  hh: (_date, hour) => two(hour),
  s: (date) => String(date.getUTCSeconds()),
  ss: (date) => two(date.getUTCSeconds()),
  'am/pm': (date) => (date.getUTCHours() < 12 ? 'AM' : 'PM'),
};

/** m and mm mean minutes beside hours or seconds. */
function datePart(token: string, date: Date, isMinute: boolean, isTwelve: boolean): string {
  const key = token.toLowerCase();
  if (isMinute && key === 'm') return String(date.getUTCMinutes());
  if (isMinute && key === 'mm') return two(date.getUTCMinutes());
  const hour = isTwelve ? ((date.getUTCHours() + 11) % 12) + 1 : date.getUTCHours();
  return PARTS[key]?.(date, hour) ?? token.replace(/^"|"$|^\\/g, '');
}

/** Days that a sheet knows: up to 31 December 9999. */
export const isDay = (serial: number): boolean => serial >= 0 && serial < 2_958_466;

function formatDate(serial: number, format: string): string {
  const date = new Date(Math.round((serial - UNIX_EPOCH_SERIAL) * 86_400) * 1000);
  const tokens = format.match(TOKEN) ?? [];
  const isTwelve = tokens.some((token) => /^am\/pm$/i.test(token));
  return tokens
    .map((token, i) => {
      const before = tokens.slice(0, i).findLast((t) => /^[ymdhs]+$/i.test(t)) ?? '';
      const after = tokens.slice(i + 1).find((t) => /^[ymdhs]+$/i.test(t)) ?? '';
      return datePart(token, date, /^h/i.test(before) || /^s/i.test(after), isTwelve);
    })
    .join('');
}

/** 1.25E+22 → 12500000000000000000000: fifteen digits, then zeros. */
function wholeDigits(size: number): string {
  const [digits = '', power = '0'] = size.toExponential(14).split('e');
  return digits
    .replace('.', '')
    .padEnd(Number(power) + 1, '0')
    .slice(0, Number(power) + 1);
}

/** A half goes up as it is written: 1.005 is 1.01, though its nearest double lies below. */
function fixedDigits(size: number, places: number): string {
  const scaled = Number((size * 10 ** places).toPrecision(15));
  return scaled % 1 === 0.5 ? (Math.ceil(scaled) / 10 ** places).toFixed(places) : size.toFixed(places);
}

/** Digits of a number under a pattern such as #,##0.0#. */
function digitsOf(size: number, pattern: string): string {
  const [whole = '', fraction = ''] = pattern.replace(/[^0#.,]/g, '').split('.');
  const least = (fraction.match(/0/g) ?? []).length;
  const shown = Number(size.toPrecision(15));
  // From 1E+21 on toFixed() writes an exponent.
  const [digits = '', decimals = ''] =
    shown >= 1e21 ? [wholeDigits(shown)] : fixedDigits(shown, Math.min(100, fraction.length)).split('.');
  const kept = decimals.slice(0, least) + decimals.slice(least).replace(/0+$/, '');
  const padded = digits.padStart((whole.match(/0/g) ?? []).length, '0');
  const grouped = whole.includes(',') ? padded.replace(/\B(?=(\d{3})+(?!\d))/g, ',') : padded;
  return kept ? `${grouped}.${kept}` : grouped;
}

const literal = (s = ''): string => s.replace(/"([^"]*)"|\\(.)/g, '$1$2');

function formatDigits(value: number, format: string): string {
  const bare = format.replace(/"[^"]*"|\\./g, '');
  // A section without a place for digits shows its own words alone.
  if (!/[0#]/.test(bare)) return `${value < 0 ? '-' : ''}${literal(format)}`;
  const digits = digitsOf(Math.abs(value) * (bare.includes('%') ? 100 : 1), bare);
  const sign = value < 0 && /[1-9]/.test(digits) ? '-' : '';
  const [, lead, tail] = /^((?:"[^"]*"|\\.|[^0#"\\])*)[0#.,]+(.*)$/.exec(format) ?? [];
  return `${sign}${literal(lead)}${digits}${literal(tail)}`;
}

/** TEXT(value, format) as a cell answers it; undefined for a day that no calendar of a sheet has. */
export function formatText(value: number, format: string): string | undefined {
  return isDateFormat(sectionOf(value, format)) && !isDay(value) ? undefined : formatNumber(value, format);
}

/** Sections after ; are for negative numbers and zero. */
function sectionOf(value: number, format: string): string {
  const sections = format.split(';');
  return (
    (value < 0 ? sections[1] : undefined) ?? (value === 0 ? sections[2] : undefined) ?? sections[0] ?? ''
  );
}

/** TEXT(value, format) for a number. Sections after ; are for negative numbers and zero. */
export function formatNumber(value: number, format: string): string {
  if (format === '@' || /^general$/i.test(format)) return String(Number(value.toPrecision(11)));
  const chosen = sectionOf(value, format);
  // A section of its own for negative numbers brings its sign along.
  const hasOwn = value < 0 && format.includes(';');
  return isDateFormat(chosen) ? formatDate(value, chosen) : formatDigits(hasOwn ? -value : value, chosen);
}

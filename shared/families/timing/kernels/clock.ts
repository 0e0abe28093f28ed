import { UNIX_EPOCH_SERIAL } from '../../../units/convert';

const MONTHS = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'] as const;
const MS_PER_MINUTE = 60_000;
const MINUTES_PER_DAY = 1_440;

/** A serial as a date read in UTC, to the nearest minute. */
export const dateOf = (serial: number): Date =>
  new Date(Math.round((serial - UNIX_EPOCH_SERIAL) * MINUTES_PER_DAY) * MS_PER_MINUTE);

/** "3 May 2026 14:05" for a sentence, to the nearest minute. */
export const clockText = (serial: number): string => {
  const date = dateOf(serial);
  if (Number.isNaN(date.getTime())) return String(serial);
  const two = (n: number): string => String(n).padStart(2, '0');
  return `${date.getUTCDate()} ${MONTHS[date.getUTCMonth()] ?? ''} ${date.getUTCFullYear()} ${two(date.getUTCHours())}:${two(date.getUTCMinutes())}`;
};

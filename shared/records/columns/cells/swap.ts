import { dayParts, serialOfCalendarDay } from '../../../units/dates';

/** The day with day and month exchanged; undefined when there is none or it is the same. */
export function swappedDay(serial: number): number | undefined {
  const { year, month, day } = dayParts(serial);
  const swapped = day === month ? undefined : serialOfCalendarDay(year, day, month);
  return swapped === undefined ? undefined : swapped + (serial - Math.floor(serial));
}

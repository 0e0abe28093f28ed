import { numfmt } from '@univerjs/core';

/** A number as a number format shows it; without one, rounded to what an axis needs. */
export function formatted(format: string, value: number): string {
  if (format === '' || format === 'General') return Number(value.toPrecision(6)).toLocaleString('en-GB');
  try {
    return numfmt.format(format, value);
  } catch {
    return String(value);
  }
}

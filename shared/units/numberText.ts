/**
 * Numbers that arrive as text: thousands, decimal commas, a unit left in the cell. The letters of it; what a
 * field makes of them is said in typedNumber.
 */

import type { Decimal, NumberParts } from './digits';
import { decimalOf, isOpenDigits, numberParts, valueOfParts } from './digits';

export type { Decimal } from './digits';

const BEFORE = /^(?:ca\.?|c\.|~|≈|about|approx\.?)\s*/i;

const partsOf = (text: string): NumberParts | undefined => {
  const parts = numberParts(text, BEFORE);
  // 12/03, 10-12, 08:30 and 3x4 are no single number.
  return parts && !/^[-/:x×]/.test(parts.tail) && parts.tail.length <= 12 ? parts : undefined;
};

/**
 * Which mark a single text can only mean as decimal; undefined when both readings are open or it has no mark.
 */
export function decimalIn(text: string): Decimal | undefined {
  const parts = partsOf(text);
  return parts && decimalOf(parts.digits);
}

/** Has one mark with three digits behind it: 1,250 or 1.250. */
export const isOpenToBoth = (text: string): boolean => {
  const parts = partsOf(text);
  return parts !== undefined && isOpenDigits(parts.digits);
};

/**
 * The number of a text when `decimal` is the decimal mark; NaN when it is none. `unit` is what stood behind
 * it.
 */
export function readNumber(
  text: string,
  decimal: Decimal,
): { readonly value: number; readonly unit: string } {
  const parts = partsOf(text);
  return parts ? { value: valueOfParts(parts, decimal), unit: parts.tail } : { value: NaN, unit: '' };
}

import { plainDigits } from './plainDigits';

/**
 * The digits of a number that arrives as text: sign, thousands, decimal mark. What may stand around them is the
 * reader’s.
 */

export type Decimal = ',' | '.';

export interface NumberParts {
  readonly sign: string;
  /** Digits with their points and commas; spaces and apostrophes between thousands are gone. */
  readonly digits: string;
  /** What stands behind. */
  readonly tail: string;
}

const SHAPE = /^([+\-−])?\s*(\d[\d.,'’\s\u00a0\u202f]*|[.,]\d+)\s*([^\d\s].*)?$/;

/** The parts of a text that is one number with something behind it; `before` is taken off its front. */
export function numberParts(text: string, before: RegExp): NumberParts | undefined {
  const match = SHAPE.exec(plainDigits(text.trim()).replace(before, ''));
  if (!match?.[2]) return undefined;
  return {
    sign: match[1] ?? '',
    digits: match[2].replace(/['’\s\u00a0\u202f]/g, ''),
    tail: (match[3] ?? '').trim(),
  };
}

/** Which mark digits can only mean as decimal; undefined when both readings are open or they have no mark. */
export function decimalOf(digits: string): Decimal | undefined {
  const commas = digits.split(',').length - 1;
  const points = digits.split('.').length - 1;
  const at = Math.max(digits.lastIndexOf(','), digits.lastIndexOf('.'));
  if (at < 0) return undefined;
  const last = digits[at] as Decimal;
  if (commas > 0 && points > 0) return last;
  if (commas + points > 1) return last === ',' ? '.' : ',';
  // One mark: three digits behind it may be thousands, unless a 0 stands alone in front.
  const front = digits.slice(0, at);
  const isThree = digits.length - at - 1 === 3;
  return isThree && front !== '' && front !== '0' && front.length <= 3 ? undefined : last;
}

/** One mark with three digits behind it: 1,250 or 1.250. */
export const isOpenDigits = (digits: string): boolean =>
  /[.,]/.test(digits) && decimalOf(digits) === undefined;

/** The number, with `decimal` for the mark where the digits leave it open; NaN where they are none. */
export function valueOfParts({ sign, digits }: NumberParts, decimal: Decimal): number {
  const own = decimalOf(digits) ?? decimal;
  const plain = own === ',' ? digits.replaceAll('.', '').replace(',', '.') : digits.replaceAll(',', '');
  return sign === '-' || sign === '−' ? -Number(plain) : Number(plain);
}

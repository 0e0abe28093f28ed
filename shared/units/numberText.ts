/**
 * Numbers that arrive as text: thousands, decimal commas, a unit left in the cell. The letters of it; what a
 * field makes of them is said in typedNumber.
 */

import { plainDigits } from './plainDigits';

export type Decimal = ',' | '.';

interface Shape {
  readonly sign: string;
  readonly digits: string;
  readonly unit: string;
}

const SHAPE =
  /^(?:ca\.?|c\.|~|≈|about|approx\.?)?\s*([+\-−])?\s*(\d[\d.,'’\s\u00a0\u202f]*|[.,]\d+)\s*([^\d\s].*)?$/i;

const shapeOf = (text: string): Shape | undefined => {
  const match = SHAPE.exec(plainDigits(text.trim()));
  if (!match?.[2]) return undefined;
  const unit = (match[3] ?? '').trim();
  // 12/03, 10-12, 08:30 and 3x4 are no single number.
  if (/^[-/:x×]/.test(unit) || unit.length > 12) return undefined;
  return { sign: match[1] ?? '', digits: match[2].replace(/['’\s\u00a0\u202f]/g, ''), unit };
};

const marks = (
  digits: string,
): { readonly commas: number; readonly points: number; readonly last: string; readonly after: number } => {
  const at = Math.max(digits.lastIndexOf(','), digits.lastIndexOf('.'));
  return {
    commas: digits.split(',').length - 1,
    points: digits.split('.').length - 1,
    last: at < 0 ? '' : (digits[at] ?? ''),
    after: at < 0 ? 0 : digits.length - at - 1,
  };
};

/**
 * Which mark a single text can only mean as decimal; undefined when both readings are open or it has no mark.
 */
export function decimalIn(text: string): Decimal | undefined {
  const shape = shapeOf(text);
  if (!shape) return undefined;
  const { commas, points, last, after } = marks(shape.digits);
  if (commas > 0 && points > 0) return last as Decimal;
  if (commas + points === 0) return undefined;
  if (commas + points > 1) return last === ',' ? '.' : ',';
  // One mark: three digits behind it may be thousands, unless a 0 stands alone in front.
  const front = shape.digits.slice(0, shape.digits.length - after - 1);
  if (after === 3 && front !== '' && front !== '0' && front.length <= 3) return undefined;
  return last as Decimal;
}

/** Has one mark with three digits behind it: 1,250 or 1.250. */
export const isOpenToBoth = (text: string): boolean => {
  const shape = shapeOf(text);
  return shape !== undefined && /[.,]/.test(shape.digits) && decimalIn(text) === undefined;
};

/**
 * The number of a text when `decimal` is the decimal mark; NaN when it is none. `unit` is what stood behind
 * it.
 */
export function readNumber(
  text: string,
  decimal: Decimal,
): { readonly value: number; readonly unit: string } {
  const shape = shapeOf(text);
  if (!shape) return { value: NaN, unit: '' };
  const own = decimalIn(text) ?? decimal;
  const plain =
    own === ',' ? shape.digits.replaceAll('.', '').replace(',', '.') : shape.digits.replaceAll(',', '');
  const value = Number(plain);
  return { value: shape.sign === '-' || shape.sign === '−' ? -value : value, unit: shape.unit };
}

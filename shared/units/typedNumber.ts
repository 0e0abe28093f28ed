import type { Decimal } from './numberText';
import { decimalIn, isOpenToBoth, readNumber } from './numberText';
import { plainDigits } from './plainDigits';
import { wayFrom, withoutMoney } from './typedUnits';
import { writtenNumber } from './writtenNumber';

/**
 * A number as a person types it, read for a field: thousands marks of both styles, spaces, a unit. Every form
 * and every reader of sheets asks here, and shows what was understood.
 */

export interface NumberField {
  /** Unit the field keeps; another unit of its kind may be typed behind the number. */
  readonly unit?: string | undefined;
  readonly min?: number | undefined;
  readonly max?: number | undefined;
  readonly whole?: boolean | undefined;
  /** Decimal mark of the column or form the number stands in, where that is known. */
  readonly decimal?: Decimal | undefined;
}
export type TypedNumber =
  | { readonly kind: 'blank' }
  /** `understood`: the number as the field takes it, "20 000 L", for showing beside what was typed. */
  | { readonly kind: 'number'; readonly value: number; readonly understood: string }
  /** Two readings are possible and nothing decides. */
  | { readonly kind: 'open'; readonly readings: readonly [number, number] }
  /** Digits with something behind them that is no unit of the field, or no number at all. */
  | { readonly kind: 'none'; readonly unit?: string };

const fits = (n: number, { min = -Infinity, max = Infinity, whole = false }: NumberField): boolean =>
  n >= min && n <= max && (!whole || Number.isInteger(n));

/** About so many is taken as so many; a full stop behind it ends the sentence. */
const plainOf = (typed: string): string =>
  plainDigits(typed.trim())
    .replace(/^(?:ca\.?|about|approx\.?|[~≈])\s*(?=[\d.,])/i, '')
    .replace(/(\d)[.,]$/, '$1');

/** Plain digits of a machine: 1e5, -3.25. */
const PLAIN = /^[+-]?\d+(\.\d+)?e[+-]?\d+$/i;

/** One mark at the most, or groups of thousands (also by hundreds of thousands, 1,00,000) and a decimal part. */
const isWell = (text: string): boolean => {
  const digits = /^[+\-−]?\s*([\d.,'’\s]*[\d.,])/.exec(text)?.[1] ?? '';
  const groups = /^\d{1,3}([.,'’\s])(?:\d{2,3}\1)*\d{3}(?:([.,])\d+)?$/.exec(digits);
  return /^(\d+[.,]?\d*|[.,]\d+)$/.test(digits) || (groups !== null && groups[1] !== groups[2]);
};

function readWith(text: string, field: NumberField, decimal: Decimal): number | string {
  const { value, unit } = readNumber(text, decimal);
  if (Number.isNaN(value)) return '';
  const percent = /^%/.test(unit) && !field.unit?.startsWith('share');
  const way = percent ? (n: number) => n / 100 : wayFrom(field.unit ?? '', unit);
  // Conversions leave dust in the last digits.
  return way ? Number(way(value).toPrecision(12)) : unit;
}

const taken = (value: number, { unit = '' }: NumberField): TypedNumber => {
  if (!Number.isFinite(value)) return { kind: 'none' };
  const bare = unit.split(' ')[0] ?? '';
  const share = bare === 'share' ? ` (${writtenNumber(value * 100)} %)` : '';
  const shown = ['', 'share', 'a', 'fish', 'as'].includes(bare) ? '' : ` ${bare}`;
  return { kind: 'number', value, understood: `${writtenNumber(value)}${shown}${share}` };
};

/** Which of two readings is meant. */
function decided(text: string, field: NumberField, point: number, comma: number): TypedNumber {
  const thousands = Math.max(point, comma);
  const able = [point, comma].filter((n) => fits(n, field));
  // Nobody writes three noughts behind a decimal mark.
  const isThousands = /[.,]000(?!\d)/.test(text);
  const [only] = able;
  if (field.whole) return taken(thousands, field);
  if (able.length === 1 && only !== undefined) return taken(only, field);
  if (isThousands) return taken(thousands, field);
  if (field.decimal !== undefined) return taken(field.decimal === '.' ? point : comma, field);
  return { kind: 'open', readings: [thousands, Math.min(point, comma)] };
}

/**
 * The number of a text in a field. "10,000" and "10.000" of something counted are ten thousand; where one of
 * two readings does not fit the field the other is meant; else the rest of the column decides, and where
 * nothing does both come back to be asked about. In: text, field. Out: value in the field's unit.
 * Example: "20 000 L" in litres 10 to 200,000 → 20000; "900g" in kg → 0.9.
 */
export function readTypedNumber(typed: string, field: NumberField = {}): TypedNumber {
  const text = withoutMoney(plainOf(typed));
  if (text === '') return { kind: 'blank' };
  if (PLAIN.test(text)) return taken(Number(text), field);
  if (!isWell(text)) return { kind: 'none' };
  const [point, comma] = [readWith(text, field, '.'), readWith(text, field, ',')];
  if (typeof point === 'string' || typeof comma === 'string')
    return point === '' ? { kind: 'none' } : { kind: 'none', unit: String(point) };
  return isOpenToBoth(text) && point !== comma ? decided(text, field, point, comma) : taken(point, field);
}

/** The decimal mark that the numbers of a column agree on; undefined when none or both speak. */
export function decimalOf(texts: readonly string[]): Decimal | undefined {
  const marks = new Set(
    texts.map((text) => decimalIn(withoutMoney(text))).filter((mark) => mark !== undefined),
  );
  const [mark] = marks;
  return marks.size === 1 ? mark : undefined;
}

/** Three digits behind the mark could be thousands again. */
const typedAgain = (n: number): string => (/\.\d{3}$/.test(String(n)) ? `${n}0` : String(n));

/** What to ask about a number that may be two. */
export const openSentence = (typed: string, [large, small]: readonly [number, number]): string =>
  `“${typed.trim()}” can be ${writtenNumber(large)} or ${writtenNumber(small)}. Type ${typedAgain(large)} or ${typedAgain(small)}.`;

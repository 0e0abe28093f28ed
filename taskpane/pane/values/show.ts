import { isoMomentText } from '../../../shared/units/dates';
import type { Quantity } from '../../../shared/units/quantities';
import type { Cell } from '../../../shared/base/values';
import { isError } from '../../../shared/base/values';

/** Values as the pane prints them: the number format of the quantity, with its unit behind. */

const decimalsOf = (format: string): number => /\.(0+)/.exec(format)?.[1]?.length ?? 0;

/** Up to three telling digits for small numbers, so that 0.0042 g is not printed as 0.00 g. */
const decimalsFor = (value: number, format: string): number => {
  const wanted = decimalsOf(format);
  const size = Math.abs(value);
  if (size === 0 || size >= 10 ** (1 - wanted)) return wanted;
  const fine = Math.min(8, 2 - Math.floor(Math.log10(size)));
  const zeros = /0*$/.exec(size.toFixed(Math.max(wanted, fine)))?.[0].length ?? 0;
  return Math.max(wanted, fine - zeros);
};

/** A narrow space that does not break: digits of one number stay on one line. */
const NARROW = '\u202f';

/** The point or the comma before decimals, as the reader writes it. */
export type NumberStyle = 'point' | 'comma';
let decimalMark = '.';
export const setNumberStyle = (style: NumberStyle): void => {
  decimalMark = style === 'comma' ? ',' : '.';
};
export const shownDecimalMark = (): string => decimalMark;
/** A number as the pane's own keys typed it, with the mark that stands on them. */
export const typedShown = (text: string): string => text.replace('.', decimalMark);

/**
 * A number of ours that stands in a field, with the mark the reader types. "1.234" stays: with the other mark it
 * could be a thousand and more.
 */
export const fieldShown = (text: string): string =>
  /^[−-]?\d+\.\d+(?: ?%)?$/.test(text) && !/^[−-]?[1-9]\d{0,2}\.\d{3}(?!\d)/.test(text)
    ? typedShown(text)
    : text;

export const grouped = (value: number, decimals = 0): string => {
  const [whole = '', part] = Math.abs(value).toFixed(decimals).split('.');
  const sign = value < 0 && Number(Math.abs(value).toFixed(decimals)) !== 0 ? '−' : '';
  return `${sign}${whole.replace(/\B(?=(\d{3})+$)/g, NARROW)}${part ? `${decimalMark}${part}` : ''}`;
};

let currency = '';
/** Three letters or a sign, put behind money; nothing is converted. */
export const setCurrency = (sign: string): void => {
  currency = sign.trim();
};
export const shownCurrency = (): string => currency;
export const money = (value: number, decimals = 0): string =>
  `${grouped(value, decimals)}${currency === '' ? '' : `\u00a0${currency}`}`;

const isWholeNumber = (value: number, format: string): boolean =>
  Number.isInteger(value) && !format.includes('.');

export function showNumber(value: number, quantity: Quantity): string {
  const { format, unit } = quantity;
  if (unit === 'date' || unit === 'date and time')
    return isoMomentText(unit === 'date' ? Math.floor(value) : value);
  if (format.includes('%')) return `${grouped(value * 100, decimalsFor(value * 100, format))} %`;
  if (Math.abs(value) >= 1e12) return value.toExponential(4);
  return grouped(value, isWholeNumber(value, format) ? 0 : decimalsFor(value, format));
}

export function showCell(value: Cell, quantity: Quantity): string {
  if (value === null || value === '') return '–';
  if (isError(value)) return value.error;
  if (typeof value === 'boolean') return value ? 'TRUE' : 'FALSE';
  return typeof value === 'number' ? showNumber(value, quantity) : value;
}

/** Units that say nothing beside the value. */
export const unitText = ({ unit }: Quantity): string =>
  ['text', 'date', 'date and time', 'share', 'pH'].includes(unit) ? '' : unit;

export const showWithUnit = (value: Cell, quantity: Quantity): string => {
  const unit = typeof value === 'number' ? unitText(quantity) : '';
  return `${showCell(value, quantity)}${unit ? ` ${unit}` : ''}`;
};

/** sampleWeights → Sample weights. */
export const labelOf = (name: string): string => {
  const words = name.replace(/([a-z0-9])([A-Z])/g, '$1 $2').toLowerCase();
  return words === 'ph' ? 'pH' : words.charAt(0).toUpperCase() + words.slice(1);
};

import { momentText } from '../../units/dates';
import type { FieldName, NumericField } from '../fields';
import { fieldSpec } from '../fields';

/** Values as sentences write them. */
const grouped = (value: number): string => {
  const [whole = '', decimals] = String(value).split('.');
  const text = whole.replace(/\B(?=(\d{3})+(?!\d))/g, ',');
  return decimals === undefined ? text : `${text}.${decimals}`;
};

export const plain = (value: number, digits = 4): string => {
  const whole = Math.abs(value) >= 10 ** digits ? Math.round(value) : Number(value.toPrecision(digits));
  return grouped(Object.is(whole, -0) ? 0 : whole).replace('-', '−');
};

export const percent = (share: number): string => `${plain(100 * share, 3)} %`;
export const hoursText = (hours: number): string => `${plain(hours, 3)} h`;

/** With its unit: "1.25 kg", "85 %", "12 May 2026 08:30". */
export function shown(field: NumericField, value: number): string {
  const { kind, quantity, isCount } = fieldSpec(field);
  if (kind === 'moment')
    return Number.isInteger(value) ? momentText(value).replace(/ 00:00$/, '') : momentText(value);
  if (quantity.unit === 'share') return percent(value);
  const text = isCount ? plain(value, 9) : plain(value);
  return quantity.unit === '' || quantity.unit === 'pH' ? text : `${text} ${quantity.unit}`;
}

/** A figure worked out from many, a middle or an end of a range: a count needs no decimals there. */
export const shownWorkedOut = (field: NumericField, value: number): string =>
  shown(field, fieldSpec(field).isCount && Math.abs(value) >= 10 ? Math.round(value) : value);

export const nounOf = (field: FieldName): string => fieldSpec(field).noun;
export const capitalNoun = (field: FieldName): string => {
  const text = nounOf(field);
  return text.charAt(0).toUpperCase() + text.slice(1);
};

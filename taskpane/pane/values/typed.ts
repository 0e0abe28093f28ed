import { dateOf, isoMomentText } from '../../../shared/units/dates';
import { readTypedDay } from '../../../shared/units/typedTime';
import type { NumberField } from '../../../shared/units/typedNumber';
import { readTypedNumber } from '../../../shared/units/typedNumber';
import type { NamedParam } from '../../../shared/functions/define';
import { parseArea, splitReference } from '../../../shared/sheet/formula/address';
import type { Cell, Grid } from '../../../shared/base/values';
import { isError, isGrid } from '../../../shared/base/values';
import { phraseLanguage } from '../phrases';

/** What someone typed into an argument field, and how a formula writes the same thing. */
export type TypedField =
  | { readonly kind: 'blank' }
  | { readonly kind: 'value'; readonly value: Cell | Grid; readonly formula: string }
  | { readonly kind: 'reference'; readonly reference: string };

/** A number as people type it: 10,000, 3 000, 1.25, 1,25; 80% is 0.8. Undefined where it could be two numbers. */
export function readNumber(text: string, field: NumberField = {}): number | undefined {
  const read = readTypedNumber(text.replace('−', '-'), field);
  return read.kind === 'number' ? read.value : undefined;
}

const CLOCK = /(?:^|[T ]+)(\d{1,2})(?::(\d{2})|\s?h\s?(\d{2})?)$/i;
/**
 * 2026-05-01, 2026-05-01 22:30, 25/05/2026 22h30, 1 May 2026 or 22:30 → serial. Figures that could be two days are
 * one only where the language of the pane has one order of day and month.
 */
export function readMoment(text: string): number | undefined {
  const trimmed = text.trim();
  const [behind = '', hour = '0', minute, after = '0'] = CLOCK.exec(trimmed) ?? [];
  const clock = (Number(hour) * 60 + Number(minute ?? after)) / 1440;
  if (Number(hour) > 23 || Number(minute ?? after) > 59) return undefined;
  const dayPart = trimmed.slice(0, trimmed.length - behind.length);
  if (dayPart === '') return behind === '' ? undefined : clock;
  if (!/\D/.test(dayPart)) return undefined;
  const day = readTypedDay(dayPart, phraseLanguage() === 'en' ? {} : { order: 'day first' });
  return day.kind === 'time' ? day.value + clock : undefined;
}

const momentFormula = (serial: number): string => {
  const minutes = Math.round(serial * 1440);
  const date = dateOf(serial);
  const time = minutes % 1440 === 0 ? '' : `TIME(${date.getUTCHours()},${date.getUTCMinutes()},0)`;
  const day =
    serial >= 1 ? `DATE(${date.getUTCFullYear()},${date.getUTCMonth() + 1},${date.getUTCDate()})` : '';
  return [day, time].filter(Boolean).join('+') || '0';
};

const quoted = (text: string): string => `"${text.replaceAll('"', '""')}"`;

/** A value as a formula with English names writes it. */
export function literal(value: Cell | Grid): string {
  if (isGrid(value)) return `{${value.map((row) => row.map(literal).join(',')).join(';')}}`;
  if (value === null) return '';
  if (isError(value)) return value.error;
  if (typeof value === 'boolean') return value ? 'TRUE' : 'FALSE';
  return typeof value === 'number' ? String(value) : quoted(value);
}

const wantsMoment = (param: NamedParam): boolean =>
  (param.kind === 'number' || param.kind === 'series') &&
  (param.quantity.unit === 'date' || param.quantity.unit === 'date and time');

const limitsOf = (param: NamedParam): NumberField =>
  param.kind === 'number' || param.kind === 'series'
    ? {
        unit: param.quantity.unit,
        min: param.min,
        max: param.max,
        whole: param.kind === 'number' && param.whole === true,
      }
    : {};
const isReference = (text: string): boolean => {
  const { sheet, area } = splitReference(text);
  return (sheet !== undefined || /[\d:]/.test(area)) && parseArea(area) !== undefined && !/^\d/.test(text);
};

/** Items of a typed list: one a line, or with semicolons, or with commas that cannot be decimal commas. */
const itemsOf = (text: string): string[] => {
  const commas =
    text.includes(';') || text.includes('\n')
      ? /[;\n]+/
      : /,\s+|\s{2,}/.test(text) || (text.match(/,/g)?.length ?? 0) > 1
        ? /\s*,\s*|\s{2,}/
        : /[;\n]+/;
  const items = text
    .split(commas)
    .map((item) => item.trim())
    .filter(Boolean);
  const [only] = items;
  return items.length === 1 && only !== undefined && /^[\d.,%+\-−\s]+$/.test(only)
    ? only.split(/\s+/)
    : items;
};

const readList = (text: string, param: NamedParam): TypedField => {
  const grid: Grid = itemsOf(text).map((item) => [
    param.kind === 'texts'
      ? item
      : ((wantsMoment(param) ? readMoment(item) : undefined) ?? readNumber(item, limitsOf(param)) ?? item),
  ]);
  const [first] = grid;
  if (grid.length === 1 && first?.[0] !== undefined)
    return { kind: 'value', value: first[0], formula: literal(first[0]) };
  return { kind: 'value', value: grid, formula: literal(grid) };
};

export function readTyped(text: string, param: NamedParam): TypedField {
  const trimmed = text.trim();
  if (trimmed === '') return { kind: 'blank' };
  if (isReference(trimmed)) return { kind: 'reference', reference: trimmed };
  if (param.kind === 'series' || param.kind === 'texts') return readList(trimmed, param);
  if (wantsMoment(param)) {
    const serial = readMoment(trimmed);
    if (serial !== undefined) return { kind: 'value', value: serial, formula: momentFormula(serial) };
  }
  if (/^(true|false)$/i.test(trimmed)) {
    const value = trimmed.toLowerCase() === 'true';
    return { kind: 'value', value, formula: literal(value) };
  }
  const number = param.kind === 'choice' ? undefined : readNumber(trimmed, limitsOf(param));
  return number === undefined
    ? { kind: 'value', value: trimmed, formula: quoted(trimmed) }
    : { kind: 'value', value: number, formula: literal(number) };
}

/** A value the way it would be typed, to fill a field with it. */
export function typedText(value: Cell | Grid | undefined, param: NamedParam): string {
  if (value === undefined || value === null) return '';
  if (isGrid(value))
    return value
      .flat()
      .map((cell) => typedText(cell, param))
      .join('; ');
  if (isError(value)) return value.error;
  if (typeof value === 'boolean') return value ? 'TRUE' : 'FALSE';
  return typeof value === 'number' && wantsMoment(param) ? isoMomentText(value) : String(value);
}

import type { Decimal } from './numberText';
import { isOpenToBoth, readNumber } from './numberText';
import type { NumberField } from './typedNumber';
import { decimalOf, readTypedNumber } from './typedNumber';

/** Lines and tables of typed entries. */

/** Columns stand apart by a tab, a semicolon, a comma with a space, or two spaces; a lone comma comes last. */
const SEPARATORS: readonly RegExp[] = [/\t/, /;/, /,\s+/, /\s{2,}/, /,(?!\d{3}(?!\d))|,(?=\d{3},)/];

/** "Tank 1 600", "C 900g", "North 1 000 L": a name and, behind it, a number with or without a unit. */
function nameAndNumber(line: string): readonly string[] | undefined {
  const match = /^(.*\S)\s+(\d[\d.,'’]*\s*(?:\p{L}[\p{L}³3.]*)?)$/u.exec(line);
  if (!match) return undefined;
  let [, name = '', number = ''] = match;
  // "Vat 2" is a name: a bare small number belongs to it unless the name has its own.
  if (/^\d{1,2}$/.test(number) && !/\d$/.test(name)) return undefined;
  // "000" is no number of its own: the digits before it belong to it; so does a number behind another one.
  const before = /^(.*\S)\s+(\d{1,3})$/.exec(name);
  const isThousands = /^\d{3}(?!\d)/.test(number);
  if (before && isThousands && (number.startsWith('0') || /\s\d+$/.test(before[1] ?? '')))
    [name, number] = [before[1] ?? '', `${before[2] ?? ''} ${number}`];
  return [name, number];
}

/** The columns of a typed line; `hasNumber` says that a name alone is followed by a number. */
export function columnsOf(line: string, hasNumber = false): readonly string[] {
  const separator = SEPARATORS.find((mark) => mark.test(line));
  if (separator) return line.split(separator).map((part) => part.trim());
  return (hasNumber ? nameAndNumber(line) : undefined) ?? [line.trim()];
}

/** Entries of a typed list: a line each, or with semicolons, or with commas that no number has. */
export const entriesOf = (text: string): readonly string[] =>
  text
    .split(/[\n;]+|,\s+|,(?!\d)/)
    .map((entry) => entry.trim())
    .filter(Boolean);

/** A number that could be two, written so that it is the one its column means. */
const settled = (text: string, decimal: Decimal): string => {
  const { value, unit } = readNumber(text, decimal);
  return Number.isNaN(value) ? text : `${value} ${unit}`.trim();
};

/** Whether a field without other knowledge takes a number. */
const isTaken = (text: string, field: NumberField | undefined): boolean => {
  if (!field) return true;
  const read = readTypedNumber(text, field);
  const { min = -Infinity, max = Infinity } = field;
  return read.kind === 'number' && read.value >= min && read.value <= max;
};

/**
 * Numbers of a table that could be two things, each written as the rest of its column has it; where its column
 * is silent, as all columns together. Where that is a number its field cannot take, and other entries, stay as
 * they are. In: rows, names of the number columns, limits of their fields where there are any.
 */
export function settleTable<Row extends Readonly<Record<string, unknown>>>(
  rows: readonly Row[],
  keys: readonly string[],
  limits: Readonly<Record<string, NumberField>> = {},
): readonly Row[] {
  const texts = (key: string): string[] =>
    rows.map((row) => row[key]).filter((value) => typeof value === 'string');
  const whole = decimalOf(keys.flatMap(texts));
  const marks = new Map(keys.map((key) => [key, decimalOf(texts(key)) ?? whole]));
  const change = (row: Row): Row => {
    const changed = keys.flatMap((key) => {
      const [value, mark] = [row[key], marks.get(key)];
      // Three noughts behind a mark are thousands whatever the column says.
      if (typeof value !== 'string' || !mark || !isOpenToBoth(value) || /[.,]000(?!\d)/.test(value))
        return [];
      const own = settled(value, mark);
      return isTaken(own, limits[key]) ? [[key, own]] : [];
    });
    return changed.length === 0 ? row : { ...row, ...(Object.fromEntries(changed) as Partial<Row>) };
  };
  return rows.map(change);
}

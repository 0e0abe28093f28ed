import type { Cell, CellError } from '../base/values';
import { isError, refuse, outside } from '../base/values';
import { isoDateOfSerial } from '../units/dates';
import type { NamedParam } from './define';
import type { ChoiceParam, NumberLimits } from './params';

/**
 * Every sentence a user can get from an argument check. Form: what was given, what is allowed, what to do.
 */

const plain = (x: number): string => {
  const rounded = Math.abs(x) >= 1e15 ? x.toExponential(3) : String(Number(x.toPrecision(10)));
  return rounded.replace('-', '−');
};

export const shown = (got: Cell): string => {
  if (got === null) return 'a blank cell';
  if (isError(got)) return `the error ${got.error}`;
  if (typeof got === 'number') return plain(got);
  if (typeof got === 'boolean') return got ? 'TRUE' : 'FALSE';
  return `the text "${got.length > 40 ? `${got.slice(0, 40)}…` : got}"`;
};

/** A day is no number to whoever types it, though a cell keeps it as one. */
const isDay = (unit: string): boolean => unit === 'date' || unit === 'date and time';

export const allowed = (limits: NumberLimits, unit: string): string => {
  if (isDay(unit)) return allowedDay(limits, unit);
  const tail = unit ? ` ${unit}` : '';
  const kind = limits.whole ? 'a whole number' : 'a number';
  const { min, max, above } = limits;
  if (above !== undefined && max !== undefined)
    return `${kind} above ${plain(above)} and up to ${plain(max)}${tail}`;
  if (above !== undefined) return `${kind} above ${plain(above)}${tail}`;
  if (min !== undefined && max !== undefined) return `${kind} from ${plain(min)} to ${plain(max)}${tail}`;
  if (min !== undefined) return `${kind} of ${plain(min)}${tail} or more`;
  if (max !== undefined) return `${kind} up to ${plain(max)}${tail}`;
  return `${kind}${unit ? ` in ${unit}` : ''}`;
};

const allowedDay = ({ min, max }: NumberLimits, unit: string): string =>
  min === undefined || max === undefined
    ? `a ${unit}`
    : `a ${unit} from ${isoDateOfSerial(min)} to ${isoDateOfSerial(max)}`;

/** Where in the arguments: "weights, row 3" for an item of a list. */
export const place = (name: string, row?: number): string =>
  row === undefined ? name : `${name}, row ${row}`;

const sentence = (...parts: (string | undefined)[]): string => parts.filter(Boolean).join(' ');

const textSlip = (got: string): string | undefined => {
  const trimmed = got.trim();
  if (/^[+-]?\d+,\d+$/.test(trimmed)) return 'It is a number with a decimal comma stored as text: retype it.';
  if (/^[+-]?[\d\s.,]+$/.test(trimmed)) return 'It is a number stored as text: retype it, or use VALUE().';
  if (/^\d{1,4}[-/.]\d{1,2}[-/.]\d{1,4}/.test(trimmed))
    return 'It is a date stored as text: retype it as a date, or use DATEVALUE().';
  if (/^[+-]?[\d.,]+\s*[a-zµ°%/]+/i.test(trimmed))
    return 'Leave the unit out of the cell, or write one of this kind.';
  return undefined;
};

export const wrongType = (at: string, limits: NumberLimits, unit: string, got: Cell): CellError =>
  isError(got)
    ? refuse(`${at}: the cell holds ${shown(got)}. Mend that cell first.`)
    : refuse(
        sentence(
          `${at}: expected ${allowed(limits, unit)}, got ${shown(got)}.`,
          typeof got === 'string' ? textSlip(got) : undefined,
        ),
      );

export const outOfBounds = (
  at: string,
  limits: NumberLimits,
  unit: string,
  got: number,
  slip?: string,
): CellError =>
  refuse(
    sentence(
      `${at}: expected ${allowed(limits, unit)}, got ${shown(got)}.`,
      slip,
      got === 0 && limits.above === 0 ? 'A blank cell can read as 0.' : undefined,
    ),
  );

export const beyondPublished = (at: string, limits: NumberLimits, unit: string, got: number): CellError => {
  const published = limits.published;
  const range = published ? allowed({ doc: '', ...published }, unit).replace(/^a number /, '') : '';
  return outside(
    `${at}: ${shown(got)}${unit ? ` ${unit}` : ''} is outside what was published (${range}). ${published?.because ?? ''}`.trim(),
  );
};

/** "a number from 0 to 50 °C" */
export function expects(param: NamedParam): string {
  switch (param.kind) {
    case 'number':
      return allowed(param, param.quantity.unit);
    case 'series':
      return `a range; each ${allowed(param, param.quantity.unit)}`;
    case 'choice':
      return `one of ${param.choices.map((word) => `"${word}"`).join(', ')}`;
    case 'flag':
      return 'TRUE or FALSE';
    case 'texts':
      return 'a range of texts';
  }
}

export const missing = (param: NamedParam): CellError =>
  refuse(`${param.name} is missing. Give ${expects(param)}.`);

export const notAChoice = (at: string, param: ChoiceParam, got: Cell): CellError =>
  isError(got)
    ? refuse(`${at}: the cell holds ${shown(got)}. Mend that cell first.`)
    : refuse(`${at}: expected one of ${param.choices.map((c) => `"${c}"`).join(', ')}, got ${shown(got)}.`);

export const notAFlag = (at: string, got: Cell): CellError =>
  refuse(`${at}: expected TRUE or FALSE, got ${shown(got)}.`);

export const oneCellOnly = (name: string, rows: number, columns: number): CellError =>
  refuse(
    `${name}: expected a single cell, got a range of ${rows} × ${columns}. This function reads its lists from the other arguments.`,
  );

export const oneColumnOnly = (name: string): CellError =>
  refuse(
    `${name}: expected a single cell or one column, because each row of the answer is several cells wide.`,
  );

export const sizesDiffer = (name: string, got: string, other: string, expected: string): CellError =>
  outside(`${name} has ${got} but ${other} has ${expected}. Give ranges of the same size, or single cells.`);

export const tooFew = (name: string, atLeast: number, got: number): CellError =>
  outside(
    `${name}: needs at least ${atLeast} ${atLeast === 1 ? 'value' : 'values'}, got ${got === 0 ? 'only blank cells' : got}.`,
  );

export const pairDiffers = (name: string, got: number, other: string, expected: number): CellError =>
  refuse(`${name} has ${got} cells but ${other} has ${expected}. Each row needs both.`);

export const blankInPair = (name: string, row: number, other: string): CellError =>
  refuse(`${name}, row ${row}: the cell is blank while ${other} has a value. Fill it or clear the row.`);

export const tooMany = (name: string, most: number, got: number): CellError =>
  refuse(`${name}: takes ${most} ${most === 1 ? 'argument' : 'arguments'}, got ${got}.`);

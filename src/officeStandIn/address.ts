import {
  columnLetters,
  parseArea as parseCorners,
  parseAddress,
  splitReference,
} from '../../shared/sheet/formula/address';
import type { StandInArea } from './book';
import { MAX_COLUMNS, MAX_ROWS } from './book';

/** A1 text ⇄ the areas of the object model: a corner and a size. */

export const columnName = columnLetters;

export const fits = ({ row, column, rows, columns }: StandInArea): boolean =>
  row >= 0 &&
  column >= 0 &&
  rows > 0 &&
  columns > 0 &&
  row + rows <= MAX_ROWS &&
  column + columns <= MAX_COLUMNS;

/** Without the sheet part; undefined when it is no address (it may be a name). */
export function parseArea(text: string): StandInArea | undefined {
  const found = parseCorners(text);
  const area = found && {
    row: found.top,
    column: found.left,
    rows: found.bottom - found.top + 1,
    columns: found.right - found.left + 1,
  };
  return area && fits(area) ? area : undefined;
}

export const isWholeRows = (area: StandInArea): boolean => area.columns === MAX_COLUMNS;
export const isWholeColumns = (area: StandInArea): boolean => area.rows === MAX_ROWS;
export const WHOLE_SHEET: StandInArea = { row: 0, column: 0, rows: MAX_ROWS, columns: MAX_COLUMNS };

export function formatArea(area: StandInArea): string {
  if (isWholeColumns(area) && !isWholeRows(area))
    return `${columnName(area.column)}:${columnName(area.column + area.columns - 1)}`;
  if (isWholeRows(area)) return `${area.row + 1}:${area.row + area.rows}`;
  const first = `${columnName(area.column)}${area.row + 1}`;
  return area.rows === 1 && area.columns === 1
    ? first
    : `${first}:${columnName(area.column + area.columns - 1)}${area.row + area.rows}`;
}

/** Splits 'My sheet'!A1 into its sheet (undefined when none) and the rest. */
export function splitSheet(reference: string): { readonly sheet: string | undefined; readonly rest: string } {
  const { sheet, area } = splitReference(reference.replace(/^=/, ''));
  return { sheet, rest: area };
}

/** Plain words stay bare; anything else, or what looks like an address, is quoted. */
export const quoteSheet = (name: string): string =>
  /^[A-Za-z_\p{L}][\w.\p{L}]*$/u.test(name) && !parseAddress(name) && !/^r\d*c\d*$/i.test(name)
    ? name
    : `'${name.replaceAll("'", "''")}'`;

const absolute = (text: string): string => text.replace(/[A-Z]+|\d+/g, (part) => `$${part}`);
export const formatReference = (sheet: string, area: StandInArea, isAbsolute = false): string =>
  `${quoteSheet(sheet)}!${isAbsolute ? absolute(formatArea(area)) : formatArea(area)}`;

export const overlaps = (a: StandInArea, b: StandInArea): boolean =>
  a.row < b.row + b.rows &&
  b.row < a.row + a.rows &&
  a.column < b.column + b.columns &&
  b.column < a.column + a.columns;
export const contains = (outer: StandInArea, inner: StandInArea): boolean =>
  inner.row >= outer.row &&
  inner.column >= outer.column &&
  inner.row + inner.rows <= outer.row + outer.rows &&
  inner.column + inner.columns <= outer.column + outer.columns;

import type { Area } from './book';
import { MAX_COLUMNS, MAX_ROWS } from './book';

/** A1 text ⇄ zero-based areas. */

export const columnName = (column: number): string => {
  let name = '';
  for (let rest = column + 1; rest > 0; rest = Math.floor((rest - 1) / 26)) name = String.fromCharCode(65 + ((rest - 1) % 26)) + name;
  return name;
};
const columnNumber = (letters: string): number => [...letters.toUpperCase()].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0) - 1;

const PATTERNS = {
  cell: /^\$?([A-Z]{1,3})\$?([1-9]\d{0,6})$/i,
  cells: /^\$?([A-Z]{1,3})\$?([1-9]\d{0,6}):\$?([A-Z]{1,3})\$?([1-9]\d{0,6})$/i,
  columns: /^\$?([A-Z]{1,3}):\$?([A-Z]{1,3})$/i,
  rows: /^\$?([1-9]\d{0,6}):\$?([1-9]\d{0,6})$/,
};

const between = (row1: number, column1: number, row2: number, column2: number): Area | undefined => {
  const row = Math.min(row1, row2);
  const column = Math.min(column1, column2);
  const area = { row, column, rows: Math.abs(row2 - row1) + 1, columns: Math.abs(column2 - column1) + 1 };
  return fits(area) ? area : undefined;
};

export const fits = ({ row, column, rows, columns }: Area): boolean =>
  row >= 0 && column >= 0 && rows > 0 && columns > 0 && row + rows <= MAX_ROWS && column + columns <= MAX_COLUMNS;

/** Row and column of both corners from what a pattern caught. */
type Corners = (part: (i: number) => string) => readonly [number, number, number, number];
const FORMS: readonly (readonly [RegExp, Corners])[] = [
  [PATTERNS.cell, (p) => [Number(p(2)) - 1, columnNumber(p(1)), Number(p(2)) - 1, columnNumber(p(1))]],
  [PATTERNS.cells, (p) => [Number(p(2)) - 1, columnNumber(p(1)), Number(p(4)) - 1, columnNumber(p(3))]],
  [PATTERNS.columns, (p) => [0, columnNumber(p(1)), MAX_ROWS - 1, columnNumber(p(2))]],
  [PATTERNS.rows, (p) => [Number(p(1)) - 1, 0, Number(p(2)) - 1, MAX_COLUMNS - 1]],
];

/** Without the sheet part; undefined when it is no address (it may be a name). */
export function parseArea(text: string): Area | undefined {
  for (const [pattern, corners] of FORMS) {
    const match = pattern.exec(text);
    if (match) return between(...corners((i) => match[i] ?? ''));
  }
  return undefined;
}

export const isWholeRows = (area: Area): boolean => area.columns === MAX_COLUMNS;
export const isWholeColumns = (area: Area): boolean => area.rows === MAX_ROWS;
export const WHOLE_SHEET: Area = { row: 0, column: 0, rows: MAX_ROWS, columns: MAX_COLUMNS };

export function formatArea(area: Area): string {
  if (isWholeColumns(area) && !isWholeRows(area)) return `${columnName(area.column)}:${columnName(area.column + area.columns - 1)}`;
  if (isWholeRows(area)) return `${area.row + 1}:${area.row + area.rows}`;
  const first = `${columnName(area.column)}${area.row + 1}`;
  return area.rows === 1 && area.columns === 1 ? first : `${first}:${columnName(area.column + area.columns - 1)}${area.row + area.rows}`;
}

/** Splits 'My sheet'!A1 into its sheet (undefined when none) and the rest. */
export function splitSheet(reference: string): { readonly sheet: string | undefined; readonly rest: string } {
  const text = reference.startsWith('=') ? reference.slice(1) : reference;
  const quoted = /^'((?:[^']|'')+)'!(.+)$/.exec(text);
  if (quoted?.[1] && quoted[2]) return { sheet: quoted[1].replaceAll("''", "'"), rest: quoted[2] };
  const at = text.lastIndexOf('!');
  return at < 0 ? { sheet: undefined, rest: text } : { sheet: text.slice(0, at), rest: text.slice(at + 1) };
}

/** Plain words stay bare; anything else, or what looks like an address, is quoted. */
export const quoteSheet = (name: string): string =>
  /^[A-Za-z_\p{L}][\w.\p{L}]*$/u.test(name) && !parseArea(name) && !/^r\d*c\d*$/i.test(name) ? name : `'${name.replaceAll("'", "''")}'`;

const absolute = (text: string): string => text.replace(/[A-Z]+|\d+/g, (part) => `$${part}`);
export const formatReference = (sheet: string, area: Area, isAbsolute = false): string =>
  `${quoteSheet(sheet)}!${isAbsolute ? absolute(formatArea(area)) : formatArea(area)}`;

export const overlaps = (a: Area, b: Area): boolean =>
  a.row < b.row + b.rows && b.row < a.row + a.rows && a.column < b.column + b.columns && b.column < a.column + a.columns;
export const contains = (outer: Area, inner: Area): boolean =>
  inner.row >= outer.row && inner.column >= outer.column && inner.row + inner.rows <= outer.row + outer.rows && inner.column + inner.columns <= outer.column + outer.columns;

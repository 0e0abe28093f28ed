/** A1 addresses ⇄ zero-based rows and columns. */

export const MAX_ROWS = 1_048_576;
export const MAX_COLUMNS = 16_384;

export interface CellPlace {
  readonly row: number;
  readonly column: number;
}
export interface Area {
  readonly top: number;
  readonly left: number;
  readonly bottom: number;
  readonly right: number;
}

export function columnLetters(column: number): string {
  let letters = '';
  for (let n = column + 1; n > 0; n = Math.floor((n - 1) / 26))
    letters = String.fromCharCode(65 + ((n - 1) % 26)) + letters;
  return letters;
}

export const columnNumber = (letters: string): number =>
  [...letters.toUpperCase()].reduce((n, letter) => n * 26 + letter.charCodeAt(0) - 64, 0) - 1;

export const addressOf = (row: number, column: number): string => `${columnLetters(column)}${row + 1}`;

export function parseAddress(address: string): CellPlace | undefined {
  const match = /^\$?([A-Za-z]{1,3})\$?([1-9]\d{0,6})$/.exec(address);
  if (!match?.[1] || !match[2]) return undefined;
  const place = { row: Number(match[2]) - 1, column: columnNumber(match[1]) };
  return place.row < MAX_ROWS && place.column < MAX_COLUMNS ? place : undefined;
}

/** A1, A1:B2, A:C or 2:5, with or without $; corners in any order. */
export function parseArea(text: string): Area | undefined {
  const [from = '', to] = text.replaceAll('$', '').split(':');
  if (to !== undefined && /^[A-Za-z]{1,3}$/.test(from) && /^[A-Za-z]{1,3}$/.test(to))
    return ordered({ row: 0, column: columnNumber(from) }, { row: MAX_ROWS - 1, column: columnNumber(to) });
  if (to !== undefined && /^\d+$/.test(from) && /^\d+$/.test(to))
    return ordered({ row: Number(from) - 1, column: 0 }, { row: Number(to) - 1, column: MAX_COLUMNS - 1 });
  const first = parseAddress(from);
  const last = to === undefined ? first : parseAddress(to);
  return first && last ? ordered(first, last) : undefined;
}

const ordered = (a: CellPlace, b: CellPlace): Area => ({
  top: Math.min(a.row, b.row),
  bottom: Math.max(a.row, b.row),
  left: Math.min(a.column, b.column),
  right: Math.max(a.column, b.column),
});

export const areaText = (area: Area): string =>
  area.top === area.bottom && area.left === area.right
    ? addressOf(area.top, area.left)
    : `${addressOf(area.top, area.left)}:${addressOf(area.bottom, area.right)}`;

/** B2:C3 as $B$2:$C$3, which stays where it is when a formula is copied. */
export const absoluteArea = (area: string): string => area.replace(/([A-Z]+)(\d+)/g, '$$$1$$$2');

/** Splits 'My sheet'!B2:C3 into sheet and area text; no sheet when none is written. */
export function splitReference(reference: string): {
  readonly sheet: string | undefined;
  readonly area: string;
} {
  const match = /^(?:'((?:[^']|'')+)'|([^'!]+))!(.+)$/.exec(reference);
  if (!match) return { sheet: undefined, area: reference };
  return { sheet: match[1] === undefined ? match[2] : match[1].replaceAll("''", "'"), area: match[3] ?? '' };
}

export const quoteSheet = (name: string): string =>
  /^[A-Za-z_][A-Za-z0-9_]*$/.test(name) && !parseAddress(name) ? name : `'${name.replaceAll("'", "''")}'`;

/** Whether two areas share a cell. */
export const overlaps = (a: Area, b: Area): boolean =>
  a.top <= b.bottom && b.top <= a.bottom && a.left <= b.right && b.left <= a.right;

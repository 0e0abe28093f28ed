/** A1 text ⇄ zero-based places. */

export const columnName = (column: number): string => {
  let name = '';
  for (let n = column + 1; n > 0; n = Math.floor((n - 1) / 26)) name = String.fromCharCode(65 + ((n - 1) % 26)) + name;
  return name;
};

export const columnNumber = (name: string): number => [...name.toUpperCase()].reduce((n, letter) => n * 26 + letter.charCodeAt(0) - 64, 0) - 1;

/** 0, 0 → A1. */
export const toA1 = (row: number, column: number): string => `${columnName(column)}${row + 1}`;

export interface Place { readonly row: number; readonly column: number }

/** A1 or $A$1 → place. */
export function fromA1(address: string): Place | undefined {
  const [, column, row] = /^\$?([A-Za-z]{1,3})\$?(\d{1,7})$/.exec(address.trim()) ?? [];
  return column && row ? { row: Number(row) - 1, column: columnNumber(column) } : undefined;
}

export interface Rect extends Place { readonly rows: number; readonly columns: number }

/** A1:B2 (or one cell) → rectangle. */
export function rectOf(address: string): Rect | undefined {
  const [first = '', second = first] = address.split(':');
  const a = fromA1(first);
  const b = fromA1(second);
  if (!a || !b) return undefined;
  const row = Math.min(a.row, b.row);
  const column = Math.min(a.column, b.column);
  return { row, column, rows: Math.abs(a.row - b.row) + 1, columns: Math.abs(a.column - b.column) + 1 };
}

export const rectName = ({ row, column, rows, columns }: Rect): string =>
  rows === 1 && columns === 1 ? toA1(row, column) : `${toA1(row, column)}:${toA1(row + rows - 1, column + columns - 1)}`;

const PLAIN = /^[A-Za-z_][A-Za-z0-9_.]*$/;
/** Sheet name as a formula writes it. */
export const quoteSheet = (name: string): string => (PLAIN.test(name) && !fromA1(name) ? name : `'${name.replaceAll("'", "''")}'`);

export interface SheetRect { readonly sheet: string | undefined; readonly rect: Rect }
/** 'Sheet name'!$A$1:B2 → sheet and rectangle. */
export function parseReference(text: string): SheetRect | undefined {
  const trimmed = text.trim().replace(/^=/, '');
  const at = trimmed.lastIndexOf('!');
  const rect = rectOf(trimmed.slice(at + 1));
  if (!rect) return undefined;
  const sheet = at < 0 ? undefined : trimmed.slice(0, at).replace(/^'([\s\S]*)'$/, '$1').replaceAll("''", "'");
  return { sheet, rect };
}

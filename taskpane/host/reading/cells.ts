import {
  addressOf,
  areaText,
  parseArea,
  quoteSheet,
  splitReference,
} from '../../../shared/sheet/formula/address';
import type { Area } from '../../../shared/sheet/formula/address';
import type { Cell, CellError, ErrorCode, Grid } from '../../../shared/base/values';

/** Cells as Excel hands them over ⇄ cells as the engine knows them. */

const CODES: ReadonlySet<string> = new Set<ErrorCode>([
  '#VALUE!',
  '#N/A',
  '#NUM!',
  '#DIV/0!',
  '#REF!',
  '#NAME?',
  '#NULL!',
  '#SPILL!',
  '#CALC!',
  '#BUSY!',
]);
const isCode = (text: string): text is ErrorCode => CODES.has(text);

/** An empty cell reads as '', an error as its code. */
export const cellFrom = (value: unknown): Cell => {
  if (value === '' || value === null || value === undefined) return null;
  if (typeof value === 'number' || typeof value === 'boolean') return value;
  const text = String(value);
  const error: CellError | undefined = isCode(text) ? { error: text } : undefined;
  return error ?? text;
};

export const gridFrom = (values: readonly (readonly unknown[])[]): Grid =>
  values.map((row) => row.map(cellFrom));

/** Words Excel would turn into something else when they are written: numbers, dates, truths, formulas. */
const needsMark = (text: string): boolean =>
  /^[=+\-@']/.test(text) || /\d/.test(text) || /^(true|false)$/i.test(text.trim()) || isCode(text.trim());

/** Text that stays text: Excel reads a leading apostrophe as "this is text" and does not show it. */
export const asWritten = (value: Exclude<Cell, null>): string | number | boolean => {
  if (typeof value === 'string') return needsMark(value) ? `'${value}` : value;
  return typeof value === 'object' ? value.error : value;
};

/** Excel's 'My sheet'!$A$1:$B$2 in parts. */
export const partsOf = (address: string): { readonly sheet: string; readonly area: string } => {
  const { sheet = '', area } = splitReference(address);
  return { sheet, area: area.replaceAll('$', '') };
};

export const referenceTo = (sheet: string, area: string): string => `${quoteSheet(sheet)}!${area}`;

/** A cell of this number format takes everything as text, formulas too. */
export const TEXT_FORMAT = '@';

/**
 * Fewest rectangles, in a simple way, that cover exactly these cells: runs along rows, then equal runs
 * stacked.
 */
export function rectangles(cells: Iterable<string>): readonly Area[] {
  const rows = new Map<number, number[]>();
  for (const address of cells) {
    const area = parseArea(address);
    if (area) rows.set(area.top, [...(rows.get(area.top) ?? []), area.left]);
  }
  const done: Area[] = [];
  let open = new Map<string, Area>();
  for (const [row, columns] of [...rows].sort(([a], [b]) => a - b)) {
    const next = new Map<string, Area>();
    for (const [left, right] of runs(columns)) {
      const above = open.get(`${left}:${right}`);
      next.set(
        `${left}:${right}`,
        above?.bottom === row - 1 ? { ...above, bottom: row } : { top: row, bottom: row, left, right },
      );
    }
    for (const [key, area] of open) if (next.get(key)?.top !== area.top) done.push(area);
    open = next;
  }
  return [...done, ...open.values()];
}

function runs(columns: readonly number[]): [number, number][] {
  const result: [number, number][] = [];
  for (const column of [...columns].sort((a, b) => a - b)) {
    const last = result.at(-1);
    if (last?.[1] === column - 1) last[1] = column;
    else result.push([column, column]);
  }
  return result;
}

export { addressOf, areaText, parseArea };

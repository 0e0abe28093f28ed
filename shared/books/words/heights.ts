import { parseAddress, parseArea } from '../../sheet/formula/address';
import type { CellModel, SheetModel } from '../../sheet/workbook/model';

/** Longer words take more room: rows of a translated sheet that must be higher, columns that must be wider. */

const USUAL_WIDTH = 9;
const POINTS_PER_LINE = 13.5;
/** Letters of a size above that of a table. */
const LARGE: ReadonlySet<CellModel['style']> = new Set(['title', 'subtitle', 'big']);

const widthOf = ({ widths }: SheetModel, from: number, to: number): number => {
  let sum = 0;
  for (let column = from; column <= to; column++) sum += widths[column] ?? USUAL_WIDTH;
  return sum;
};
/** Lines of a text in a column of so many letters; words are not cut. */
export function linesOf(text: string, letters: number): number {
  let [lines, used] = [1, 0];
  for (const word of text.split(' ')) {
    if (used > 0 && used + 1 + word.length > letters) [lines, used] = [lines + 1, 0];
    used += (used > 0 ? 1 : 0) + word.length;
  }
  return lines;
}

/** The height a cell asks for in its new words; undefined where the one before does. */
function neededBy(
  { was, is, height }: { readonly was: unknown; readonly is: CellModel; readonly height: number | undefined },
  width: number,
): number | undefined {
  const { value, style } = is;
  // Rows of the usual height do not wrap.
  if (height === undefined || LARGE.has(style)) return undefined;
  if (typeof value !== 'string' || typeof was !== 'string' || value === was) return undefined;
  const lines = linesOf(value, width);
  return lines > linesOf(was, width) ? Math.max(height, lines * POINTS_PER_LINE + 3) : undefined;
}

/** undefined where every row does. */
export function grownHeights(before: SheetModel, after: SheetModel): SheetModel['heights'] | undefined {
  const ends = new Map<string, number>();
  for (const range of after.merges ?? []) {
    const area = parseArea(range);
    if (area) ends.set(`${area.top}:${area.left}`, area.right);
  }
  const grown: Record<number, number> = {};
  for (const [address, is] of Object.entries(after.cells)) {
    const place = parseAddress(address);
    if (!place) continue;
    const row = place.row + 1;
    const width = widthOf(after, place.column, ends.get(`${place.row}:${place.column}`) ?? place.column);
    const height = grown[row] ?? before.heights?.[row];
    const needed = neededBy({ was: before.cells[address]?.value, is, height }, width);
    if (needed !== undefined) grown[row] = needed;
  }
  return Object.keys(grown).length > 0 ? { ...before.heights, ...grown } : undefined;
}

/** Letters that a part of a number format takes at most: "sam.", "févr.", two digits. */
const ROOM: readonly (readonly [RegExp, string])[] = [
  [/ddd/g, '____'],
  [/mmm/g, '_____'],
  [/(?<!d)d(?!d)/g, '__'],
];
/** Beside the letters. */
const MARGIN = 1.5;
const roomFor = (format: string): number => {
  const shown = format
    .split(';')
    .map((part) => part.replace(/\[[^\]]*\]|"/g, ''))
    .filter((part) => /mmm|ddd/.test(part))
    .map((part) => ROOM.reduce((text, [from, to]) => text.replace(from, to), part).length);
  return shown.length === 0 ? 0 : Math.max(...shown) + MARGIN;
};

/** Columns wide enough for days with the names of months in them; a day that has no room shows as ####. */
export function grownWidths({ widths, cells, merges = [] }: SheetModel): SheetModel['widths'] {
  const merged = new Set(merges.map((range) => range.split(':')[0]));
  const grown = [...widths];
  const known = new Map<string, number>();
  for (const [address, { format }] of Object.entries(cells)) {
    if (format === undefined || merged.has(address)) continue;
    const column = parseAddress(address)?.column;
    let room = known.get(format);
    if (room === undefined) known.set(format, (room = roomFor(format)));
    if (column !== undefined && (grown[column] ?? Infinity) < room) grown[column] = room;
  }
  return grown;
}

import { unitOfText } from '../columns/cells/units';
import type { SheetCells } from '../read/sheetCells';
import { valueAt } from '../read/sheetCells';
import type { Kinds } from './kinds';
import { KIND } from './kinds';

export const textAt = (sheet: SheetCells, position: number, column: number): string => {
  const cell = valueAt(sheet, position, column);
  return typeof cell === 'string'
    ? cell.replace(/\s+/g, ' ').trim()
    : typeof cell === 'number'
      ? String(cell)
      : '';
};

/** Filled cells that stand side by side in a row. */
export function runsOf(kinds: Kinds, position: number): number[][] {
  const runs: number[][] = [];
  let current: number[] = [];
  const width = kinds.sheet.columns.length;
  for (let column = 0; column <= width; column++) {
    if (column < width && kinds.at(position, column) !== KIND.blank) current.push(column);
    else if (current.length > 0) {
      runs.push(current);
      current = [];
    }
  }
  return runs;
}

export const isNext = ({ rows }: SheetCells, position: number): boolean =>
  (rows[position + 1] ?? -9) - (rows[position] ?? 0) === 1;

/** Numbers such as 1, 2, 3 or days over the columns of a matrix are headings too. */
export function isHeadingLike(kinds: Kinds, position: number, column: number): boolean {
  const kind = kinds.at(position, column);
  const text = textAt(kinds.sheet, position, column);
  if (kind === KIND.word) return !/^[~≈]?\d\d/.test(text);
  // "No" is nothing in a cell and a number over a column.
  if (kind === KIND.nothing) return /^(?:n|no|na|nd|so)\.?$|^[#°]$/i.test(text);
  return kind === KIND.number && /\p{L}/u.test(text) && !/^[~≈]?\d/.test(text);
}

/**
 * Words under the first and the blank cells right of a heading, and nothing else in the line: the second line of
 * headings that have others merged down beside them.
 */
export function isSecondLine(kinds: Kinds, position: number, columns: readonly number[]): boolean {
  if (position >= kinds.sheet.rows.length || !isNext(kinds.sheet, position - 1)) return false;
  const [from, to] = [columns[0] ?? 0, columns.at(-1) ?? 0];
  const near = runsOf(kinds, position).filter(
    (run) => (run.at(-1) ?? 0) >= from - 1 && (run[0] ?? 0) <= to + 1,
  );
  return (
    near.length > 0 &&
    near.every(
      ([first = 0, ...rest]) =>
        rest.length > 0 &&
        [first, ...rest].every((column) => isHeadingLike(kinds, position, column)) &&
        kinds.at(position - 1, first) === KIND.word &&
        rest.every(
          (column) => kinds.at(position - 1, column) !== KIND.word || isHeadedPair(kinds, position, column),
        ),
    ) &&
    near.some((run) => kinds.at(position - 1, run[1] ?? 0) === KIND.blank)
  );
}
/** A group may begin right beside another. */
const isHeadedPair = (kinds: Kinds, position: number, column: number): boolean =>
  kinds.at(position, column + 1) === KIND.word && kinds.at(position - 1, column + 1) === KIND.blank;

export const isUnits = (kinds: Kinds, position: number, columns: readonly number[]): boolean => {
  const texts = columns.map((column) => textAt(kinds.sheet, position, column)).filter(Boolean);
  const units = texts.filter((text) => unitOfText(text.replace(/[()[\]]/g, '')) !== undefined);
  return texts.length > 0 && units.length >= 0.6 * texts.length;
};

const NUMBER_OF_COLUMN = /^([([]?)(\d{1,2})[)\].]?$/;
const LEAST_NUMBERED = 4;
const [LONGEST_NUMBER, MOST_NUMBERED] = [6, 99];
/** Columns numbered under their headings: (1), (2), (3); without brackets four from 1 on. Blanks are passed over. */
export function isNumbering(kinds: Kinds, position: number, columns: readonly number[]): boolean {
  let [found, first, isBare] = [0, 0, false];
  for (const column of columns) {
    if (kinds.at(position, column) === KIND.blank) continue;
    const cell = valueAt(kinds.sheet, position, column);
    if (typeof cell === 'string' ? cell.length > LONGEST_NUMBER : Number(cell) > MOST_NUMBERED) return false;
    const [, bracket, digits] = NUMBER_OF_COLUMN.exec(textAt(kinds.sheet, position, column)) ?? [];
    // Nearly every line of a long book ends here.
    if (digits === undefined || (found > 0 && Number(digits) !== first + found)) return false;
    if (found === 0) first = Number(digits);
    if (bracket === '') isBare = true;
    found++;
  }
  return found >= 2 && (!isBare || (first === 1 && found >= LEAST_NUMBERED));
}
/** The last line of the headings: units and numbers of the columns may stand below the words. */
export function lastOfHeadings(kinds: Kinds, position: number, run: readonly number[]) {
  const { sheet } = kinds;
  let [last, units]: [number, number | undefined] = [position, undefined];
  for (; (sheet.rows[last + 1] ?? Infinity) - (sheet.rows[last] ?? 0) <= 2; last++) {
    if (
      units === undefined &&
      isNext(sheet, last) &&
      isUnits(kinds, last + 1, run) &&
      !hasFigures(kinds, last + 1, run)
    )
      units = last + 1;
    else if (!isNumbering(kinds, last + 1, run)) break;
  }
  return { last, units };
}

const hasFigures = (kinds: Kinds, position: number, columns: readonly number[]): boolean =>
  columns.some((column) => kinds.isData(position, column));

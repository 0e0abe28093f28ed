import type { SheetCells } from '../read/sheetCells';
import type { Header } from './headers';
import { headersAt } from './headers';
import { isNext, runsOf, textAt } from './headingLines';
import { isKnownLabel } from './forms';
import { decimalIn, readNumber } from '../columns/cells/numbers';
import { valueAt } from '../read/sheetCells';
import type { Kinds } from './kinds';
import { KIND, kindsOf } from './kinds';
import { kindOfRow } from './rows';

/** Where a table stands on its sheet; positions are kept rows. */
export interface LaidColumn {
  readonly column: number;
  readonly header: string;
  readonly parent: string;
}
export interface LaidTable {
  readonly sheet: SheetCells;
  /** Last row of the header. */
  readonly header: number;
  readonly firstHeader: number;
  readonly columns: readonly LaidColumn[];
  readonly body: readonly number[];
  readonly skipped: readonly SkippedArea[];
  /** Texts that stand above it: its title and the headings of its part of the sheet. */
  readonly titles: readonly string[];
}
export interface SkippedArea {
  readonly position: number;
  readonly why: 'total' | 'note' | 'header again' | 'units' | 'opening';
}

/** The first column that mostly holds dates. */
function datedColumn(kinds: Kinds, header: Header, to: number): number | undefined {
  return header.columns.find((column) => {
    let [filled, dates] = [0, 0];
    for (let p = header.last + 1; p < Math.min(to, header.last + 60); p++) {
      const kind = kinds.at(p, column);
      if (kind === KIND.blank) continue;
      filled++;
      if (kind === KIND.date) dates++;
    }
    return filled >= 2 && dates >= 0.6 * filled;
  });
}

function laid(kinds: Kinds, header: Header, to: number): LaidTable | undefined {
  const { sheet } = kinds;
  const body: number[] = [];
  const skipped: SkippedArea[] = [];
  const dated = datedColumn(kinds, header, to);
  for (let position = header.last + 1; position < to; position++) {
    const kind = kindOfRow(kinds, position, header, dated);
    if (kind === 'record') body.push(position);
    else if (kind !== 'blank') skipped.push({ position, why: kind });
  }
  if (isFoot(kinds, header, body, dated)) skipped.push({ position: body.pop() ?? 0, why: 'total' });
  dropFoot(kinds, body, skipped, dated);
  if (body.length === 0) return undefined;
  return {
    sheet,
    header: header.last,
    firstHeader: header.first,
    body,
    skipped,
    columns: header.columns.map((column) => ({
      column,
      header: header.texts.get(column) ?? '',
      parent: header.parents.get(column) ?? '',
    })),
    titles: titlesOf(kinds, header),
  };
}

const LEAST_ABOVE = 4;
const figureAt = (kinds: Kinds, position: number, column: number): number => {
  const cell = valueAt(kinds.sheet, position, column);
  if (typeof cell === 'number') return cell;
  const { value } = typeof cell === 'string' ? readNumber(cell, decimalIn(cell) ?? '.') : { value: NaN };
  return value;
};
/**
 * The last row adds up the rows above whatever it is called: a word stands where the others have dates, gaps where
 * nothing can be added, and every number is more than any above it.
 */
function isFoot(
  kinds: Kinds,
  { columns }: Header,
  body: readonly number[],
  dated: number | undefined,
): boolean {
  const last = body.at(-1);
  if (dated === undefined || last === undefined || body.length <= LEAST_ABOVE) return false;
  if (kinds.at(last, dated) !== KIND.word || body.slice(0, -1).some((p) => kinds.at(p, dated) === KIND.word))
    return false;
  const filled = columns.filter((column) => kinds.at(last, column) !== KIND.blank);
  const figures = filled.filter((column) => kinds.isData(last, column));
  if (figures.length === 0 || figures.length !== filled.length - 1) return false;
  return figures.every((column) => {
    const own = figureAt(kinds, last, column);
    const above = body.slice(0, -1).map((p) => figureAt(kinds, p, column));
    return above.filter((x) => x > 0).length >= 2 ? above.every((x) => !(x >= own)) : !Number.isNaN(own);
  });
}

/** Last rows with words where the others have dates are sums and remarks, not records. */
function dropFoot(kinds: Kinds, body: number[], skipped: SkippedArea[], dated: number | undefined): void {
  if (dated === undefined) return;
  for (let last = body.at(-1); last !== undefined && body.length > 3; last = body.at(-1)) {
    const hasTotal = skipped.some(({ why, position }) => why === 'total' && position < (last ?? 0));
    if (kinds.at(last, dated) !== KIND.word || !hasTotal) return;
    body.pop();
    skipped.push({ position: last, why: 'note' });
  }
}

const ROWS_ABOVE = 6;
function titlesOf(kinds: Kinds, header: Header): string[] {
  const titles: string[] = [];
  for (let p = header.first - 1; p >= Math.max(0, header.first - ROWS_ABOVE); p--) {
    const row = runsOf(kinds, p).flat();
    if (row.length > 3 || row.some((column) => kinds.isData(p, column))) continue;
    titles.push(...row.map((column) => textAt(kinds.sheet, p, column)));
  }
  return titles;
}

const NEAR_TOP = 80;
/** Deep in a long table only a row without figures can be a header: the first filled cells tell. */
function mayBeHeader(kinds: Kinds, position: number): boolean {
  if (position < NEAR_TOP) return true;
  let checked = 0;
  for (let column = 0; column < kinds.sheet.columns.length && checked < 4; column++) {
    if (kinds.at(position, column) === KIND.blank) continue;
    checked++;
    if (kinds.isData(position, column)) return false;
  }
  return true;
}

const overlaps = (a: Header, b: Header): boolean => a.columns.some((column) => b.columns.includes(column));
const isSame = (a: Header, b: Header): boolean =>
  [...a.texts].every(([column, text]) => text === '' || (b.texts.get(column) ?? '') === text);

/** All tables of a sheet that have their headers in a row. */
export function layTables(sheet: SheetCells): LaidTable[] {
  const kinds = kindsOf(sheet);
  const headers: Header[] = [];
  for (let position = 0; position < sheet.rows.length; position++) {
    if (!mayBeHeader(kinds, position)) continue;
    const found = headersAt(kinds, position).filter((one) => {
      const before = headers.filter((other) => overlaps(one, other)).at(-1);
      if (!before) return true;
      if (isSame(one, before)) return isOpened(kinds, one);
      return one.first > before.last && isNewHeader(kinds, one, before);
    });
    headers.push(...found);
    if (found.length > 0) position = Math.max(position, ...found.map(({ last }) => last));
  }
  return headers.flatMap((header) => {
    const next = headers
      .filter((other) => other.first > header.last && overlaps(header, other))
      .reduce((least, other) => Math.min(least, other.first), sheet.rows.length);
    return laid(kinds, header, withoutTitle(kinds, header, next, sheet.rows.length)) ?? [];
  });
}

/** The same header again under a title of its own: a table of its own, not the top of the next page. */
function isOpened(kinds: Kinds, { first, columns }: Header): boolean {
  const above = columns.filter((column) => kinds.at(first - 1, column) !== KIND.blank);
  return above.length === 1 && kinds.at(first - 1, above[0] ?? 0) === KIND.word;
}

/**
 * A row of words inside a table is a header of its own only when it covers most of its columns or a gap or
 * title parts it from what stands above.
 */
function isNewHeader(kinds: Kinds, one: Header, before: Header): boolean {
  const { sheet } = kinds;
  const above = before.columns.filter((column) => kinds.at(one.first - 1, column) !== KIND.blank);
  const isParted =
    !isNext(sheet, one.first - 1) ||
    (above.length <= 2 && !above.some((c) => kinds.isData(one.first - 1, c)));
  const wide = one.columns.length >= 0.7 * before.columns.length;
  // Rows of names and remarks in a register: the column already held words.
  const worded = one.columns.filter((column) => isWordy(kinds, before, column)).length;
  if (isParted) return worded < 0.7 * one.columns.length;
  // Right among lines: only words that name things, over columns that held none.
  const known = one.columns.filter((column) => isKnownLabel(textAt(sheet, one.last, column))).length;
  return wide && worded === 0 && one.columns.length >= 3 && known >= 0.5 * one.columns.length;
}
function isWordy(kinds: Kinds, { last }: Header, column: number): boolean {
  let [filled, words] = [0, 0];
  for (let p = last + 1; p < Math.min(kinds.sheet.rows.length, last + 12); p++) {
    const kind = kinds.at(p, column);
    if (kind === KIND.blank) continue;
    filled++;
    if (kind === KIND.word) words++;
  }
  return filled > 0 && words >= 0.6 * filled;
}

/** The title of the next table is no row of this one. */
function withoutTitle(kinds: Kinds, header: Header, next: number, end: number): number {
  if (next === end) return next;
  let to = next;
  while (to - 1 > header.last) {
    const filled = header.columns.filter((column) => kinds.at(to - 1, column) !== KIND.blank);
    if (filled.length > 1 || filled.some((column) => kinds.isData(to - 1, column))) break;
    to--;
  }
  return to;
}

import type { SheetCells } from '../read/sheetCells';
import { isDateAt, valueAt } from '../read/sheetCells';
import type { FieldName } from '../fields';
import { guessHeader } from './headers';
import { unitOfWord } from './units';

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
  readonly skipped: readonly Skipped[];
}
export interface Skipped {
  readonly position: number;
  readonly why: 'total' | 'note' | 'header again' | 'units';
}

const STRONG = 0.6;
export const strongField = (text: string, least = STRONG): FieldName | undefined => {
  const [best] = guessHeader(text);
  return best && best.score >= least ? best.field : undefined;
};

interface RowLook {
  readonly texts: ReadonlyMap<number, string>;
  readonly numbers: number;
  readonly fields: ReadonlySet<FieldName>;
}

function lookAt(sheet: SheetCells, position: number): RowLook {
  const texts = new Map<number, string>();
  const fields = new Set<FieldName>();
  let numbers = 0;
  for (let column = 0; column < sheet.columns.length; column++) {
    const cell = valueAt(sheet, position, column);
    if (typeof cell === 'number') numbers++;
    else if (typeof cell === 'string' && cell.trim() !== '') {
      if (isNumberText(cell)) {
        numbers++;
        continue;
      }
      texts.set(column, cell);
      const field = strongField(cell);
      if (field) fields.add(field);
    }
  }
  return { texts, numbers, fields };
}
/** A figure kept as text, so that rows of a text table do not look like headers. */
const isNumberText = (text: string): boolean => /^[\s\d.,:/\-+%]+$/.test(text) && /\d/.test(text);

const mergedText = (sheet: SheetCells, position: number, column: number): string | undefined => {
  const row = sheet.rows[position] ?? -1;
  const area = sheet.merges.find(
    (m) => m.top <= row && m.bottom >= row && m.left <= column && m.right >= column,
  );
  if (!area) return undefined;
  const top = sheet.rows.indexOf(area.top);
  const cell = top < 0 ? null : valueAt(sheet, top, area.left);
  return typeof cell === 'string' ? cell : undefined;
};

/**
 * Text above each column: its own cell, the merged cell over it, or the text to its left that it continues.
 */
function parentTexts(
  sheet: SheetCells,
  position: number,
  look: RowLook,
  columns: readonly number[],
): ReadonlyMap<number, string> {
  const parents = new Map<number, string>();
  let last = '';
  for (const column of columns) {
    const own = look.texts.get(column) ?? mergedText(sheet, position, column);
    if (own !== undefined) last = own;
    if (last) parents.set(column, own ?? last);
  }
  return parents;
}

interface FoundHeader {
  readonly first: number;
  readonly last: number;
  readonly texts: ReadonlyMap<number, string>;
  readonly parents: ReadonlyMap<number, string>;
  readonly fields: number;
}

const isAdjacent = (sheet: SheetCells, position: number): boolean =>
  (sheet.rows[position + 1] ?? -9) - (sheet.rows[position] ?? 0) === 1;
const holdsFigures = (sheet: SheetCells, from: number): boolean =>
  [from, from + 1, from + 2].some((p) => p < sheet.rows.length && lookAt(sheet, p).numbers > 0);
const isEnough = ({ fields, texts, numbers }: RowLook): boolean =>
  (fields.size >= 3 && fields.size >= 0.3 * texts.size && numbers <= fields.size / 3) ||
  (fields.size === 2 && texts.size <= 4 && numbers === 0);

const isUnitText = (text: string): boolean => unitOfWord(text.replace(/[()[\]]/g, '')) !== undefined;

/** A second row that only names units. */
function unitRow(position: number, look: RowLook, below: RowLook): FoundHeader | undefined {
  if ([...below.texts.values()].filter(isUnitText).length < below.texts.size * 0.6) return undefined;
  const texts = new Map(look.texts);
  for (const [column, unit] of below.texts)
    if (texts.has(column)) texts.set(column, `${texts.get(column) ?? ''} (${unit.replace(/[()[\]]/g, '')})`);
  return { first: position, last: position + 1, texts, parents: new Map(), fields: look.fields.size };
}

const isHeaderWord = (text: string): boolean =>
  guessHeader(text).length > 0 || /^(no|total|date|time|%|\(?\w{1,3}\)?)$/i.test(text.trim());

/** The second row of a header: units, or words under words that cover several columns. */
function withSecondRow(sheet: SheetCells, position: number, look: RowLook): FoundHeader | undefined {
  const below = isAdjacent(sheet, position) ? lookAt(sheet, position + 1) : undefined;
  if (!below || below.numbers > 0 || below.texts.size < 2 || !holdsFigures(sheet, position + 2))
    return undefined;
  return unitRow(position, look, below) ?? wordsUnderWords(sheet, position, look, below);
}

function wordsUnderWords(
  sheet: SheetCells,
  position: number,
  look: RowLook,
  below: RowLook,
): FoundHeader | undefined {
  const columns = [...new Set([...look.texts.keys(), ...below.texts.keys()])].sort((a, b) => a - b);
  const parents = parentTexts(sheet, position, look, columns);
  const texts = new Map<number, string>();
  const fields = new Set<FieldName>();
  for (const column of columns) {
    const [own, parent] = [below.texts.get(column), parents.get(column)];
    const text = own ?? look.texts.get(column) ?? '';
    texts.set(column, text);
    const field = strongField(own && parent ? `${parent} ${own}` : text) ?? strongField(text);
    if (field) fields.add(field);
  }
  // Data rows made of words alone (names, remarks) match nothing.
  const saysHeader = ([column, text]: readonly [number, string]): boolean =>
    isHeaderWord(text) || strongField(`${parents.get(column) ?? ''} ${text}`, 0.85) !== undefined;
  const isHeaderLike =
    fields.size >= Math.max(2, look.fields.size) &&
    [...below.texts].filter(saysHeader).length >= below.texts.size / 2;
  return isHeaderLike
    ? {
        first: position,
        last: position + 1,
        texts,
        parents: new Map([...parents].filter(([column]) => below.texts.has(column))),
        fields: fields.size,
      }
    : undefined;
}

function headerAt(sheet: SheetCells, position: number): FoundHeader | undefined {
  const look = lookAt(sheet, position);
  if (look.texts.size < 2 || look.numbers > look.texts.size / 3) return undefined;
  const two = withSecondRow(sheet, position, look);
  if (two && (two.fields >= 3 || isEnough(look))) return two;
  return isEnough(look) && holdsFigures(sheet, position + 1)
    ? { first: position, last: position, texts: look.texts, parents: new Map(), fields: look.fields.size }
    : undefined;
}

const isBlankBelow = (sheet: SheetCells, column: number, from: number, to: number): boolean => {
  const values = sheet.columns[column]?.values;
  if (!values) return true;
  for (let p = from; p < Math.min(to, values.length); p++)
    if (values[p] !== null && values[p] !== '') return false;
  return true;
};

const same = (a: string, b: string): boolean => a.trim().toLowerCase() === b.trim().toLowerCase();

/** Blocks side by side: cut at columns without header and cells, and where the headers start over. */
function segments(sheet: SheetCells, header: FoundHeader, to: number): number[][] {
  const list: number[][] = [];
  let current: number[] = [];
  const first = Math.min(...header.texts.keys());
  const last = Math.max(...header.texts.keys());
  const cut = (): void => {
    if (current.length > 0) list.push(current);
    current = [];
  };
  for (let column = first; column <= last; column++) {
    const text = header.texts.get(column);
    if (text === undefined && isBlankBelow(sheet, column, header.last + 1, to)) {
      cut();
      continue;
    }
    const opening = header.texts.get(current[0] ?? -1);
    const [second, here] = [header.texts.get(current[1] ?? -1), header.texts.get(column + 1)];
    if (
      current.length > 1 &&
      text !== undefined &&
      opening !== undefined &&
      same(opening, text) &&
      second !== undefined &&
      here !== undefined &&
      same(second, here)
    )
      cut();
    current.push(column);
  }
  cut();
  return list;
}

const TOTAL =
  /^\s*(?:grand |sub|sub-)?(?:totals?|sums?|averages?|avg\.?|means?|overall|all (?:runs|tanks|vats)|max(?:imum)?|min(?:imum)?|std\.?|s\.?d\.?)\b.{0,24}$/i;

/** What a row below the header is. */
function kindOfRow(
  sheet: SheetCells,
  position: number,
  columns: readonly number[],
  header: FoundHeader,
): Skipped['why'] | 'record' | 'blank' {
  const texts: string[] = [];
  let [filled, repeats] = [0, 0];
  for (const column of columns) {
    const cell = valueAt(sheet, position, column);
    if (cell === null || cell === '') continue;
    filled++;
    if (typeof cell !== 'string') continue;
    texts.push(cell);
    if (same(cell, header.texts.get(column) ?? '')) repeats++;
  }
  if (filled === 0) return 'blank';
  if (repeats >= 2 && repeats >= filled / 2) return 'header again';
  if (texts.slice(0, 2).some((text) => TOTAL.test(text))) return 'total';
  return filled === 1 && columns.length > 3 && texts.length === 1 ? 'note' : 'record';
}

function laidTable(
  sheet: SheetCells,
  header: FoundHeader,
  columns: readonly number[],
  to: number,
): LaidTable | undefined {
  const fields = new Set(
    columns
      .map(
        (column) =>
          strongField(header.texts.get(column) ?? '') ??
          strongField(`${header.parents.get(column) ?? ''} ${header.texts.get(column) ?? ''}`),
      )
      .filter((field) => field !== undefined),
  );
  if (fields.size < 2) return undefined;
  const body: number[] = [];
  const skipped: Skipped[] = [];
  for (let position = header.last + 1; position < to; position++) {
    const kind = kindOfRow(sheet, position, columns, header);
    if (kind === 'record') body.push(position);
    else if (kind !== 'blank') skipped.push({ position, why: kind });
  }
  return body.length === 0
    ? undefined
    : {
        sheet,
        header: header.last,
        firstHeader: header.first,
        body,
        skipped,
        columns: columns.map((column) => ({
          column,
          header: header.texts.get(column) ?? '',
          parent: header.parents.get(column) ?? '',
        })),
      };
}

const HEADERS_NEAR_TOP = 60;

/**
 * Rows where a header may stand: near the top, after blank rows, and rows without figures in a column of
 * figures.
 */
function mayBeHeader(sheet: SheetCells, position: number): boolean {
  if (position < HEADERS_NEAR_TOP || !isAdjacent(sheet, position - 1)) return true;
  let checked = 0;
  for (let column = 0; column < sheet.columns.length && checked < 4; column++) {
    const cell = valueAt(sheet, position, column);
    if (cell === null) continue;
    checked++;
    if (typeof cell !== 'string' || isDateAt(sheet, position, column) || isNumberText(cell)) return false;
  }
  return true;
}

/** All tables of a sheet that have their headers in a row. */
export function layTables(sheet: SheetCells): LaidTable[] {
  const headers: FoundHeader[] = [];
  for (let position = 0; position < sheet.rows.length; position++) {
    const found = mayBeHeader(sheet, position) ? headerAt(sheet, position) : undefined;
    if (!found) continue;
    const before = headers.at(-1);
    const isRepeat =
      before && [...found.texts].every(([column, text]) => same(text, before.texts.get(column) ?? ''));
    if (!isRepeat) headers.push(found);
    position = found.last;
  }
  return headers.flatMap((header, i) => {
    const to = headers[i + 1]?.first ?? sheet.rows.length;
    return segments(sheet, header, to).flatMap((columns) => laidTable(sheet, header, columns, to) ?? []);
  });
}

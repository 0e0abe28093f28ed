import type { Cell, Grid } from '../../../shared/base/values';
import { asWritten, TEXT_FORMAT } from '../reading/cells';
import { withExcel } from '../excelErrors';
import { HostProblem } from '../port';
import type { CellChange } from '../../../shared/books/living/reading/day';
import type { LogLines, LogPlace } from '../port';

/**
 * Lines under the last one of a sheet that grows. The sheet is made on first use; one of that name with other
 * headings is left alone and another name is taken.
 */

const MOST_NAMES = 9;

const namesOf = (sheet: string): readonly string[] =>
  Array.from({ length: MOST_NAMES }, (_, i) => (i === 0 ? sheet : `${sheet} ${i + 1}`));

const hasHeadings = (row: readonly unknown[] | undefined, headings: readonly string[]): boolean =>
  headings.every((heading, i) => String(row?.[i] ?? '') === heading);

const written = (cell: Cell): string | number | boolean => (cell === null ? '' : asWritten(cell));
/** In a column of texts nothing turns into a number, and a mark before the text would stay in it. */
const inColumn = (cell: Cell, format: string | undefined): string | number | boolean =>
  typeof cell === 'string' && format === TEXT_FORMAT ? cell : written(cell);

/** Headings and widths on an empty sheet. */
async function begin(
  context: Excel.RequestContext,
  sheet: Excel.Worksheet,
  headings: readonly string[],
  widths: readonly number[],
): Promise<Excel.Worksheet> {
  const head = sheet.getRangeByIndexes(0, 0, 1, headings.length);
  head.format.font.bold = true;
  sheet.freezePanes.freezeRows(1);
  widths.forEach((width, i) => {
    sheet.getRangeByIndexes(0, i, 1, 1).format.columnWidth = width;
  });
  // Last: a sheet that got its looks only is still empty, and begun again the next time.
  head.values = [[...headings]];
  await context.sync();
  return sheet;
}

type OneLog = Omit<LogLines, 'others'>;
interface Found<Log> {
  readonly sheet: Excel.Worksheet;
  readonly log: Log;
}
/** A sheet with these headings; undefined with `free`, the first that may take them. */
async function sheetWith(
  context: Excel.RequestContext,
  { sheet, headings }: OneLog,
): Promise<{ readonly found?: Excel.Worksheet; readonly free: Excel.Worksheet | string | undefined }> {
  for (const name of namesOf(sheet)) {
    const found = context.workbook.worksheets.getItemOrNullObject(name);
    await context.sync();
    if (found.isNullObject) return { free: name };
    const head = found.getRangeByIndexes(0, 0, 1, headings.length);
    head.load('values');
    const used = found.getUsedRangeOrNullObject(true);
    await context.sync();
    // An empty sheet of that name: its making broke off.
    if (used.isNullObject) return { free: found };
    if (hasHeadings(head.values[0], headings)) return { found, free: undefined };
  }
  return { free: undefined };
}

/** The sheet with our headings, in the first of its languages that stands there; else it is made in the first. */
async function logSheet(context: Excel.RequestContext, log: LogLines): Promise<Found<OneLog>> {
  const own = await sheetWith(context, log);
  if (own.found) return { sheet: own.found, log };
  for (const other of log.others ?? []) {
    const { found } = await sheetWith(context, other);
    if (found) return { sheet: found, log: other };
  }
  if (own.free === undefined) throw new Error('no free name for the log');
  const empty = typeof own.free === 'string' ? context.workbook.worksheets.add(own.free) : own.free;
  return { sheet: await begin(context, empty, log.headings, log.widths), log };
}

/** Puts the lines below the last used row; answers the sheet's name and the row of the first, from 1. */
export const appendLines = (lines: LogLines): Promise<{ readonly sheet: string; readonly row: number }> =>
  withExcel(async (context) => {
    const { sheet, log } = await logSheet(context, lines);
    const used = sheet.getUsedRangeOrNullObject(true);
    used.load('rowIndex,rowCount');
    sheet.load('name');
    await context.sync();
    const top = used.isNullObject ? 1 : used.rowIndex + used.rowCount;
    const range = sheet.getRangeByIndexes(top, 0, log.rows.length, log.headings.length);
    range.numberFormat = log.rows.map(() => [...log.formats]);
    range.values = log.rows.map((row) => row.map((cell, i) => inColumn(cell, log.formats[i])));
    await context.sync();
    return { sheet: sheet.name, row: top + 1 };
  });

async function gridOf(context: Excel.RequestContext, { sheet, headings }: LogPlace): Promise<Grid> {
  for (const name of namesOf(sheet)) {
    const found = context.workbook.worksheets.getItemOrNullObject(name);
    await context.sync();
    if (found.isNullObject) return [];
    const used = found.getUsedRangeOrNullObject(true);
    used.load('values,rowIndex,columnIndex');
    await context.sync();
    if (used.isNullObject || used.rowIndex > 0 || used.columnIndex > 0) continue;
    if (hasHeadings(used.values[0], headings))
      return used.values.map((row) => row.map((cell): Cell => asRead(cell)));
  }
  return [];
}
/** Everything on the sheet of the log, from its first row; nothing where none of that name has our headings. */
export const readLines = (place: LogPlace): Promise<Grid> =>
  withExcel(async (context) => {
    for (const one of [place, ...(place.others ?? [])]) {
      const grid = await gridOf(context, one);
      if (grid.length > 0) return grid;
    }
    return [];
  });
const asRead = (cell: unknown): Cell =>
  typeof cell === 'number' || typeof cell === 'boolean'
    ? cell
    : typeof cell === 'string' && cell !== ''
      ? cell
      : null;

const same = (a: unknown, b: Cell): boolean =>
  typeof a === 'number' && typeof b === 'number'
    ? Math.abs(a - b) < 1e-6
    : String(a ?? '') === String(b ?? '');

/** Takes a line out again when it still says what was written; false when it was changed since. */
export const removeLine = (lines: LogLines, row: number): Promise<boolean> =>
  withExcel(async (context) => {
    const { sheet, log } = await logSheet(context, lines);
    const range = sheet.getRangeByIndexes(row - 1, 0, 1, log.headings.length);
    range.load('values');
    await context.sync();
    const [wanted] = log.rows;
    const isSame = wanted?.every((cell, i) => same(range.values[0]?.[i], cell)) === true;
    if (!isSame) return false;
    range.clear('Contents');
    await context.sync();
    return true;
  });

/** Fills cells of a sheet, all or none: none when one of them holds something else by now. */
export async function writeCells(sheet: string, cells: readonly CellChange[]): Promise<boolean> {
  let hasBegun = false;
  const put = (content: (cell: CellChange) => Cell): Promise<boolean> =>
    withExcel(async (context) => {
      const found = context.workbook.worksheets.getItemOrNullObject(sheet);
      await context.sync();
      if (found.isNullObject) return false;
      const ranges = cells.map(({ address }) => found.getRange(address));
      for (const range of ranges) range.load('values');
      await context.sync();
      if (!hasBegun && !cells.every(({ from }, i) => same(ranges[i]?.values[0]?.[0], from))) return false;
      hasBegun = true;
      cells.forEach((cell, i) => {
        const range = ranges[i];
        if (range) range.values = [[written(content(cell))]];
      });
      await context.sync();
      return true;
    });
  try {
    return await put(({ to }) => to);
  } catch (error) {
    if (!hasBegun || cells.length < 2) throw error;
    const back = (): Promise<boolean> => put(({ from }) => from);
    // Some may be filled by now: what stood there is put back, once more where that is hindered too.
    await back()
      .catch(back)
      .catch(() => {
        throw new HostProblem(
          `Only a part may have been written. Look at ${cells.map(({ address }) => address).join(', ')} of “${sheet}”.`,
          { cause: error },
        );
      });
    throw error;
  }
}

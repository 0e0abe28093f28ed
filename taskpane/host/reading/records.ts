import { grouped } from '../../pane/values/show';
import type { RangeCells } from '../../../shared/records';
import { gridFrom, partsOf } from './cells';
import { withExcel } from '../excelErrors';
import type { CellsReading, CellsWanted, PortTell } from '../port';
import { HostProblem } from '../port';
import type { UsedSheet } from './used';
import { batches, CELLS_PER_SYNC, usedSheets } from './used';

/**
 * Records as they stand in the open workbook: values, formulas and number formats, in as few trips as the
 * host allows.
 */

/** Beyond this a stray cell at the far end of a sheet is more probable than that many records. */
const MOST_CELLS = 4_000_000;

interface Found {
  readonly used: readonly UsedSheet[];
  readonly again: CellsWanted;
}

async function partOf(
  context: Excel.RequestContext,
  sheet: Excel.Worksheet,
  range: Excel.Range | undefined,
): Promise<Found> {
  const used = range ? range.getUsedRangeOrNullObject(true) : sheet.getUsedRangeOrNullObject(true);
  sheet.load('name');
  used.load('rowIndex,columnIndex,rowCount,columnCount');
  range?.load('address');
  await context.sync();
  const { name } = sheet;
  return {
    used: used.isNullObject ? [] : [{ name, range: used }],
    again: range ? { sheet: name, area: partsOf(range.address).area } : { sheet: name },
  };
}

async function find(context: Excel.RequestContext, wanted: CellsWanted): Promise<Found> {
  const { workbook } = context;
  if (wanted === 'book') return { used: await usedSheets(context), again: wanted };
  if (wanted === 'sheet') return partOf(context, workbook.worksheets.getActiveWorksheet(), undefined);
  if (wanted === 'selection') {
    const range = workbook.getSelectedRange();
    return partOf(context, range.worksheet, range);
  }
  const sheet = workbook.worksheets.getItemOrNullObject(wanted.sheet);
  await context.sync();
  if (sheet.isNullObject)
    throw new HostProblem(`There is no sheet called “${wanted.sheet}” any more. Choose again what to check.`);
  return partOf(context, sheet, wanted.area === undefined ? undefined : sheet.getRange(wanted.area));
}

interface OpenSheet {
  readonly name: string;
  readonly top: number;
  readonly left: number;
  readonly values: RangeCells['values'][number][];
  readonly formulas: (readonly unknown[])[];
  readonly formats: (readonly string[])[];
}

/** A stretch of rows of one sheet that is fetched together. */
interface Block {
  readonly sheet: string;
  readonly top: number;
  readonly left: number;
  readonly rows: number;
  readonly columns: number;
}
const blocksOf = ({ name, range }: UsedSheet): Block[] => {
  const { rowIndex, columnIndex, rowCount, columnCount } = range;
  const rows = Math.max(1, Math.floor(CELLS_PER_SYNC / columnCount));
  return Array.from({ length: Math.ceil(rowCount / rows) }, (_, i) => ({
    sheet: name,
    top: rowIndex + i * rows,
    left: columnIndex,
    rows: Math.min(rows, rowCount - i * rows),
    columns: columnCount,
  }));
};

/**
 * A long book is heavy enough: rows without a formula keep none, and rows formatted like the one above share
 * its formats.
 */
const NONE: readonly never[] = [];
const isFormula = (text: unknown): boolean => typeof text === 'string' && text.startsWith('=');
const formulasOf = (row: readonly unknown[]): readonly unknown[] =>
  row.some(isFormula) ? row.map((text) => (isFormula(text) ? text : undefined)) : NONE;
const same = (row: readonly unknown[], before: readonly string[] | undefined): before is readonly string[] =>
  before?.length === row.length && row.every((format, i) => format === before[i]);

function take(sheets: Map<string, OpenSheet>, { sheet: name, top, left }: Block, range: Excel.Range): void {
  const sheet = sheets.get(name) ?? { name, top, left, values: [], formulas: [], formats: [] };
  sheets.set(name, sheet);
  for (const row of gridFrom(range.values)) sheet.values.push(row);
  for (const row of range.formulas) sheet.formulas.push(formulasOf(row));
  for (const row of range.numberFormat as unknown[][]) {
    const before = sheet.formats.at(-1);
    sheet.formats.push(same(row, before) ? before : row.map(String));
  }
}

export const listSheets = (): Promise<readonly string[]> =>
  withExcel(async (context) => {
    const sheets = context.workbook.worksheets;
    sheets.load('items/name');
    await context.sync();
    return sheets.items.map(({ name }) => name);
  });

/** One trip, with a context of its own: what it fetched is let go with it. */
const fetch = (blocks: readonly Block[], sheets: Map<string, OpenSheet>): Promise<void> =>
  withExcel(async (context) => {
    const ranges = blocks.map(({ sheet, top, left, rows, columns }) =>
      context.workbook.worksheets.getItem(sheet).getRangeByIndexes(top, left, rows, columns),
    );
    for (const range of ranges) range.load('values,formulas,numberFormat');
    await context.sync();
    blocks.forEach((block, i) => {
      const range = ranges[i];
      if (range) take(sheets, block, range);
    });
  });

/** undefined when the user stopped it. */
export async function readCells(
  wanted: CellsWanted,
  tell: PortTell,
  isStopped: () => boolean,
): Promise<CellsReading | undefined> {
  const { blocks, again } = await withExcel(async (context) => {
    const found = await find(context, wanted);
    const cells = found.used.reduce((sum, { range }) => sum + range.rowCount * range.columnCount, 0);
    if (cells > MOST_CELLS)
      throw new HostProblem(
        `The cells in use span ${grouped(cells)} places; the check reads up to ${grouped(MOST_CELLS)}. Select only the rows that hold records.`,
      );
    return { blocks: found.used.flatMap(blocksOf), again: found.again };
  });
  const sheets = new Map<string, OpenSheet>();
  // A single trip for everything can exceed what the web version sends.
  const groups = batches(blocks, ({ rows, columns }) => rows * columns);
  for (const [done, group] of groups.entries()) {
    tell({
      label: 'Reading the records',
      done: Math.round((50 * done) / groups.length),
      total: 100,
      canStop: true,
    });
    await fetch(group, sheets);
    if (isStopped()) return undefined;
  }
  return { sheets: [...sheets.values()], again };
}

import type { RangeCells } from '../../shared/audit';
import { gridFrom, partsOf } from './cells';
import { withExcel } from './excelErrors';
import type { CellsReading, CellsWanted, Tell } from './port';
import { HostProblem } from './port';
import type { Slice, UsedSheet } from './scan';
import { batches, slicesOf, usedSheets } from './scan';

/** Records as they stand in the open workbook: values, formulas and number formats, in as few trips as the host allows. */

/** Beyond this a stray cell at the far end of a sheet is more probable than that many records. */
const MOST_CELLS = 4_000_000;

interface Found { readonly used: readonly UsedSheet[]; readonly again: CellsWanted }

async function partOf(context: Excel.RequestContext, sheet: Excel.Worksheet, range: Excel.Range | undefined): Promise<Found> {
  const used = range ? range.getUsedRangeOrNullObject(true) : sheet.getUsedRangeOrNullObject(true);
  sheet.load('name');
  used.load('rowIndex,columnIndex,rowCount,columnCount');
  range?.load('address');
  await context.sync();
  const { name } = sheet;
  return { used: used.isNullObject ? [] : [{ name, range: used }], again: range ? { sheet: name, area: partsOf(range.address).area } : { sheet: name } };
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
  if (sheet.isNullObject) throw new HostProblem(`There is no sheet called “${wanted.sheet}” any more. Choose again what to check.`);
  return partOf(context, sheet, wanted.area === undefined ? undefined : sheet.getRange(wanted.area));
}

interface OpenSheet { readonly name: string; readonly top: number; readonly left: number; readonly values: RangeCells['values'][number][]; readonly formulas: (readonly unknown[])[]; readonly formats: (readonly string[])[] }

function take(sheets: Map<string, OpenSheet>, { sheet: name, top, left, range }: Slice): void {
  const sheet = sheets.get(name) ?? { name, top, left, values: [], formulas: [], formats: [] };
  sheets.set(name, sheet);
  for (const row of gridFrom(range.values)) sheet.values.push(row);
  for (const row of range.formulas) sheet.formulas.push(row);
  for (const row of range.numberFormat) sheet.formats.push(row.map(String));
}

export const listSheets = (): Promise<readonly string[]> =>
  withExcel(async (context) => {
    const sheets = context.workbook.worksheets;
    sheets.load('items/name');
    await context.sync();
    return sheets.items.map(({ name }) => name);
  });

/** undefined when the user stopped it. */
export const readCells = (wanted: CellsWanted, tell: Tell, isStopped: () => boolean): Promise<CellsReading | undefined> =>
  withExcel(async (context) => {
    const { used, again } = await find(context, wanted);
    const cells = used.reduce((sum, { range }) => sum + range.rowCount * range.columnCount, 0);
    if (cells > MOST_CELLS) throw new HostProblem(`The cells in use span ${cells.toLocaleString('en')} places; the check reads up to ${MOST_CELLS.toLocaleString('en')}. Select only the rows that hold records.`);
    const groups = batches(used.flatMap(slicesOf));
    const sheets = new Map<string, OpenSheet>();
    for (const [done, group] of groups.entries()) {
      tell({ label: 'Reading the records', done: Math.round((50 * done) / groups.length), total: 100, canStop: true });
      for (const { range } of group) range.load('values,formulas,numberFormat');
      // One trip for a group of slices: a single one for everything can exceed what the web version sends.
      await context.sync();
      if (isStopped()) return undefined;
      for (const slice of group) take(sheets, slice);
    }
    return { sheets: [...sheets.values()], again };
  });

import { grouped } from '../../pane/values/show';
import { splitReference } from '../../../shared/sheet/formula/address';
import { cellFrom, gridFrom, partsOf, referenceTo } from './cells';
import { withExcel } from '../excelErrors';
import type { CellLook, RangeReading } from '../port';
import { HostProblem } from '../port';

/** A whole column is fine as an argument; showing its answer at once is not worth reading a million cells. */
const MOST_CELLS = 50_000;

const tooMany = (cells: number): HostProblem =>
  new HostProblem(
    `That is ${grouped(cells)} cells; the pane reads up to ${grouped(MOST_CELLS)}. Select only the rows that hold data.`,
  );

async function read(context: Excel.RequestContext, range: Excel.Range): Promise<RangeReading> {
  range.load('address,rowCount,columnCount');
  await context.sync();
  const cells = range.rowCount * range.columnCount;
  if (cells > MOST_CELLS) throw tooMany(cells);
  range.load('values');
  await context.sync();
  const { sheet, area } = partsOf(range.address);
  return {
    reference: referenceTo(sheet, area),
    rows: range.rowCount,
    columns: range.columnCount,
    values: gridFrom(range.values),
  };
}

export const readSelection = (): Promise<RangeReading> =>
  withExcel((context) => read(context, context.workbook.getSelectedRange()));

export const readReference = (reference: string): Promise<RangeReading> =>
  withExcel(async (context) => {
    const { sheet, area } = splitReference(reference);
    if (sheet === undefined)
      return read(context, context.workbook.worksheets.getActiveWorksheet().getRange(area));
    const worksheet = context.workbook.worksheets.getItemOrNullObject(sheet);
    await context.sync();
    if (worksheet.isNullObject) throw new HostProblem(`There is no sheet called “${sheet}”.`);
    return read(context, worksheet.getRange(area));
  });

export const goTo = (sheet: string, address: string): Promise<void> =>
  withExcel(async (context) => {
    const worksheet = context.workbook.worksheets.getItemOrNullObject(sheet);
    await context.sync();
    if (worksheet.isNullObject) throw new HostProblem(`There is no sheet called “${sheet}” any more.`);
    worksheet.activate();
    worksheet.getRange(address).select();
    await context.sync();
  });

export const readCell = (): Promise<CellLook> =>
  withExcel(async (context) => {
    const cell = context.workbook.getActiveCell();
    cell.load('address,formulas,values');
    await context.sync();
    const { sheet, area } = partsOf(cell.address);
    const own = String(cell.formulas[0]?.[0] ?? '');
    const value = cellFrom(cell.values[0]?.[0]);
    const anchor = value === null ? undefined : await anchorOf(context, cell, area);
    const formula = anchor?.formula ?? own;
    return {
      sheet,
      address: area,
      formula: formula.startsWith('=') ? formula : '',
      value,
      ...(anchor && { spilledFrom: anchor.address }),
    };
  });

/** The cell whose answer spills into this one; undefined for any other, and where the host cannot tell. */
async function anchorOf(
  context: Excel.RequestContext,
  cell: Excel.Range,
  own: string,
): Promise<{ readonly address: string; readonly formula: string } | undefined> {
  try {
    const anchor = cell.getSpillParentOrNullObject();
    anchor.load('address,formulas');
    await context.sync();
    if (anchor.isNullObject) return undefined;
    const address = partsOf(anchor.address).area;
    return address === own ? undefined : { address, formula: String(anchor.formulas[0]?.[0] ?? '') };
  } catch {
    // Builds older than spilling answers.
    return undefined;
  }
}

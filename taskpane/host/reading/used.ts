/** What is in use on the sheets, and how much of it is read at once. */

/** One reading stays well under the size Excel on the web hands out at once. */
export const CELLS_PER_SYNC = 60_000;

export interface UsedSheet {
  readonly name: string;
  readonly range: Excel.Range;
}
export async function usedSheets(context: Excel.RequestContext): Promise<UsedSheet[]> {
  const { worksheets } = context.workbook;
  worksheets.load('items/name');
  await context.sync();
  const used = worksheets.items.map((sheet) => ({
    name: sheet.name,
    range: sheet.getUsedRangeOrNullObject(true),
  }));
  for (const { range } of used) range.load('rowIndex,columnIndex,rowCount,columnCount');
  await context.sync();
  return used.filter(({ range }) => !range.isNullObject);
}

/** Parts that are read together. */
export function batches<T>(parts: readonly T[], cellsOf: (part: T) => number): T[][] {
  const result: T[][] = [];
  let size = Infinity;
  for (const part of parts) {
    if (size + cellsOf(part) > CELLS_PER_SYNC) {
      result.push([]);
      size = 0;
    }
    result.at(-1)?.push(part);
    size += cellsOf(part);
  }
  return result;
}

import type { ICellData } from '@univerjs/core';
import { isError } from '../../../shared/base/values';
import type { KeptWhole } from '../keeping/shapes';
import type { CellModel, WorkbookModel } from '../../../shared/sheet/workbook/model';

/**
 * Whether a workbook has to be calculated when it is opened. Values stored beside their formulas are shown as
 * they are, as every spreadsheet does; not so where there is none, where the program that wrote the file did
 * not know a function, or where the answer depends on the clock.
 */
const CLOCK = /\b(TODAY|NOW|RAND|RANDBETWEEN|RANDARRAY)\s*\(/i;

const isStale = ({ formula, value }: CellModel): boolean =>
  formula !== undefined &&
  (value === undefined ||
    (isError(value) && (value.error === '#NAME?' || value.error === '#BUSY!')) ||
    CLOCK.test(formula));

export const needsCalculation = (model: WorkbookModel): boolean =>
  model.sheets.some((sheet) => Object.values(sheet.cells).some(isStale));

/** The same for what the browser kept, where every answer was there when it was kept. */
export const needsCalculationKept = ({ sheets }: KeptWhole): boolean =>
  sheets.some(({ data }) =>
    Object.values(data.cellData ?? {}).some((line) =>
      Object.values(line as Record<string, ICellData | null>).some(
        (cell) =>
          typeof cell?.f === 'string' && (CLOCK.test(cell.f) || cell.v === undefined || cell.v === null),
      ),
    ),
  );

export const countFormulas = (model: WorkbookModel): number =>
  model.sheets.reduce(
    (sum, { cells }) => sum + Object.values(cells).filter(({ formula }) => formula !== undefined).length,
    0,
  );

export const countFormulasKept = ({ sheets }: KeptWhole): number => {
  let count = 0;
  for (const { data } of sheets)
    for (const line of Object.values(data.cellData ?? {}))
      for (const cell of Object.values(line as Record<string, ICellData | null>))
        if (cell?.f || cell?.si) count++;
  return count;
};

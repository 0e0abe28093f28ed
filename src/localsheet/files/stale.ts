import { isError } from '../../../shared/base/values';
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

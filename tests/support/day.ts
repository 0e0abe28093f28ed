import type { WorkbookModel } from '../../shared/sheet/workbook/model';

/** The workbook with the day it was calculated for in place of TODAY(): the same answers on every day. */
export const onItsDay = (model: WorkbookModel): WorkbookModel => ({
  ...model,
  sheets: model.sheets.map((sheet) => ({
    ...sheet,
    cells: Object.fromEntries(
      Object.entries(sheet.cells).map(([address, { formula, ...cell }]) => [
        address,
        formula === undefined || formula === '=TODAY()' ? cell : { ...cell, formula },
      ]),
    ),
  })),
});

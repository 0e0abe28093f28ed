import type { BookRead } from '../../../shared/books/living';
import { readBook } from '../../../shared/books/living';
import type { CellModel, WorkbookModel } from '../../../shared/sheet/workbook/model';
import { gridOf } from '../../season/support/support';

/** A book as the pane reads it back from its sheets. */
export const readBack = (model: WorkbookModel): BookRead => {
  const reading = readBook(model.sheets.map(gridOf), '');
  if (reading.kind === 'unreadable') throw new Error(reading.faults.join(' '));
  return reading;
};

export type Values = Readonly<Record<string, string | number>>;
/** The book with cells of one of its sheets typed anew; each keeps its look. */
export const typeInto = (from: WorkbookModel, sheet: string, values: Values): WorkbookModel => ({
  ...from,
  sheets: from.sheets.map((s) =>
    s.name === sheet
      ? {
          ...s,
          cells: {
            ...s.cells,
            ...Object.fromEntries(
              Object.entries(values).map(([at, value]): [string, CellModel] => [
                at,
                { ...s.cells[at], value },
              ]),
            ),
          },
        }
      : s,
  ),
});

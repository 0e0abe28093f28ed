import type { BookRead } from '../../../shared/books/living';
import { readBook } from '../../../shared/books/living';
import type { WorkbookModel } from '../../../shared/sheet/workbook/model';
import { gridOf } from '../../season/support';

/** A book as the pane reads it back from its sheets. */
export const readBack = (model: WorkbookModel): BookRead => {
  const reading = readBook(model.sheets.map(gridOf), '');
  if (reading.kind === 'unreadable') throw new Error(reading.faults.join(' '));
  return reading;
};

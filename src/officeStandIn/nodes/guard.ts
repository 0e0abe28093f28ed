import type { StandInArea, StandInBook } from '../book';
import { fail } from '../failure';

/**
 * Refusals on a protected sheet, as Excel gives them: nothing is written when any cell of the range is
 * locked.
 */

export async function guardContent(book: StandInBook, sheet: string, area: StandInArea): Promise<void> {
  const { isOn } = await book.protection(sheet);
  if (!isOn) return;
  const { locked } = await book.format(sheet, area);
  if (locked !== false) fail('AccessDenied', 'The sheet is protected and the range holds locked cells.');
}

const OPTION = {
  format: 'allowFormatCells',
  columns: 'allowFormatColumns',
  rows: 'allowFormatRows',
  objects: 'allowEditObjects',
  structure: '',
} as const;

/** `structure` (tables, validations, merging, conditional formats) is never allowed while protected. */
export async function guardChange(
  book: StandInBook,
  sheet: string,
  what: keyof typeof OPTION,
): Promise<void> {
  const { isOn, options } = await book.protection(sheet);
  if (isOn && options[OPTION[what]] !== true)
    fail('AccessDenied', 'The sheet is protected against this change.');
}

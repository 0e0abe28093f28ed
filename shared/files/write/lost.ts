import type { WorkbookModel } from '../../sheet/workbook/model';
import { LONGEST_TEXT } from './cells';

/** What the file format cannot hold of a workbook, a sentence each, to be said before it is saved. */

const LONGEST_FORMULA = 8_192;
const MOST_LISTED = 10;

const listed = (places: readonly string[]): string =>
  places.length > MOST_LISTED
    ? `${places.slice(0, MOST_LISTED).join(', ')} and ${places.length - MOST_LISTED} more`
    : places.join(', ');

export function lostInFile(model: WorkbookModel): string[] {
  const texts: string[] = [];
  const formulas: string[] = [];
  for (const { name, cells } of model.sheets)
    for (const [address, { value, formula }] of Object.entries(cells)) {
      if (typeof value === 'string' && value.length > LONGEST_TEXT) texts.push(`${name}!${address}`);
      if (formula !== undefined && formula.length > LONGEST_FORMULA) formulas.push(`${name}!${address}`);
    }
  return [
    ...(texts.length > 0
      ? [`Texts longer than ${LONGEST_TEXT} characters are cut there: ${listed(texts)}`]
      : []),
    ...(formulas.length > 0
      ? [`Formulas longer than ${LONGEST_FORMULA} characters, which Excel does not read: ${listed(formulas)}`]
      : []),
  ];
}

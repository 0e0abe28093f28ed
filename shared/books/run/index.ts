import { calculate } from '../../catalogue/calculation';
import type { WorkbookModel } from '../../sheet/workbook/model';
import type { OneRunPlan } from '../../run/season';
import { assumptionsSheet } from './assume';
import { broodSheet } from './brood';
import { calendarSheet } from './calendar';
import { chainSheet } from './chain';
import { Book } from './context';
import { feedSheet } from './feed';
import { notesSheet } from './notes';
import { stagesSheet } from './stages';
import { startSheet } from './start';
import { waterSheet } from './water';

export interface BookOptions {
  /**
   * For a second plan in the same workbook: "2" names its sheets "Start 2" and its names wanted_2. Letters
   * and digits.
   */
  readonly label?: string;
}

/** The plan as a workbook with live formulas, its values calculated. */
export function seasonWorkbook(plan: OneRunPlan, { label }: BookOptions = {}): WorkbookModel {
  const book = new Book(plan, label ? `_${label.replace(/[^A-Za-z0-9]/g, '')}` : '');
  const assumptions = assumptionsSheet(book);
  const chain = chainSheet(book, assumptions);
  const expected = plan.steps.map((_, i) => `'${chain.name}'!$F$${5 + i}`);
  const sheets = [
    startSheet(book),
    calendarSheet(book),
    chain,
    stagesSheet(book, expected),
    broodSheet(book),
    waterSheet(book),
    feedSheet(book),
    assumptions.sheet,
  ];
  const notes = notesSheet(book, sheets);
  return calculate({
    title: `${plan.form.hatchery}: season plan`,
    sheets: [...sheets, notes],
    names: book.names,
  }).model;
}

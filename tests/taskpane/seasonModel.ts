import { readPlanForm, seasonWorkbook, planSeason } from '../../shared/run';
import type { WorkbookModel } from '../../shared/sheet/workbook/model';
import { exampleTexts, initialPlan } from '../../taskpane/screens/plan/state/plan';

/** 1 March 2027. */
export const TODAY = 46_447;

/** The plan of the example the pane offers, as the pane would write it. */
export function seasonModel(): WorkbookModel {
  const read = readPlanForm(exampleTexts(initialPlan(TODAY).texts));
  if (!('form' in read)) throw new Error(read.faults.map((fault) => fault.message).join(' '));
  return seasonWorkbook(planSeason(read.form));
}

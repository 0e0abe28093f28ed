import { findFunction } from './index';
import { callsOf, evaluateBy } from '../sheet/formula';
import { keepBlanks } from '../sheet/workbook/blanks';
import type { Calculated } from '../sheet/workbook/calculate';
import { calculateBy } from '../sheet/workbook/calculate';
import { customDepthsBy, lintWorkbookBy } from '../sheet/workbook/lint';
import type { WorkbookModel } from '../sheet/workbook/model';

/** The sheet's calculation with the whole catalogue as its table of functions. */
export const callFunction = callsOf(findFunction);
export const evaluate = evaluateBy(findFunction);
/** Values for a workbook of ours, its formulas written so that a blank cell stays blank on every host. */
export const calculate = (model: WorkbookModel, today?: number): Calculated =>
  calculateBy(findFunction, keepBlanks(findFunction, model), today);
export const lintWorkbook = (model: WorkbookModel): string[] => lintWorkbookBy(findFunction, model);
export const customDepths = (model: WorkbookModel): Map<string, number> =>
  customDepthsBy(findFunction, model);

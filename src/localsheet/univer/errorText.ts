import type { ICellAlert } from '@univerjs/sheets-ui';
import { CellAlertManagerService } from '@univerjs/sheets-ui';
import { isError } from '../../../shared/base/values';
import type { UniverBook } from './book';

/** What the engine's own formula errors mean, for cells that hold no sentence of a function. */
const GENERAL: Readonly<Record<string, string>> = {
  '#NAME?': 'The formula holds a name that is not known here. Check the spelling of the function.',
  '#DIV/0!': 'The formula divides by zero or by an empty cell.',
  '#REF!': 'The formula points at a cell that is not there any more, or at itself.',
  '#SPILL!': 'The answer needs more cells than are free here. Clear the cells below and to the right.',
  '#N/A': 'There is no value for this.',
  '#NUM!': 'There is no answer for these numbers.',
  '#VALUE!': 'An argument is of the wrong kind.',
  '#NULL!': 'Two ranges in the formula do not meet.',
  '#CALC!': 'The answer is empty.',
};

/** Why a cell shows an error; undefined when it shows none. */
export function errorAt(
  open: UniverBook,
  sheet: string,
  row: number,
  column: number,
): { readonly code: string; readonly sentence: string } | undefined {
  const value = open.cells.value(sheet, row, column);
  return isError(value)
    ? { code: value.error, sentence: value.message ?? GENERAL[value.error] ?? '' }
    : undefined;
}

const FORMULA_ALERT = 'SHEET_FORMULA_ALERT';

/** The engine opens a small box over a cell with an error and says only its kind: ours says why. */
export function explainErrors(open: UniverBook): void {
  const alerts = open.context.engine.injector.get(CellAlertManagerService);
  const show = alerts.showAlert.bind(alerts);
  alerts.showAlert = (alert: ICellAlert): void => {
    if (alert.key !== FORMULA_ALERT) {
      show(alert);
      return;
    }
    const { subUnitId, row, col } = alert.location;
    const found = errorAt(open, subUnitId, row, col);
    show(
      found
        ? {
            ...alert,
            title: found.code,
            message: found.sentence,
            width: 320,
            height: 40 + 20 * Math.ceil(found.sentence.length / 42),
          }
        : alert,
    );
  };
}

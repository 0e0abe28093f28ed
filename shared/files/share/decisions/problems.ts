import { addressOf, areaText } from '../../../sheet/formula/address';
import { typedForm } from '../references/calls';
import type { StoredValue } from '../../cells/stored';
import type { FormulaCell } from './scan';

export interface ShareProblem {
  readonly sheet: string;
  readonly cell: string;
  /** A copy is not made over the head of a stopping problem. */
  readonly stops: boolean;
  readonly sentence: string;
}

/** Errors that say "not calculated", not "no answer". */
const STUCK: Readonly<Record<string, string>> = {
  '#NAME?':
    'Excel did not know the function when it last calculated. Open the Spawnbook pane, ' +
    'use Repair, save, and try again.',
  '#BUSY!':
    'Excel was still calculating when the file was saved. Wait until it has finished, save, and try again.',
  '#GETTING_DATA':
    'Excel was still calculating when the file was saved. Wait until it has finished, save, and try again.',
  '#CONNECT!': 'Excel could not reach the function. Open the Spawnbook pane, calculate, save, and try again.',
  '#BLOCKED!':
    'Excel was not allowed to run the function. Open the Spawnbook pane, calculate, save, and try again.',
  '#UNKNOWN!':
    'Excel stored an answer this file format has no word for. Calculate in an up-to-date ' +
    'Excel, save, and try again.',
  '#SPILL!': 'the answer has no room. Clear the cells below and beside it, save, and try again.',
};

export function problemOf(sheet: string, { span, value, text }: FormulaCell): ShareProblem | undefined {
  const cell = addressOf(span.row, span.column);
  const say = (stops: boolean, sentence: string): ShareProblem => ({
    sheet,
    cell,
    stops,
    sentence: `${sheet}!${cell}: ${sentence}`,
  });
  if (!value)
    return say(
      true,
      'never calculated. Open the workbook in Excel with Spawnbook, let it calculate, save, and try again.',
    );
  if (value.type === 'n' && !Number.isFinite(Number(value.raw)))
    return say(
      true,
      `its stored value "${value.raw.slice(0, 40)}" is no number. Calculate, save, and try again.`,
    );
  if (value.type !== 'e') return undefined;
  const stuck = STUCK[value.raw.toUpperCase()];
  if (stuck !== undefined)
    return say(true, `${value.raw}. ${stuck.charAt(0).toUpperCase()}${stuck.slice(1)}`);
  return say(false, `${value.raw} is its last value and is kept: ${typedForm(text).slice(0, 80)}`);
}

export const blankSpill = (sheet: string, cell: FormulaCell, blanks: number): ShareProblem => ({
  sheet,
  cell: areaText(cell.area),
  stops: false,
  sentence: `${sheet}!${areaText(cell.area)}: ${blanks} of the cells this formula fills hold no value; they stay blank in the copy.`,
});

/** Cells in which nothing can be read as a value. */
export const isStuck = (value: StoredValue | undefined): boolean =>
  !value || (value.type === 'e' && value.raw.toUpperCase() in STUCK);

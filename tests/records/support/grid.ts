import type { AuditAsk, AuditReport } from '../../../shared/records/findings/run';
import { auditSheets } from '../../../shared/records/findings/run';
import type { ExampleCell } from '../../../shared/records/rules/rule';
import type { SheetCells } from '../../../shared/records/read';
import { sheetFromRange } from '../../../shared/records/read';
import type { Cell } from '../../../shared/base/values';
import { isDateFormat } from '../../../shared/files/read/styles';

const isPair = (cell: ExampleCell): cell is readonly [Cell, string] => Array.isArray(cell);

/** A sheet as the open workbook would hand it over. */
export const sheetOf = (
  name: string,
  cells: readonly (readonly ExampleCell[])[],
  formats?: readonly (readonly string[])[],
): SheetCells =>
  sheetFromRange(
    {
      name,
      top: 0,
      left: 0,
      values: cells.map((row) => row.map((cell) => (isPair(cell) ? cell[0] : cell))),
      formulas: cells.map((row) => row.map((cell) => (isPair(cell) ? cell[1] : cell))),
      ...(formats ? { formats } : {}),
    },
    isDateFormat,
  );

export const finish = <T>(steps: Generator<number, T>): T => {
  let step = steps.next();
  while (!step.done) step = steps.next();
  return step.value;
};

export const audit = (sheets: readonly SheetCells[], ask: AuditAsk = {}): AuditReport =>
  finish(auditSheets(sheets, ask));
export const auditGrid = (cells: readonly (readonly ExampleCell[])[], ask: AuditAsk = {}): AuditReport =>
  audit([sheetOf('Sheet1', cells)], ask);

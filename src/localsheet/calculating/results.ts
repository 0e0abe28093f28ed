import type { ICellData, IRange } from '@univerjs/core';
import { CellValueType, ObjectMatrix } from '@univerjs/core';
import type { IAllRuntimeData } from '@univerjs/engine-formula';
import { FormulaExecutedStateType } from '@univerjs/engine-formula';
import type { Cell } from '../../../shared/base/values';
import { isError } from '../../../shared/base/values';
import type { LiveAnswer } from '../../../shared/sheet/live/work';
import type { WatchAnswer } from '../../../shared/sheet/live/watch';
import { SENTENCE } from '../univer/results';

/** Answers of the worker as the engine announces its own: everything that listens to those goes on as before. */

export function shownCell(value: Cell): ICellData {
  if (value === null) return { v: null };
  if (isError(value))
    return {
      v: value.error,
      t: CellValueType.STRING,
      ...(value.message ? { custom: { [SENTENCE]: { code: value.error, message: value.message } } } : {}),
    };
  if (typeof value === 'boolean') return { v: value ? 1 : 0, t: CellValueType.BOOLEAN };
  return { v: value, t: typeof value === 'number' ? CellValueType.NUMBER : CellValueType.STRING };
}

class BySheet<T> {
  readonly sheets: Record<string, T> = {};
  constructor(private readonly make: () => T) {}
  of(sheet: string): T {
    return (this.sheets[sheet] ??= this.make());
  }
}
const matrix = (): BySheet<ObjectMatrix<ICellData>> => new BySheet(() => new ObjectMatrix<ICellData>());

type Colours = Record<string, Record<number, Record<number, ICellData[][]>>>;

/** What rules say, by their ids; row and column from their first cell. */
function rulesOf(watches: readonly WatchAnswer[]): Record<string, Colours> {
  const rules: Record<string, Colours> = {};
  for (const { sheet, id, values } of watches) {
    const rule = ((rules[sheet] ??= {})[id] ??= {});
    for (const [row, column, value] of values) (rule[row] ??= {})[column] = [[shownCell(value)]];
  }
  return rules;
}

export function announcement(
  unit: string,
  answers: readonly LiveAnswer[],
  watches: readonly WatchAnswer[],
): IAllRuntimeData {
  const values = matrix();
  const spilled = matrix();
  const cleared = matrix();
  const ranges = new BySheet<Record<number, Record<number, IRange>>>(() => ({}));
  for (const { sheet, row, column, value, grid, hadGrid } of answers) {
    const cell = shownCell(value);
    values.of(sheet).setValue(row, column, cell);
    if (hadGrid) cleared.of(sheet).setValue(row, column, cell);
    if (!grid) continue;
    (ranges.of(sheet)[row] ??= {})[column] = {
      startRow: row,
      startColumn: column,
      endRow: row + grid.length - 1,
      endColumn: column + (grid[0]?.length ?? 1) - 1,
    };
    grid.forEach((line, r) => {
      line.forEach((one, c) => {
        spilled.of(sheet).setValue(row + r, column + c, shownCell(one));
      });
    });
  }
  return {
    unitData: { [unit]: values.sheets },
    arrayFormulaRange: { [unit]: ranges.sheets },
    arrayFormulaCellData: { [unit]: spilled.sheets },
    clearArrayFormulaCellData: { [unit]: cleared.sheets },
    unitOtherData: { [unit]: rulesOf(watches) } as never,
    arrayFormulaEmbedded: {},
    imageFormulaData: [],
    runtimeFeatureRange: {},
    runtimeFeatureCellData: {},
    dependencyTreeModelData: [],
    functionsExecutedState: FormulaExecutedStateType.SUCCESS,
  };
}

import type {
  ICellData,
  IObjectMatrixPrimitiveType,
  IRange,
  Nullable,
  Workbook,
  Worksheet,
} from '@univerjs/core';
import { ICommandService, IUndoRedoService } from '@univerjs/core';
import type { FRange, FWorkbook, FWorksheet } from '@univerjs/sheets/facade';
import {
  SetRangeValuesMutation,
  SetRangeValuesUndoMutationFactory,
  SetStyleCommand,
  SetWorksheetColumnCountMutation,
  SetWorksheetRowCountMutation,
} from '@univerjs/sheets';
import type { StandInArea } from '../../../officeStandIn/book';
import { MAX_COLUMNS, MAX_ROWS } from '../../../officeStandIn/book';
import type { Engine } from '../engine';

export type CellPatch = IObjectMatrixPrimitiveType<Nullable<ICellData>>;

/** The open workbook inside the engine; every part of the backend goes through it. */
export class Context {
  private working = 0;
  constructor(readonly engine: Engine) {}

  /** True while the backend itself changes something, as opposed to a person. */
  get isWorking(): boolean {
    return this.working > 0;
  }
  work<T>(step: () => T): T {
    this.working++;
    try {
      return step();
    } finally {
      this.working--;
    }
  }

  get book(): FWorkbook {
    const book = this.engine.api.getActiveWorkbook();
    if (!book) throw new Error('No workbook is open.');
    return book;
  }
  get workbook(): Workbook {
    return this.book.getWorkbook();
  }
  get unitId(): string {
    return this.workbook.getUnitId();
  }

  facade(sheet: string): FWorksheet {
    const found = this.book.getSheetBySheetId(sheet);
    if (!found) throw new Error('The sheet is gone.');
    return found;
  }
  sheet(sheet: string): Worksheet {
    return this.facade(sheet).getSheet();
  }
  range(sheet: string, area: StandInArea): FRange {
    const { row, column, rows, columns } = this.clip(sheet, area);
    return this.facade(sheet).getRange(row, column, rows, columns);
  }

  /** The part of an area the sheet has rows and columns for. */
  clip(sheet: string, { row, column, rows, columns }: StandInArea): StandInArea {
    const own = this.sheet(sheet);
    return {
      row,
      column,
      rows: Math.max(1, Math.min(rows, own.getRowCount() - row)),
      columns: Math.max(1, Math.min(columns, own.getColumnCount() - column)),
    };
  }

  /** Excel's sheets have every row; this one gets them when they are written to. */
  ensure(sheet: string, area: StandInArea): void {
    const own = this.sheet(sheet);
    const lastRow = area.rows >= MAX_ROWS ? area.row : area.row + area.rows;
    const lastColumn = area.columns >= MAX_COLUMNS ? area.column : area.column + area.columns;
    const at = { unitId: this.unitId, subUnitId: sheet };
    if (lastRow > own.getRowCount())
      this.run(SetWorksheetRowCountMutation.id, { ...at, rowCount: lastRow + 50 });
    if (lastColumn > own.getColumnCount())
      this.run(SetWorksheetColumnCountMutation.id, { ...at, columnCount: lastColumn + 5 });
  }

  run(id: string, params: object): boolean {
    return this.engine.injector.get(ICommandService).syncExecuteCommand<object, boolean>(id, params);
  }

  /** Changes cells with undo. Looks do not set off a recalculation. */
  change(sheet: string, cellValue: CellPatch, isLook: boolean): void {
    const params = {
      unitId: this.unitId,
      subUnitId: sheet,
      cellValue,
      ...(isLook ? { trigger: SetStyleCommand.id } : {}),
    };
    const undo = this.engine.injector.invoke((accessor) =>
      SetRangeValuesUndoMutationFactory(accessor, params),
    );
    this.mutate(SetRangeValuesMutation.id, params, undo);
  }

  /**
   * One mutation with the one that takes it back; without the checks and side effects of the engine's
   * commands for people.
   */
  mutate(id: string, params: object, undo: object, undoId = id): void {
    this.run(id, params);
    this.engine.injector.get(IUndoRedoService).pushUndoRedo({
      unitID: this.unitId,
      undoMutations: [{ id: undoId, params: undo }],
      redoMutations: [{ id, params }],
    });
  }

  /** The same patch for every cell of an area. */
  changeAll(
    sheet: string,
    area: StandInArea,
    patch: (row: number, column: number) => ICellData | undefined,
    isLook = true,
  ): void {
    this.ensure(sheet, area);
    const { row, column, rows, columns } = this.clip(sheet, area);
    const cells: CellPatch = {};
    for (let r = row; r < row + rows; r++) {
      for (let c = column; c < column + columns; c++) {
        const cell = patch(r, c);
        if (cell) (cells[r] ??= {})[c] = cell;
      }
    }
    this.change(sheet, cells, isLook);
  }
}

export const toRange = ({ row, column, rows, columns }: StandInArea): IRange => ({
  startRow: row,
  startColumn: column,
  endRow: row + rows - 1,
  endColumn: column + columns - 1,
});
export const toArea = ({ startRow, startColumn, endRow, endColumn }: IRange): StandInArea => ({
  row: startRow,
  column: startColumn,
  rows: endRow - startRow + 1,
  columns: endColumn - startColumn + 1,
});

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
import { Drawing } from './drawing';

export type CellPatch = IObjectMatrixPrimitiveType<Nullable<ICellData>>;

/** Two looks of one cell, the later over the earlier; each names only what it changes. */
function laidOver(before: Nullable<ICellData>, after: Nullable<ICellData>): ICellData {
  const [under, over] = [before?.s, after?.s].map((look) =>
    typeof look === 'object' && look !== null ? look : {},
  );
  const bd = { ...under?.bd, ...over?.bd };
  return { s: { ...under, ...over, ...(Object.keys(bd).length > 0 ? { bd } : {}) } };
}

/** The open workbook inside the engine; every part of the backend goes through it. */
export class Context {
  private working = 0;
  private gatherers = 0;
  private isGathering = false;
  private gathered = new Map<string, CellPatch>();
  private readonly drawing: Drawing;
  constructor(readonly engine: Engine) {
    this.drawing = new Drawing(engine, () => this.unitId);
  }

  /**
   * While a request of the pane runs, looks given one after the other become one change for each sheet: the
   * engine draws, measures and remembers at every change, and a written workbook has thousands of looks.
   */
  async gather<T>(request: () => Promise<T>): Promise<T> {
    this.gatherers++;
    this.drawing.hold();
    try {
      return await request();
    } finally {
      this.gatherers--;
      this.work(() => {
        this.flush();
      });
      this.drawing.release();
    }
  }
  /** A step that gives looks, or one that must find those given before it in the cells. */
  step<T>(givesLooks: boolean, step: () => T): T {
    if (!givesLooks) this.flush();
    this.isGathering = givesLooks && this.gatherers > 0;
    try {
      return step();
    } finally {
      this.isGathering = false;
    }
  }
  private keep(sheet: string, looks: CellPatch): void {
    let all = this.gathered.get(sheet);
    if (!all) this.gathered.set(sheet, (all = {}));
    for (const [row, line] of Object.entries(looks)) {
      const kept = (all[Number(row)] ??= {});
      for (const [column, cell] of Object.entries<Nullable<ICellData>>(line ?? {}))
        kept[Number(column)] = laidOver(kept[Number(column)], cell);
    }
  }
  private flush(): void {
    if (this.gathered.size === 0) return;
    const { gathered } = this;
    this.gathered = new Map();
    for (const [sheet, looks] of gathered)
      if (this.workbook.getSheetBySheetId(sheet)) this.change(sheet, looks, true);
  }

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
    if (isLook && this.isGathering) this.keep(sheet, cells);
    else this.change(sheet, cells, isLook);
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

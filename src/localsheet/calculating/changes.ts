import type { ICellData, IObjectMatrixPrimitiveType, Nullable } from '@univerjs/core';
import { CommandType, ICommandService } from '@univerjs/core';
import {
  FormulaDataModel,
  IDefinedNamesService,
  IOtherFormulaManagerService,
  ISuperTableService,
} from '@univerjs/engine-formula';
import { SetRangeValuesMutation } from '@univerjs/sheets';
import type { Cell } from '../../../shared/base/values';
import { MAX_COLUMNS } from '../../../shared/sheet/formula/address';
import type { LiveCell } from '../../../shared/sheet/live/book';
import type { UniverBook } from '../univer/book';
import { cellOf } from '../univer/book/cells';
import type { Changes } from './messages';

/** What has changed in the open workbook since the worker was told last. */

/** These move cells about; the sheet is then told whole. */
const MOVING =
  /^sheet\.mutation\.(insert-(row|col|sheet)|remove-(rows|col|sheet)|move-(range|rows|columns)|reorder-range|copy-worksheet-end|delete-range)/;
const CONTENT = ['v', 'f', 'si', 'p', 't'] as const;

type Patch = IObjectMatrixPrimitiveType<Nullable<ICellData>>;
interface Params {
  readonly unitId?: string;
  readonly subUnitId?: string;
  readonly cellValue?: Patch;
  readonly from?: { readonly subUnitId?: string };
  readonly to?: { readonly subUnitId?: string };
  readonly sheet?: { readonly id?: string };
}

const touches = (cell: Nullable<ICellData>): boolean =>
  cell === null || cell === undefined || CONTENT.some((key) => key in cell);

export type Lists = Pick<Changes, 'sheets' | 'names' | 'tables' | 'watches'>;

export class Changed {
  private cells = new Map<string, Set<number>>();
  private whole = new Set<string>();
  private told: Readonly<Record<string, string>> = {};

  constructor(private readonly open: UniverBook) {
    const commands = open.context.engine.injector.get(ICommandService);
    commands.onCommandExecuted(({ id, type, params }, options) => {
      if (type !== CommandType.MUTATION || options?.fromFormula === true) return;
      const given = (params ?? {}) as Params;
      if (id === SetRangeValuesMutation.id) this.typed(given);
      else if (MOVING.test(id))
        for (const sheet of [given.subUnitId, given.from?.subUnitId, given.to?.subUnitId, given.sheet?.id])
          if (sheet !== undefined) this.whole.add(sheet);
    });
  }

  private typed({ subUnitId, cellValue }: Params): void {
    if (subUnitId === undefined) return;
    let keys = this.cells.get(subUnitId);
    if (!keys) this.cells.set(subUnitId, (keys = new Set()));
    for (const [row, line] of Object.entries(cellValue ?? {}))
      for (const [column, cell] of Object.entries<Nullable<ICellData>>(line ?? {}))
        if (touches(cell)) keys.add(Number(row) * MAX_COLUMNS + Number(column));
  }

  /** Whether a cell was changed since, or may stand elsewhere now. */
  isMoved(sheet: string): boolean {
    return this.whole.has(sheet);
  }
  isTyped(sheet: string, row: number, column: number): boolean {
    return this.cells.get(sheet)?.has(row * MAX_COLUMNS + column) === true;
  }

  /** All that changed; everything when the worker does not know the workbook yet. */
  take(isAll: boolean): Lists & Pick<Changes, 'cells'> {
    const { cells, whole } = this;
    this.cells = new Map();
    this.whole = new Set();
    if (isAll) this.told = {};
    const sheets = this.open.context.workbook.getSheets().map((sheet) => sheet.getSheetId());
    const parts: Changes['cells'][number][] = [];
    for (const sheet of sheets)
      if (isAll || whole.has(sheet)) parts.push({ sheet, isWhole: true, cells: this.all(sheet) });
      else {
        const keys = cells.get(sheet);
        if (keys && keys.size > 0)
          parts.push({
            sheet,
            isWhole: false,
            cells: [...keys].map((key) => this.cell(sheet, Math.floor(key / MAX_COLUMNS), key % MAX_COLUMNS)),
          });
      }
    return { ...this.lists(), cells: parts };
  }

  private all(sheet: string): LiveCell[] {
    const found: LiveCell[] = [];
    this.open.context
      .sheet(sheet)
      .getCellMatrix()
      .forValue((row, column, cell) => {
        if (!cell) return;
        const one = this.read(sheet, row, column, cell);
        if (one.formula !== undefined || one.value !== null) found.push(one);
      });
    return found;
  }

  private cell(sheet: string, row: number, column: number): LiveCell {
    const cell = this.open.cells.raw(sheet, row, column);
    return cell ? this.read(sheet, row, column, cell) : { row, column, value: null };
  }

  private read(sheet: string, row: number, column: number, cell: ICellData): LiveCell {
    const value: Cell = cellOf(cell);
    const formula = cell.f ?? (cell.si ? this.shared(sheet, row, column) : undefined);
    return formula ? { row, column, value, formula } : { row, column, value };
  }

  /** A formula filled down is kept once; the others know how far they stand from it. */
  private shared(sheet: string, row: number, column: number): string | undefined {
    const { engine, unitId } = this.open.context;
    return (
      engine.injector.get(FormulaDataModel).getFormulaStringByCell(row, column, sheet, unitId) ?? undefined
    );
  }

  /** Lists are short: they are told again when they read differently. */
  private lists(): Lists {
    const { context } = this.open;
    const { injector } = context.engine;
    const unit = context.unitId;
    const names = injector.get(IDefinedNamesService).getDefinedNameMap(unit) ?? {};
    const tables = injector.get(ISuperTableService).getTableMap(unit) ?? new Map();
    const others = injector.get(IOtherFormulaManagerService).getOtherFormulaData()[unit] ?? {};
    const lists: Required<Lists> = {
      sheets: context.workbook
        .getSheets()
        .map((sheet) => ({ id: sheet.getSheetId(), name: sheet.getName() })),
      names: Object.values(names).map(({ name, formulaOrRefString }) => ({
        name,
        refersTo: formulaOrRefString,
      })),
      tables: [...tables].map(([name, { sheetId, range }]) => ({
        name,
        sheet: sheetId,
        area: areaOf(range),
      })),
      watches: Object.entries(others).flatMap(([sheet, rules]) =>
        Object.entries(rules ?? {}).map(([id, { f, ranges }]) => ({
          id,
          sheet,
          formula: f,
          areas: ranges.map(areaOf),
        })),
      ),
    };
    const texts = Object.fromEntries(Object.entries(lists).map(([key, list]) => [key, JSON.stringify(list)]));
    const before = this.told;
    this.told = texts;
    return Object.fromEntries(Object.entries(lists).filter(([key]) => texts[key] !== before[key]));
  }
}

interface Range {
  readonly startRow: number;
  readonly endRow: number;
  readonly startColumn: number;
  readonly endColumn: number;
}
const areaOf = ({ startRow, endRow, startColumn, endColumn }: Range) => ({
  top: startRow,
  bottom: endRow,
  left: startColumn,
  right: endColumn,
});

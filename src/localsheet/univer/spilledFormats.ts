import type { ICellData, Nullable } from '@univerjs/core';
import { CellValueType, InterceptorEffectEnum } from '@univerjs/core';
import { FormulaDataModel } from '@univerjs/engine-formula';
import { INTERCEPTOR_POINT, SheetInterceptorService } from '@univerjs/sheets';
import type { Engine } from './engine';
import { isGeneral } from './generalNumbers';

/**
 * The formats of an answer stand in its first row; the rows that spill below are shown in the format of their
 * column there. Only the drawing is changed: a file keeps the formats that were set.
 */

interface Spill {
  readonly startColumn: number;
  readonly endColumn: number;
  readonly endRow: number;
}
/** Spilled ranges by row and column of their formulas. */
export type Spills = Readonly<Record<number, Readonly<Record<number, Nullable<Spill>>> | undefined>>;

/** First row of the spilled range that a cell below that row lies in. */
export function topOfSpill(spills: Spills, row: number, column: number): number | undefined {
  for (let top = row - 1; top >= 0; top--)
    for (const spill of Object.values(spills[top] ?? {}))
      if (spill && spill.endRow >= row && spill.startColumn <= column && spill.endColumn >= column)
        return top;
  return undefined;
}

const isNumber = (cell: Nullable<ICellData>): cell is ICellData =>
  cell?.t === CellValueType.NUMBER && typeof cell.v === 'number';

interface Place {
  readonly unitId: string;
  readonly subUnitId: string;
  readonly row: number;
  readonly col: number;
}
/** What the engine keeps by workbook, sheet, row and column. */
type ByPlace = Readonly<Record<string, Nullable<Record<string, Nullable<object>>>>>;
const ofSheet = (kept: unknown, { unitId, subUnitId }: Place): object =>
  (kept as ByPlace)[unitId]?.[subUnitId] ?? {};

const isSpilled = (model: FormulaDataModel, place: Place): boolean => {
  const rows = ofSheet(model.getArrayFormulaCellData(), place) as Record<number, Record<number, unknown>>;
  return rows[place.row]?.[place.col] !== undefined;
};

export function showSpilledFormats({ injector }: Engine): void {
  const model = injector.get(FormulaDataModel);
  injector.get(SheetInterceptorService).intercept(INTERCEPTOR_POINT.CELL_CONTENT, {
    // Between the values that spill (100) and the number formats (10).
    priority: 50,
    effect: InterceptorEffectEnum.Value | InterceptorEffectEnum.Style,
    handler(cell, location, next) {
      if (!isNumber(cell) || location.rawData?.f || !isSpilled(model, location)) return next(cell);
      const own = location.workbook.getStyles().get(cell.s) ?? {};
      if (!isGeneral(own.n?.pattern)) return next(cell);
      const top = topOfSpill(
        ofSheet(model.getArrayFormulaRange(), location) as Spills,
        location.row,
        location.col,
      );
      const format =
        top === undefined ? undefined : location.worksheet.getComposedCellStyle(top, location.col).n;
      return next(isGeneral(format?.pattern) ? cell : { ...cell, s: { ...own, n: format ?? null } });
    },
  });
}

import type { ICellData, Nullable } from '@univerjs/core';
import { CellValueType, InterceptorEffectEnum } from '@univerjs/core';
import { INTERCEPTOR_POINT, SheetInterceptorService } from '@univerjs/sheets';
import type { Engine } from './engine';

const DIGIT = 7.6;
const MARGIN = 8;
const MOST = 11;
const FEWEST = 4;

/**
 * A number without a format, rounded for show so that it fits its column, as Excel does; the value itself is
 * not touched.
 */
export function shortNumber(value: number, columnWidth: number): string {
  const room = Math.max(FEWEST, Math.min(MOST, Math.floor((columnWidth - MARGIN) / DIGIT)));
  const plain = String(value);
  const size = Math.abs(value);
  if (plain.length <= room && (size === 0 || (size >= 1e-9 && size < 1e11))) return plain;
  const sign = value < 0 ? 1 : 0;
  const digits = size.toFixed(0).length;
  if (size >= 1e-4 && size < 1e11 && digits + sign <= room)
    return String(Number(value.toFixed(Math.max(0, room - digits - 1 - sign))));
  const mantissa = Math.max(0, room - 6 - sign);
  return value
    .toExponential(mantissa)
    .replace(/\.?0+e/, 'e')
    .replace(/e([+-])(\d)$/, 'E$10$2')
    .replace('e', 'E');
}

/** A number format that says nothing. */
export const isGeneral = (pattern: string | undefined): boolean =>
  pattern === undefined || pattern === '' || pattern === 'General';

const isUnformatted = (
  cell: Nullable<ICellData>,
  pattern: string | undefined,
): cell is ICellData & { v: number } =>
  cell !== null &&
  cell !== undefined &&
  cell.t === CellValueType.NUMBER &&
  typeof cell.v === 'number' &&
  !Number.isInteger(cell.v) &&
  isGeneral(pattern);

export function showGeneralNumbers(engine: Engine): void {
  engine.injector.get(SheetInterceptorService).intercept(INTERCEPTOR_POINT.CELL_CONTENT, {
    // After the engine's own number formats.
    priority: 5,
    effect: InterceptorEffectEnum.Value,
    handler(cell, location, next) {
      const pattern = location.workbook.getStyles().getStyleByCell(location.rawData ?? cell ?? undefined)
        ?.n?.pattern;
      if (!isUnformatted(cell, pattern)) return next(cell);
      return next({
        ...cell,
        v: shortNumber(cell.v, location.worksheet.getColumnWidth(location.col)),
        t: CellValueType.NUMBER,
      });
    },
  });
}

import type { ICellData, IObjectMatrixPrimitiveType, Nullable, Workbook } from '@univerjs/core';
import { ICommandService, IUniverInstanceService, numfmt, UniverInstanceType } from '@univerjs/core';
import { SetRangeValuesMutation, SetWorksheetColWidthMutation } from '@univerjs/sheets';
import type { AnswerFormats } from '../../build/sheet/formats';
import type { Engine } from './engine';

/**
 * A formula that is one call of ours gives its cell the format of what it answers (grams, a date with its
 * hour, a share), where the cell has none of its own. The format goes in together with the formula, so one
 * undo takes both back.
 */
const ONE_CALL = /^=\s*(SPAWN\.[A-Z0-9.]+)\s*\(/i;

/** The name of the function when the whole formula is one call of it. */
export function onlyCall(formula: string): string | undefined {
  const [start, name] = ONE_CALL.exec(formula) ?? [];
  if (start === undefined || name === undefined) return undefined;
  let depth = 1;
  let isText = false;
  for (let at = start.length; at < formula.length; at++) {
    const sign = formula[at];
    if (sign === '"') isText = !isText;
    else if (isText) continue;
    else if (sign === '(' || sign === '{') depth++;
    else if (sign === ')' || sign === '}') depth--;
    if (depth === 0) return formula.slice(at + 1).trim() === '' ? name.toUpperCase() : undefined;
  }
  return undefined;
}

/** Pixels a sign takes, and the edges of a cell. */
const [SIGN, EDGES] = [7.2, 14];
/**
 * Width a column needs for a date: one that is cut short reads as another hour. Undefined for other formats,
 * whose numbers are looked at with their column.
 */
export function widthForDate(format: string): number | undefined {
  if (!/[dmy]/i.test(format) || format === 'General') return undefined;
  return Math.ceil(numfmt.format(format, LONG_DATE).length * SIGN + EDGES);
}
/** 28 September 2033, 22:48: two digits everywhere. */
const LONG_DATE = 48_850.95;

type CellData = IObjectMatrixPrimitiveType<Nullable<ICellData>>;
interface Params {
  readonly unitId: string;
  readonly subUnitId: string;
  readonly cellValue?: CellData;
}

const hasFormat = (cell: Nullable<ICellData>): boolean =>
  typeof cell?.s === 'object' && cell.s !== null && cell.s.n !== undefined && cell.s.n !== null;

export function formatAnswers({ injector }: Engine, formats: AnswerFormats): void {
  const units = injector.get(IUniverInstanceService);
  const commands = injector.get(ICommandService);
  const widen = ({ unitId, subUnitId }: Params, column: number, format: string): void => {
    const needed = widthForDate(format);
    const sheet = units
      .getUnit<Workbook>(unitId, UniverInstanceType.UNIVER_SHEET)
      ?.getSheetBySheetId(subUnitId);
    if (needed === undefined || !sheet || sheet.getColumnWidth(column) >= needed) return;
    const ranges = [{ startRow: 0, endRow: sheet.getRowCount() - 1, startColumn: column, endColumn: column }];
    const change = { unitId, subUnitId, ranges, colWidth: needed };
    // After the formula itself has gone in.
    queueMicrotask(() => void commands.executeCommand(SetWorksheetColWidthMutation.id, change));
  };
  const give = (params: Params, cells: CellData, row: number, column: number, format: string): void => {
    const sheet = units
      .getUnit<Workbook>(params.unitId, UniverInstanceType.UNIVER_SHEET)
      ?.getSheetBySheetId(params.subUnitId);
    const isGeneral = (sheet?.getComposedCellStyle(row, column).n?.pattern ?? 'General') === 'General';
    const line = (cells[row] ??= {});
    const cell = (line[column] ??= {});
    if (!sheet || !isGeneral || format === '@' || hasFormat(cell) || typeof cell.s === 'string') return;
    cell.s = { ...cell.s, n: { pattern: format } };
    widen(params, column, format);
  };
  commands.beforeCommandExecuted(({ id, params }, options) => {
    if (id !== SetRangeValuesMutation.id || options?.onlyLocal === true) return;
    const given = params as Params | undefined;
    const cells = given?.cellValue;
    if (!given || !cells) return;
    for (const [row, line] of Object.entries(cells))
      for (const [column, cell] of Object.entries<Nullable<ICellData>>({ ...line })) {
        const name = cell?.f ? onlyCall(cell.f) : undefined;
        for (const [i, format] of (name === undefined ? [] : (formats[name] ?? [])).entries())
          give(given, cells, Number(row), Number(column) + i, format);
      }
  });
}

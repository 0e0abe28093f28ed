import type { ICellData, Nullable } from '@univerjs/core';
import { CellValueType, isNullCell } from '@univerjs/core';
import type {
  ArrayValueObject,
  BaseReferenceObject,
  BaseValueObject,
  FunctionVariantType,
} from '@univerjs/engine-formula';
import { ERROR_TYPE_SET } from '@univerjs/engine-formula';
import type { Cell, ErrorCode, Grid } from '../../../shared/base/values';

/**
 * What the engine hands a function → what Excel would hand it. Blank and omitted are null, a range is rows of
 * cells, numbers keep their raw value whatever their format, dates stay serials. Errors stay errors, never
 * text.
 */
type Loose = Nullable<ICellData>;

const error = (code: unknown): Cell => ({ error: String(code) as ErrorCode });
const isErrorText = (value: unknown): boolean =>
  typeof value === 'string' && ERROR_TYPE_SET.has(value as never);

/** The plain types of a stored cell; anything else goes through the engine's own reading. */
const plainCell = (cell: ICellData): Cell | undefined => {
  const { v, t } = cell;
  if (cell.p || v === null || v === undefined) return undefined;
  if (t === CellValueType.NUMBER && typeof v === 'number' && !cell.s) return v;
  if (t === CellValueType.BOOLEAN) return v === true || v === 1 || v === '1';
  if (t === CellValueType.STRING || t === CellValueType.FORCE_STRING)
    return isErrorText(v) ? error(v) : String(v);
  return undefined;
};

export function readValue(object: Nullable<BaseValueObject>): Cell {
  if (!object || object.isNull()) return null;
  if (object.isError()) return error(object.getValue());
  const value: unknown = object.getValue();
  return typeof value === 'number' || typeof value === 'string' || typeof value === 'boolean' ? value : null;
}

const readStored = (reference: BaseReferenceObject, cell: Loose): Cell => {
  if (!cell || isNullCell(cell)) return null;
  return plainCell(cell) ?? readValue(reference.getCellValueObject(cell));
};

// One range is often an argument of thousands of cells: the engine keeps one array per recalculation, so does
// this.
const grids = new WeakMap<ArrayValueObject, Grid>();

const readArray = (array: ArrayValueObject): Grid => {
  const kept = grids.get(array);
  if (kept) return kept;
  const columns = array.getColumnCount();
  const grid = Array.from({ length: array.getRowCount() }, (_, row) => {
    const line = array.getArrayValue()[row] ?? [];
    return Array.from({ length: columns }, (_blank, column) => readValue(line[column]));
  });
  grids.set(array, grid);
  return grid;
};

const isBlankRow = (row: readonly Cell[]): boolean => row.every((cell) => cell === null);

/** A whole column stands for what is in it: the empty rows below are left out. */
const withoutEmptyTail = (grid: Grid): Grid => {
  let end = grid.length;
  while (end > 1 && isBlankRow(grid[end - 1] ?? [])) end--;
  return end === grid.length ? grid : grid.slice(0, end);
};

function readReference(reference: BaseReferenceObject): Cell | Grid {
  if (reference.getForcedSheetName() && !reference.getForcedSheetId()) return error('#REF!');
  const { startRow, startColumn, endRow, endColumn } = reference.getRangePosition();
  if (startRow < 0 || startColumn < 0) return error('#REF!');
  if (startRow === endRow && startColumn === endColumn)
    return readStored(reference, reference.getCellData(startRow, startColumn));
  const grid = readArray(reference.toArrayValueObject());
  const isWholeColumn = startRow === 0 && endRow >= reference.getActiveSheetRowCount() - 1;
  return isWholeColumn ? withoutEmptyTail(grid) : grid;
}

export function readArgument(variant: FunctionVariantType): Cell | Grid {
  if (variant.isReferenceObject()) return readReference(variant as BaseReferenceObject);
  const value = variant as BaseValueObject;
  if (value.isLambda()) return error('#VALUE!');
  return value.isArray() ? readArray(value as ArrayValueObject) : readValue(value);
}

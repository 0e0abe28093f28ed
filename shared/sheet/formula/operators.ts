import type { Cell, CellError, Grid } from '../../base/values';
import { isError, isGrid } from '../../base/values';
import type { Operand } from './evaluate';

/** Excel's operators on cells, and how they stretch over ranges. */

export const toNumber = (cell: Cell): number | CellError => {
  if (typeof cell === 'number') return cell;
  if (cell === null) return 0;
  if (typeof cell === 'boolean') return cell ? 1 : 0;
  if (isError(cell)) return cell;
  const trimmed = cell.trim();
  const read = trimmed === '' ? NaN : Number(trimmed.endsWith('%') ? trimmed.slice(0, -1) : trimmed);
  return Number.isFinite(read)
    ? trimmed.endsWith('%')
      ? read / 100
      : read
    : { error: '#VALUE!', message: `"${cell}" is not a number.` };
};

export const toText = (cell: Cell): string | CellError => {
  if (cell === null) return '';
  if (isError(cell)) return cell;
  if (typeof cell === 'boolean') return cell ? 'TRUE' : 'FALSE';
  if (typeof cell === 'string') return cell;
  // Most numbers that are joined to a text are small whole ones; rounding to 15 digits is slow.
  return Number.isInteger(cell) && Math.abs(cell) < 1e15
    ? String(cell)
    : String(Number(cell.toPrecision(15)));
};

/**
 * Numbers come before text, text before FALSE and TRUE; text ignores letter case; a blank is 0, "" or FALSE.
 */
const rank = (cell: Cell): number => (typeof cell === 'number' ? 0 : typeof cell === 'string' ? 1 : 2);
export function compare(a: Cell, b: Cell): number {
  const left = a ?? (typeof b === 'string' ? '' : typeof b === 'boolean' ? false : 0);
  const right = b ?? (typeof left === 'string' ? '' : typeof left === 'boolean' ? false : 0);
  if (rank(left) !== rank(right)) return rank(left) - rank(right);
  if (typeof left === 'string' && typeof right === 'string') {
    const [x, y] = [left.toLowerCase(), right.toLowerCase()];
    return x < y ? -1 : x > y ? 1 : 0;
  }
  return Number(left) - Number(right);
}

function result(operator: string, x: number, y: number): number {
  switch (operator) {
    case '+':
      return x + y;
    case '-':
      return x - y;
    case '*':
      return x * y;
    case '/':
      return x / y;
    default:
      return x === 0 && y === 0 ? NaN : x ** y;
  }
}

/** What no cell can hold, above 1.8E+308 or undefined, is #NUM!. */
const arithmetic = (operator: string, x: number, y: number): Cell => {
  if (y === 0 && operator === '/') return { error: '#DIV/0!' };
  if (x === 0 && y < 0 && operator === '^') return { error: '#DIV/0!' };
  const answer = result(operator, x, y);
  return Number.isFinite(answer) ? answer : { error: '#NUM!' };
};

const comparison = (operator: string, order: number): boolean => {
  switch (operator) {
    case '=':
      return order === 0;
    case '<>':
      return order !== 0;
    case '<':
      return order < 0;
    case '>':
      return order > 0;
    case '<=':
      return order <= 0;
    default:
      return order >= 0;
  }
};

/** One function for each operator, so that a grid of cells does not ask again which one it is. */
type OnCells = (a: Cell, b: Cell) => Cell;
const compares =
  (operator: string): OnCells =>
  (a, b) => {
    if (typeof a === 'number' && typeof b === 'number') return comparison(operator, a - b);
    if (isError(a)) return a;
    return isError(b) ? b : comparison(operator, compare(a, b));
  };
const calculates =
  (operator: string): OnCells =>
  (a, b) => {
    if (typeof a === 'number' && typeof b === 'number') return arithmetic(operator, a, b);
    if (isError(a)) return a;
    if (isError(b)) return b;
    const x = toNumber(a);
    if (isError(x)) return x;
    const y = toNumber(b);
    return isError(y) ? y : arithmetic(operator, x, y);
  };
const joins: OnCells = (a, b) => {
  if (isError(a)) return a;
  return isError(b) ? b : `${String(toText(a))}${String(toText(b))}`;
};
const ON_CELLS: Readonly<Record<string, OnCells>> = {
  '&': joins,
  ...Object.fromEntries(['=', '<>', '<', '>', '<=', '>='].map((one) => [one, compares(one)])),
  ...Object.fromEntries(['+', '-', '*', '/', '^'].map((one) => [one, calculates(one)])),
};

const heightOf = (value: Operand): number => (isGrid(value) ? value.length : 1);
const widthOf = (value: Operand): number => (isGrid(value) ? (value[0]?.length ?? 0) : 1);
const at = (value: Operand, row: number, column: number): Cell => {
  if (!isGrid(value)) return value;
  const line = value[value.length === 1 ? 0 : row];
  const cell = line?.[line.length === 1 ? 0 : column];
  return cell === undefined ? { error: '#N/A' } : cell;
};

/** Applies a cell function over operands that stretch to the largest of them. */
export function stretch(operands: readonly Operand[], apply: (cells: readonly Cell[]) => Cell): Operand {
  if (!operands.some(isGrid)) return apply(operands as readonly Cell[]);
  const rows = Math.max(...operands.map(heightOf));
  const columns = Math.max(...operands.map(widthOf));
  const grid: Grid = Array.from({ length: rows }, (_, row) =>
    Array.from({ length: columns }, (__, column) => apply(operands.map((value) => at(value, row, column)))),
  );
  return grid;
}

function overTwo(a: Operand, b: Operand, apply: OnCells): Grid {
  const rows = Math.max(heightOf(a), heightOf(b));
  const columns = Math.max(widthOf(a), widthOf(b));
  const grid: Cell[][] = [];
  for (let row = 0; row < rows; row++) {
    const line: Cell[] = [];
    for (let column = 0; column < columns; column++) line.push(apply(at(a, row, column), at(b, row, column)));
    grid.push(line);
  }
  return grid;
}

export function binary(operator: string, a: Operand, b: Operand): Operand {
  const apply = ON_CELLS[operator] ?? joins;
  return isGrid(a) || isGrid(b) ? overTwo(a, b, apply) : apply(a, b);
}

export const unary = (operator: string, of: Operand): Operand =>
  stretch([of], ([cell = null]) => {
    if (operator === '+') return cell;
    const x = toNumber(cell);
    return isError(x) ? x : operator === '%' ? x / 100 : -x;
  });

import type { Arg } from '../../shared/functions/invoke';
import type { Cell, CellError, ErrorCode, Grid } from '../../shared/base/values';
import { isError, isGrid, refuse } from '../../shared/base/values';

/** Between what Excel hands to a custom function and what the catalogue understands, both ways. */

const CODES: readonly ErrorCode[] = [
  '#VALUE!',
  '#N/A',
  '#NUM!',
  '#DIV/0!',
  '#REF!',
  '#NAME?',
  '#NULL!',
  '#SPILL!',
  '#CALC!',
  '#BUSY!',
];
const isCode = (value: unknown): value is ErrorCode =>
  typeof value === 'string' && (CODES as readonly string[]).includes(value);

type Bag = Readonly<Record<string, unknown>>;
const messageOf = (bag: Bag): { message?: string } =>
  typeof bag.message === 'string' && bag.message !== '' ? { message: bag.message } : {};

/**
 * Errors come as objects of the runtime's own class, older hosts hand over their text; formatted numbers wrap
 * a plain one.
 */
function objectCell(bag: Bag): Cell {
  if (isCode(bag.code)) return { error: bag.code, ...messageOf(bag) };
  if (isCode(bag.error)) return { error: bag.error, ...messageOf(bag) };
  if (isCode(bag.basicValue)) return { error: bag.basicValue };
  if (bag.type === 'Empty' || bag.basicType === 'Empty') return null;
  if ('basicValue' in bag) return toCell(bag.basicValue);
  return { error: '#VALUE!', message: 'The cell holds a linked or rich value. Use a plain number or text.' };
}

export function toCell(value: unknown): Cell {
  switch (typeof value) {
    case 'number':
    case 'boolean':
      return value;
    case 'string':
      return isCode(value) ? { error: value } : value;
    case 'object':
      return value === null ? null : objectCell(value as Bag);
    default:
      return null;
  }
}

const isPlain = (value: unknown): value is number | boolean | null =>
  typeof value === 'number' || typeof value === 'boolean' || value === null;

/**
 * A row of cells, in the array it came in when there is nothing to translate: columns of ten thousand pass
 * here.
 */
function toLine(line: unknown): readonly Cell[] {
  if (!Array.isArray(line)) return [toCell(line)];
  const cells: readonly unknown[] = line;
  for (const cell of cells) if (!isPlain(cell)) return cells.map(toCell);
  return cells as readonly Cell[];
}

function toGrid(lines: readonly unknown[], name: string): Grid | CellError {
  const grid = lines.map(toLine);
  const width = grid[0]?.length ?? 0;
  for (const [row, line] of grid.entries())
    if (line.length !== width)
      return refuse(
        `${name}: row ${row + 1} has ${line.length} cells where row 1 has ${width}. Give one rectangular range.`,
      );
  return grid;
}

/**
 * An argument left out arrives as null; a range as rows of cells. A range that is not a rectangle is answered
 * with a sentence.
 */
export function toArg(value: unknown, name: string): Arg {
  if (!Array.isArray(value)) return toCell(value);
  const lines: readonly unknown[] = value;
  const [first] = lines;
  if (lines.length === 0 || (lines.length === 1 && Array.isArray(first) && first.length === 0)) return null;
  return toGrid(lines, name);
}

/** A fault in how a range was handed over is told apart from an error that is the argument. */
export interface Args {
  readonly args: readonly Arg[];
  readonly fault: CellError | undefined;
}
export function toArgs(values: readonly unknown[], names: readonly string[]): Args {
  const args: Arg[] = [];
  for (let i = 0; i < names.length; i++) {
    const given = values[i];
    const arg = toArg(given, names[i] ?? '');
    if (Array.isArray(given) && isError(arg)) return { args, fault: arg };
    args.push(arg);
  }
  return { args, fault: undefined };
}

/** The part of the runtime's error class that is used; hosts bring their own. */
export type ErrorClass = new (code: CustomFunctions.ErrorCode, message?: string) => unknown;
type Shown = number | string | boolean | object;

/** The runtime knows seven codes; the others are states a host sets itself. */
const RUNTIME_CODES: readonly ErrorCode[] = [
  '#VALUE!',
  '#N/A',
  '#NUM!',
  '#DIV/0!',
  '#REF!',
  '#NAME?',
  '#NULL!',
];
export function toHostError(error: CellError, Failure: ErrorClass): object {
  const code = RUNTIME_CODES.includes(error.error) ? error.error : '#VALUE!';
  // Only these two carry a text; with others some builds refuse the second argument.
  const carriesText = code === '#VALUE!' || code === '#N/A';
  return new Failure(
    code as CustomFunctions.ErrorCode,
    ...(carriesText && error.message ? [error.message] : []),
  ) as object;
}

const toShown = (cell: Cell, Failure: ErrorClass): Shown => {
  if (cell === null) return '';
  return isError(cell) ? toHostError(cell, Failure) : cell;
};

/**
 * The engine writes a call stack into every error made, which takes a hundred times longer than the answer
 * and is never read.
 */
function withoutStacks<T>(work: () => T): T {
  const engine = Error as { stackTraceLimit?: number };
  const before = engine.stackTraceLimit;
  engine.stackTraceLimit = 0;
  try {
    return work();
  } finally {
    if (before === undefined) delete engine.stackTraceLimit;
    else engine.stackTraceLimit = before;
  }
}

/**
 * Always rows of cells, because every function is declared to answer with a matrix; a blank is '' (null would
 * show as 0).
 */
export function toHost(result: Cell | Grid, Failure: ErrorClass): Shown[][] {
  if (!isGrid(result)) return [[toShown(result, Failure)]];
  return result.length === 0
    ? [['']]
    : withoutStacks(() => result.map((line) => line.map((cell) => toShown(cell, Failure))));
}

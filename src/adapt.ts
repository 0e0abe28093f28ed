import type { Arg } from '../shared/catalogue/invoke';
import type { Cell, CellError, ErrorCode, Grid } from '../shared/values';
import { isError, isGrid, refuse } from '../shared/values';

/** Between what Excel hands to a custom function and what the catalogue understands, both ways. */

const CODES: readonly ErrorCode[] = ['#VALUE!', '#N/A', '#NUM!', '#DIV/0!', '#REF!', '#NAME?', '#NULL!', '#SPILL!', '#CALC!', '#BUSY!'];
const isCode = (value: unknown): value is ErrorCode => typeof value === 'string' && (CODES as readonly string[]).includes(value);

type Bag = Readonly<Record<string, unknown>>;
const messageOf = (bag: Bag): { message?: string } => (typeof bag.message === 'string' && bag.message !== '' ? { message: bag.message } : {});

/** Errors come as objects of the runtime's own class, older hosts hand over their text; formatted numbers wrap a plain one. */
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

/** An argument left out arrives as null; a range as rows of cells. A range that is not a rectangle is answered with a sentence. */
export function toArg(value: unknown, name: string): { readonly arg: Arg } | CellError {
  if (!Array.isArray(value)) return { arg: toCell(value) };
  const lines: readonly unknown[] = value;
  if (lines.length === 0) return { arg: null };
  const grid = lines.map((line) => (Array.isArray(line) ? line.map(toCell) : [toCell(line)]));
  const width = grid[0]?.length ?? 0;
  const odd = grid.findIndex((line) => line.length !== width);
  if (odd >= 0) return refuse(`${name}: row ${odd + 1} has ${grid[odd]?.length ?? 0} cells where row 1 has ${width}. Give one rectangular range.`);
  return { arg: width === 0 ? null : grid };
}

export type ArgsOrError = { readonly args: readonly Arg[] } | CellError;
export function toArgs(values: readonly unknown[], names: readonly string[]): ArgsOrError {
  const args: Arg[] = [];
  for (const [i, name] of names.entries()) {
    const read = toArg(values[i], name);
    if (isError(read)) return read;
    args.push(read.arg);
  }
  return { args };
}

/** The part of the runtime's error class that is used; hosts bring their own. */
export type ErrorClass = new (code: CustomFunctions.ErrorCode, message?: string) => unknown;
type Shown = number | string | boolean | object;

/** The runtime knows seven codes; the others are states a host sets itself. */
const RUNTIME_CODES: readonly ErrorCode[] = ['#VALUE!', '#N/A', '#NUM!', '#DIV/0!', '#REF!', '#NAME?', '#NULL!'];
export function toHostError(error: CellError, Failure: ErrorClass): object {
  const code = RUNTIME_CODES.includes(error.error) ? error.error : '#VALUE!';
  // Only these two carry a text; with others some builds refuse the second argument.
  const carriesText = code === '#VALUE!' || code === '#N/A';
  return new Failure(code as CustomFunctions.ErrorCode, ...(carriesText && error.message ? [error.message] : [])) as object;
}

const toShown = (cell: Cell, Failure: ErrorClass): Shown => {
  if (cell === null) return '';
  return isError(cell) ? toHostError(cell, Failure) : cell;
};

/** Always rows of cells, because every function is declared to answer with a matrix; a blank is '' (null would show as 0). */
export function toHost(result: Cell | Grid, Failure: ErrorClass): Shown[][] {
  if (!isGrid(result)) return [[toShown(result, Failure)]];
  const width = Math.max(1, ...result.map((line) => line.length));
  if (result.length === 0) return [['']];
  return result.map((line) => Array.from({ length: width }, (_, c) => toShown(line[c] ?? null, Failure)));
}

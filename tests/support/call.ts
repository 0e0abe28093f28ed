import './printed';
import { findFunction } from '../../shared/catalogue';
import { invoke } from '../../shared/functions/invoke';
import type { Cell, Grid } from '../../shared/base/values';
import { isError, isGrid } from '../../shared/base/values';

/** Calls a sheet function by its name without the prefix. */
export const call = (id: string, ...args: readonly (Cell | Grid)[]): Cell | Grid => {
  const fn = findFunction(`SPAWN.${id}`);
  if (!fn) throw new Error(`no function ${id}`);
  return invoke(fn, args);
};

/** The rows of an answer that is a grid. */
export const grid = (id: string, ...args: readonly (Cell | Grid)[]): Grid => {
  const got = call(id, ...args);
  if (!isGrid(got)) throw new Error(`${id} gave one cell: ${JSON.stringify(got)}`);
  return got;
};

/** An answer that is a number. */
export const number = (id: string, ...args: readonly (Cell | Grid)[]): number => {
  const got = call(id, ...args);
  const first = isGrid(got) ? got[0]?.[0] : got;
  if (typeof first !== 'number') throw new Error(`${id} gave no number: ${JSON.stringify(got)}`);
  return first;
};

/** Code and sentence of the first error of an answer, '' when there is none. */
export const refusal = (id: string, ...args: readonly (Cell | Grid)[]): string => {
  const got = call(id, ...args);
  const found = (isGrid(got) ? got.flat() : [got]).find(isError);
  return found ? `${found.error} ${found.message ?? ''}` : '';
};

/** A list as a column of cells. */
export const columnOf = (values: readonly Cell[]): Grid => values.map((v) => [v]);

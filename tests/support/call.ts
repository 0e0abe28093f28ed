import { findFunction } from '../../shared/catalogue';
import { invoke } from '../../shared/catalogue/invoke';
import type { Cell, Grid } from '../../shared/values';
import { isError, isGrid } from '../../shared/values';

type Given = Cell | Grid;

/** Calls a sheet function by its name without the prefix. */
export const call = (id: string, ...args: readonly Given[]): Cell | Grid => {
  const fn = findFunction(`SPAWN.${id}`);
  if (!fn) throw new Error(`no function ${id}`);
  return invoke(fn, args);
};

/** The rows of an answer; one cell is one row. */
export const rowsOf = (id: string, ...args: readonly Given[]): Grid => {
  const got = call(id, ...args);
  return isGrid(got) ? got : [[got]];
};

/** The sentence of the first error in an answer, '' when there is none. */
export const sentenceOf = (id: string, ...args: readonly Given[]): string => {
  const found = rowsOf(id, ...args).flat().find(isError);
  return found && isError(found) ? `${found.error} ${found.message ?? ''}` : '';
};

export const column = (...values: readonly Cell[]): Grid => values.map((v) => [v]);

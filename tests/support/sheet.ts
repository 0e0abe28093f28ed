import type { Cell, Grid } from '../../shared/base/values';
import { isError, isGrid } from '../../shared/base/values';
import { call } from './call';

/** The rows of an answer; one cell is one row. */
export const rowsOf = (id: string, ...args: readonly (Cell | Grid)[]): Grid => {
  const got = call(id, ...args);
  return isGrid(got) ? got : [[got]];
};

/** Code and sentence of the first error in an answer, '' when there is none. */
export const sentenceOf = (id: string, ...args: readonly (Cell | Grid)[]): string => {
  const found = rowsOf(id, ...args)
    .flat()
    .find(isError);
  return found ? `${found.error} ${found.message ?? ''}` : '';
};

export const column = (...values: readonly Cell[]): Grid => values.map((v) => [v]);

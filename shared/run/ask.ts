import { findFunction } from '../catalogue';
import { invoke } from '../functions/invoke';
import type { Cell, CellError, Grid } from '../base/values';
import { isError, isGrid } from '../base/values';

/** The plan asks the same functions the sheet calls, so that both give the same number. */
export type Answer = number | CellError;

const cellOf = (name: string, args: readonly (Cell | Grid | undefined)[]): Cell | Grid => {
  const fn = findFunction(name);
  return fn ? invoke(fn, args) : { error: '#NAME?', message: `There is no function ${name}.` };
};

export const ask = (name: string, ...args: readonly (Cell | Grid | undefined)[]): Answer => {
  const got = cellOf(name, args);
  const cell = isGrid(got) ? (got[0]?.[0] ?? null) : got;
  return typeof cell === 'number' || isError(cell)
    ? cell
    : { error: '#VALUE!', message: `${name} gave no number.` };
};

/** One row of answers: the fields of an estimate or a window. */
export const askRow = (name: string, ...args: readonly (Cell | Grid | undefined)[]): readonly Answer[] => {
  const got = cellOf(name, args);
  const row = isGrid(got) ? (got[0] ?? []) : [got];
  return row.map((cell) =>
    typeof cell === 'number' || isError(cell)
      ? cell
      : { error: '#VALUE!' as const, message: `${name} gave no number.` },
  );
};

/** Does arithmetic on answers; the first error stands for the whole. */
export const withAnswers = (
  answers: readonly Answer[],
  compute: (...numbers: number[]) => number,
): Answer => {
  const numbers: number[] = [];
  for (const answer of answers) {
    if (isError(answer)) return answer;
    numbers.push(answer);
  }
  const result = compute(...numbers);
  return Number.isFinite(result)
    ? result
    : { error: '#NUM!', message: 'There is no answer for these numbers.' };
};

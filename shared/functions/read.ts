import type { Cell, CellError, Grid } from '../base/values';
import { isError, isGrid } from '../base/values';
import type { NamedParam } from './define';
import type { ChoiceParam, FlagParam, NumberLimits, NumberParam, SeriesParam, TextsParam } from './params';
import { englishOption } from './choiceWords';
import { numberWithUnit } from '../units/typedUnits';
import * as say from './sentences';

/** Cells → checked arguments. A CellError in place of a value is the sentence the user gets. */

export type ScalarParam = (NumberParam | ChoiceParam | FlagParam) & { readonly name: string };
export type ListParam = (SeriesParam | TextsParam) & { readonly name: string };
type Scalar = number | string | boolean | undefined;

export const isListParam = (param: NamedParam): param is ListParam =>
  param.kind === 'series' || param.kind === 'texts';

/** '' is what a formula leaves to mean blank; 0 is a number and never blank. */
export const isBlank = (cell: Cell | undefined): boolean =>
  cell === null || cell === undefined || cell === '';

const inBounds = ({ min, max, above, whole }: NumberLimits, got: number): boolean =>
  got >= (min ?? -Infinity) &&
  got <= (max ?? Infinity) &&
  got > (above ?? -Infinity) &&
  (!whole || Number.isInteger(got));

const checkNumber = (
  param: (NumberParam | SeriesParam) & { name: string },
  got: number,
  row?: number,
): number | CellError => {
  const { published, quantity } = param;
  if (!Number.isFinite(got))
    return say.wrongType(say.place(param.name, row), param, quantity.unit, String(got));
  if (!inBounds(param, got))
    return say.outOfBounds(say.place(param.name, row), param, quantity.unit, got, quantity.slip?.(got));
  if (published && !inBounds({ doc: '', ...published }, got))
    return say.beyondPublished(say.place(param.name, row), param, quantity.unit, got);
  return got;
};

const readNumber = (
  param: (NumberParam | SeriesParam) & { name: string },
  cell: Cell,
  row?: number,
): number | CellError => {
  const { unit } = param.quantity;
  const got = typeof cell === 'string' ? (numberWithUnit(cell, unit) ?? cell) : cell;
  return typeof got === 'number'
    ? checkNumber(param, got, row)
    : say.wrongType(say.place(param.name, row), param, unit, got);
};

const choiceOf = ({ choices, aliases = {} }: ChoiceParam, text: string): string | undefined => {
  const word = text.toLowerCase();
  return (
    choices.find((c) => c.toLowerCase() === word) ??
    Object.entries(aliases).find(([alias]) => alias.toLowerCase() === word)?.[1]
  );
};

const readChoice = (param: ChoiceParam & { name: string }, cell: Cell): string | CellError => {
  if (typeof cell === 'string') {
    const found = choiceOf(param, cell.trim()) ?? choiceOf(param, englishOption(cell.trim()) ?? '');
    if (found !== undefined) return found;
  }
  return say.notAChoice(param.name, param, cell);
};

const readFlag = (param: FlagParam & { name: string }, cell: Cell): boolean | CellError => {
  if (typeof cell === 'boolean') return cell;
  if (cell === 1 || cell === 0) return cell === 1;
  return say.notAFlag(param.name, cell);
};

export function readScalar(param: ScalarParam, cell: Cell | undefined): Scalar | CellError {
  if (cell === null || cell === undefined || cell === '') {
    if (param.kind === 'flag' || param.default !== undefined) return param.default;
    return param.optional ? undefined : say.missing(param);
  }
  if (param.kind === 'number') return readNumber(param, cell);
  return param.kind === 'choice' ? readChoice(param, cell) : readFlag(param, cell);
}

const flatten = (arg: Cell | Grid | undefined): readonly Cell[] =>
  isGrid(arg) ? arg.flat() : arg === undefined ? [] : [arg];
const given = (arg: Cell | Grid | undefined): boolean => flatten(arg).some((cell) => !isBlank(cell));

interface Lists {
  readonly [name: string]: readonly (number | string)[] | undefined;
}

const refusesZero = (param: ListParam): boolean =>
  param.kind === 'series' && !(inBounds(param, 0) && inBounds({ doc: '', ...param.published }, 0));

/**
 * Rows up to the last one that holds something. Some builds of Excel hand blank cells over as 0: where a 0 cannot
 * be, rows of nothing but zeros at the end are the blank rows they look like.
 */
function filledRows(members: readonly (readonly [ListParam, readonly Cell[]])[], rows: number): number {
  const isEmptyRow = (row: number): boolean =>
    members.every(([, cells]) => isBlank(cells[row]) || cells[row] === 0) &&
    members.some(([param, cells]) => cells[row] === 0 && refusesZero(param));
  let last = rows;
  while (last > 0 && isEmptyRow(last - 1)) last -= 1;
  // Nothing but zeros is no list with its end left open: the sentence about the first one says more.
  return last === 0 ? rows : last;
}

/** Row numbers (0-based) of a pair that hold data, or the error that stops the reading. */
function rowsOfPair(members: readonly (readonly [ListParam, readonly Cell[]])[]): number[] | CellError {
  const [first] = members;
  if (!first) return [];
  for (const [param, cells] of members)
    if (cells.length !== first[1].length)
      return say.pairDiffers(param.name, cells.length, first[0].name, first[1].length);
  const kept: number[] = [];
  const last = filledRows(members, first[1].length);
  for (let row = 0; row < last; row++) {
    const blank = members.filter(
      ([param, cells]) => param.kind === 'series' && param.blanks !== 'keep' && isBlank(cells[row]),
    );
    const filled = members.find(([, cells]) => !isBlank(cells[row]));
    if (!filled) continue;
    const refused = blank.find(([param]) => param.kind === 'series' && param.blanks === 'refuse');
    if (refused) return say.blankInPair(refused[0].name, row + 1, filled[0].name);
    if (blank.length === 0) kept.push(row);
  }
  return kept;
}

function readItems(
  param: ListParam,
  cells: readonly Cell[],
  kept: readonly number[],
): (number | string)[] | CellError {
  const items: (number | string)[] = [];
  for (const row of kept) {
    const cell = cells[row] ?? null;
    if (param.kind === 'texts') {
      if (isError(cell)) return say.wrongType(say.place(param.name, row + 1), param, '', cell);
      items.push(cell === null ? '' : String(cell));
      continue;
    }
    if (param.blanks === 'keep' && isBlank(cell)) {
      items.push(NaN);
      continue;
    }
    const value = readNumber(param, cell, cells.length > 1 ? row + 1 : undefined);
    if (isError(value)) return value;
    items.push(value);
  }
  return items.length < param.atLeast ? say.tooFew(param.name, param.atLeast, items.length) : items;
}

/** All list arguments of a call, rows of a pair kept together. */
export function readLists(
  params: readonly ListParam[],
  argOf: (param: ListParam) => Cell | Grid | undefined,
): Lists | CellError {
  const lists: Record<string, readonly (number | string)[] | undefined> = {};
  const isGiven = (param: ListParam): boolean => given(argOf(param));
  // A column of a pair that may stay blank from top to bottom counts as there when its neighbours are filled.
  const present = params.filter(
    (param) =>
      isGiven(param) ||
      (param.atLeast === 0 &&
        argOf(param) !== undefined &&
        params.some((other) => other.pair === param.pair && isGiven(other))),
  );
  for (const param of params) {
    if (present.includes(param)) continue;
    if (!param.optional)
      return argOf(param) === null || argOf(param) === undefined
        ? say.missing(param)
        : say.tooFew(param.name, param.atLeast, 0);
    lists[param.name] = undefined;
  }
  for (const group of new Set(present.map((p) => p.pair ?? p))) {
    const members = present
      .filter((p) => (p.pair ?? p) === group)
      .map((p) => [p, flatten(argOf(p))] as const);
    const kept = rowsOfPair(members);
    if (isError(kept)) return kept;
    for (const [param, cells] of members) {
      // A lone list simply skips its blanks.
      const items = readItems(param, cells, kept);
      if (isError(items)) return items;
      lists[param.name] = items;
    }
  }
  return lists;
}

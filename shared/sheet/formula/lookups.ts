import type { Cell, CellError, Grid } from '../../base/values';
import { isError, isGrid } from '../../base/values';
import type { EagerFunction, Operand } from './evaluate';
import { compare } from './operators';

/** Lookups, and the sums that pick their rows by criteria. */

const grid = (value: Operand | undefined): Grid => (isGrid(value) ? value : [[value ?? null]]);
const cell = (value: Operand | undefined): Cell =>
  isGrid(value) ? (value[0]?.[0] ?? null) : (value ?? null);
const notFound: CellError = { error: '#N/A' };

const sameKind = (a: Cell, b: Cell): boolean => typeof a === typeof b && a !== null && !isError(a);

/** Whether a cell equals a value: what is looked for is made ready once, cells are many. */
function equalTo(wanted: Cell): (item: Cell) => boolean {
  if (typeof wanted !== 'string') return (item) => sameKind(item, wanted) && compare(item, wanted) === 0;
  const small = wanted.toLowerCase();
  return (item) => typeof item === 'string' && (item === wanted || item.toLowerCase() === small);
}

/** Position of a value in a list; kind 1: last not above, −1: last not below, 0: equal. */
function position(wanted: Cell, list: readonly Cell[], kind: number): number {
  if (kind === 0) return list.findIndex(equalTo(wanted));
  let found = -1;
  for (const [i, item] of list.entries()) {
    if (!sameKind(item, wanted)) continue;
    if (compare(item, wanted) * kind > 0) break;
    found = i;
  }
  return found;
}

/** Row and column asked of INDEX; a single line takes its one number along itself. 0 means all. */
const indexPlace = (
  rows: Grid,
  first: Operand | undefined,
  second: Operand | undefined,
): readonly [number, number] => {
  const number = (of: Operand | undefined): number => (of === undefined ? 0 : Math.trunc(Number(cell(of))));
  if (second === undefined && rows.length === 1) return [1, number(first)];
  return [number(first), second === undefined && rows[0]?.length === 1 ? 1 : number(second)];
};

const index: EagerFunction = ([source, rowArg, columnArg]) => {
  const rows = grid(source);
  const [row, column] = indexPlace(rows, rowArg, columnArg);
  if (row < 0 || column < 0 || Number.isNaN(row + column)) return { error: '#VALUE!' };
  if (row > rows.length || column > (rows[0]?.length ?? 0)) return { error: '#REF!' };
  const lines = row === 0 ? rows : rows.slice(row - 1, row);
  const found = column === 0 ? lines : lines.map((line) => line.slice(column - 1, column));
  return found.length === 1 && found[0]?.length === 1 ? (found[0][0] ?? null) : found;
};

const match: EagerFunction = ([wanted, list, kind]) => {
  const rows = grid(list);
  const sense = kind === undefined ? 1 : Number(cell(kind));
  const isColumn = rows[0]?.length === 1;
  // A column is looked through as it stands: a table's lines all ask for their place in the same one.
  const isEqual = sense === 0 && isColumn ? equalTo(cell(wanted)) : undefined;
  const found = isEqual
    ? rows.findIndex((line) => isEqual(line[0] ?? null))
    : position(cell(wanted), rows.flat(), sense);
  return found < 0 ? notFound : found + 1;
};

/** The line of `results` at a place of the lookup list, which runs down or across. */
const lineAt = (results: Grid, at: number, isDown: boolean): Operand => {
  const line = isDown ? results.slice(at, at + 1) : results.map((row) => row.slice(at, at + 1));
  return line.length === 1 && line[0]?.length === 1 ? (line[0][0] ?? null) : line;
};

/** Nearest item on one side of the wanted value: side −1 below, 1 above. */
function nearest(wanted: Cell, list: readonly Cell[], side: number): number {
  const exact = position(wanted, list, 0);
  if (exact >= 0) return exact;
  let best = -1;
  for (const [i, item] of list.entries()) {
    if (!sameKind(item, wanted) || compare(item, wanted) * side < 0) continue;
    const rival = list[best];
    if (rival === undefined || compare(item, rival) * side < 0) best = i;
  }
  return best;
}

const xlookup: EagerFunction = ([wanted, list, results, ifMissing, mode]) => {
  const lookup = grid(list);
  const kind = mode === undefined ? 0 : Number(cell(mode));
  const flat = lookup.flat();
  const at = kind === 0 ? position(cell(wanted), flat, 0) : nearest(cell(wanted), flat, kind);
  if (at < 0) return ifMissing ?? notFound;
  return lineAt(grid(results), at, lookup.length > 1 || lookup[0]?.length === 1);
};

const vlookup: EagerFunction = ([wanted, table, column, near]) => {
  const rows = grid(table);
  const kind = near === undefined || cell(near) === true || cell(near) === 1 ? 1 : 0;
  const at = position(
    cell(wanted),
    rows.map((row) => row[0] ?? null),
    kind,
  );
  const place = Math.trunc(Number(cell(column)));
  if (!(place >= 1)) return { error: '#VALUE!' };
  if (place > (rows[0]?.length ?? 0)) return { error: '#REF!' };
  return at < 0 ? notFound : (rows[at]?.[place - 1] ?? null);
};

/** Numbers are most of what is asked for: compared as they are. */
function ofNumbers(operator: string, wanted: number): (item: Cell) => boolean {
  switch (operator) {
    case '<>':
      return (item) => item !== wanted;
    case '<':
      return (item) => typeof item === 'number' && item < wanted;
    case '>':
      return (item) => typeof item === 'number' && item > wanted;
    case '<=':
      return (item) => typeof item === 'number' && item <= wanted;
    case '>=':
      return (item) => typeof item === 'number' && item >= wanted;
    default:
      return (item) => item === wanted;
  }
}

/** A criterion as SUMIFS reads it: ">=5", "<>x", "x", 5. */
function criterion(of: Cell): (item: Cell) => boolean {
  const [, operator = '=', rest = ''] =
    typeof of === 'string' ? (/^(<=|>=|<>|=|<|>)?(.*)$/s.exec(of) ?? []) : [];
  const wanted: Cell =
    typeof of === 'string' ? (rest.trim() !== '' && Number.isFinite(Number(rest)) ? Number(rest) : rest) : of;
  if (typeof wanted === 'number') return ofNumbers(operator, wanted);
  return (item) => {
    const equal =
      wanted === '' ? item === null || item === '' : sameKind(item, wanted) && compare(item, wanted) === 0;
    if (operator === '=') return equal;
    if (operator === '<>') return !equal;
    if (!sameKind(item, wanted)) return false;
    const order = compare(item, wanted);
    return operator === '<'
      ? order < 0
      : operator === '>'
        ? order > 0
        : operator === '<='
          ? order <= 0
          : order >= 0;
  };
}

interface Condition {
  readonly list: Grid;
  readonly fits: (item: Cell) => boolean;
}
const conditionsOf = (args: readonly (Operand | undefined)[]): Condition[] => {
  const found: Condition[] = [];
  for (let i = 0; i + 1 < args.length; i += 2)
    found.push({ list: grid(args[i]), fits: criterion(cell(args[i + 1])) });
  return found;
};
/** Places of a range at which every condition holds, row by row; nothing is copied on the way. */
function eachChosen(
  shape: Grid,
  conditions: readonly Condition[],
  take: (row: number, column: number) => void,
): void {
  for (let row = 0; row < shape.length; row++) {
    const width = shape[row]?.length ?? 0;
    for (let column = 0; column < width; column++) {
      let isChosen = true;
      for (const { list, fits } of conditions)
        if (!fits(list[row]?.[column] ?? null)) {
          isChosen = false;
          break;
        }
      if (isChosen) take(row, column);
    }
  }
}
const picked = (values: Grid, args: readonly (Operand | undefined)[]): number[] => {
  const numbers: number[] = [];
  eachChosen(values, conditionsOf(args), (row, column) => {
    const value = values[row]?.[column];
    if (typeof value === 'number') numbers.push(value);
  });
  return numbers;
};
const howMany = (args: readonly (Operand | undefined)[]): number => {
  let n = 0;
  eachChosen(grid(args[0]), conditionsOf(args), () => n++);
  return n;
};
const total = (xs: readonly number[]): number => xs.reduce((sum, x) => sum + x, 0);

/** A list in place of a criterion gives a list of answers, one for each; several lists go side by side. */
const eachCriterion =
  (first: number, answer: EagerFunction): EagerFunction =>
  (args) => {
    const isCriterion = (i: number): boolean => i >= first && (i - first) % 2 === 1;
    const listAt = (i: number): Grid | undefined => {
      const arg = args[i];
      return isCriterion(i) && isGrid(arg) && arg.length * (arg[0]?.length ?? 0) > 1 ? arg : undefined;
    };
    const lists = args.map((_, i) => listAt(i));
    const shape = lists.find((list) => list !== undefined);
    if (!shape) return answer(args);
    return shape.map((line, r) =>
      line.map((_, c): Cell => {
        const one = answer(args.map((arg, i) => (lists[i] ? (lists[i][r]?.[c] ?? null) : arg)));
        return isGrid(one) ? (one[0]?.[0] ?? null) : one;
      }),
    );
  };

export const LOOKUPS: Readonly<Record<string, EagerFunction>> = {
  INDEX: index,
  MATCH: match,
  XLOOKUP: xlookup,
  VLOOKUP: vlookup,
  SUMIFS: eachCriterion(1, ([values, ...conditions]) => total(picked(grid(values), conditions))),
  SUMIF: ([range, test, values]) => total(picked(grid(values ?? range), [range, test])),
  AVERAGEIFS: ([values, ...conditions]) => {
    const xs = picked(grid(values), conditions);
    return xs.length === 0 ? { error: '#DIV/0!' } : total(xs) / xs.length;
  },
  COUNTIFS: eachCriterion(0, (conditions) => howMany(conditions)),
  COUNTIF: (conditions) => howMany(conditions),
  ROWS: ([value]) => grid(value).length,
  COLUMNS: ([value]) => grid(value)[0]?.length ?? 0,
};

import type { Cell, CellError, Grid } from '../base/values';
import { isError, isGrid, noSolution } from '../base/values';
import type { Column, Columns, SheetFunction } from './define';
import { HEADINGS } from './define';
import type { ListParam, ScalarParam } from './read';
import { isBlank, isListParam, readLists, readScalar } from './read';
import * as say from './sentences';

export type Arg = Cell | Grid | undefined;
type Args = Record<string, unknown>;

interface Plan {
  readonly scalars: readonly ScalarParam[];
  readonly lists: readonly ListParam[];
  readonly positions: ReadonlyMap<string, number>;
}
const plans = new WeakMap<SheetFunction, Plan>();

const planOf = (fn: SheetFunction): Plan => {
  let plan = plans.get(fn);
  if (!plan) {
    plan = {
      scalars: fn.params.filter((p): p is ScalarParam => !isListParam(p)),
      lists: fn.params.filter(isListParam),
      positions: new Map(fn.params.map((p, i) => [p.name, i])),
    };
    plans.set(fn, plan);
  }
  return plan;
};

/** A 1 × 1 range is its cell; [] cannot come from a sheet. */
const unwrap = (arg: Arg): Arg => (isGrid(arg) && arg.length === 1 && arg[0]?.length === 1 ? arg[0][0] : arg);

/** A number the sheet can show, or the error that says there is none. */
const finish = (result: unknown): Cell => {
  if (typeof result === 'number')
    return Number.isFinite(result) ? result : noSolution('There is no answer for these numbers.');
  return result === undefined || result === null ? '' : (result as Cell);
};

export const headingText = (column: Column): string => {
  const { unit } = column.quantity;
  return unit === '' || unit === 'text' || unit === 'date' || unit === 'date and time'
    ? column.title
    : `${column.title} (${unit})`;
};
const headingRow = (columns: Columns): Cell[] => Object.values(columns).map(headingText);
const rowOf = (columns: Columns, result: unknown): Cell[] =>
  Object.keys(columns).map((key) => finish(isError(result) ? result : (result as Args)[key]));

interface Shape {
  readonly rows: number;
  readonly columns: number;
}

/** A parameter with its argument; a single cell is read once for all places of the answer. */
interface Given {
  readonly param: ScalarParam;
  readonly arg: Arg;
  /** What a single cell says; a range is read place by place. */
  readonly value: unknown;
}
const givenTo = (plan: Plan, args: readonly Arg[]): readonly Given[] =>
  plan.scalars.map((param) => {
    const arg = args[plan.positions.get(param.name) ?? -1];
    return { param, arg, value: isGrid(arg) ? undefined : readScalar(param, arg) };
  });

const shapeOf = (given: readonly Given[]): Shape => {
  let rows = 1;
  let columns = 1;
  for (const { arg } of given) {
    if (!isGrid(arg)) continue;
    rows = Math.max(rows, arg.length);
    columns = Math.max(columns, arg[0]?.length ?? 1);
  }
  return { rows, columns };
};

/** The cell of a range at a place of the answer: single rows and columns stretch, anything else must fit. */
const cellAt = (arg: Grid, row: number, column: number): Cell | 'misfit' => {
  const line = arg[arg.length === 1 ? 0 : row];
  if (!line) return 'misfit';
  const cell = line[arg[0]?.length === 1 ? 0 : column];
  return cell === undefined ? 'misfit' : cell;
};

const size = (n: number, m: number): string => (m === 1 ? `${n} rows` : `${n} × ${m} cells`);

/**
 * Reads one place of the answer into `into`; returns an error, or 'blank' when every range argument is blank
 * there.
 */
function readPlace(
  given: readonly Given[],
  shape: Shape,
  row: number,
  column: number,
  into: Args,
): CellError | 'blank' | undefined {
  let ranged = 0;
  let blank = 0;
  let failure: CellError | undefined;
  for (const { param, arg, value: single } of given) {
    let value = single;
    if (isGrid(arg)) {
      const cell = cellAt(arg, row, column);
      if (cell === 'misfit')
        return say.sizesDiffer(
          param.name,
          size(arg.length, arg[0]?.length ?? 0),
          'another argument',
          size(shape.rows, shape.columns),
        );
      ranged++;
      if (isBlank(cell)) blank++;
      value = readScalar(param, cell);
    }
    if (isError(value)) failure ??= value;
    else into[param.name] = value;
  }
  return ranged > 0 && ranged === blank ? 'blank' : failure;
}

function answerAt(
  fn: SheetFunction,
  plan: Plan,
  given: readonly Given[],
  shape: Shape,
  row: number,
  column: number,
  lists: Args | undefined,
): unknown {
  const into: Args = {};
  // Key by key: an object made by spreading is slow to add to, ten times so over a long range.
  if (lists) for (const param of plan.lists) into[param.name] = lists[param.name];
  const stop = readPlace(given, shape, row, column, into);
  if (stop === 'blank') return '';
  return stop ?? fn.compute(into);
}

function spread(
  fn: SheetFunction,
  plan: Plan,
  given: readonly Given[],
  shape: Shape,
  lists: Args | undefined,
): Grid {
  const grid: Cell[][] = [];
  for (let row = 0; row < shape.rows; row++) {
    const line: Cell[] = [];
    for (let column = 0; column < shape.columns; column++)
      line.push(finish(answerAt(fn, plan, given, shape, row, column, lists)));
    grid.push(line);
  }
  return grid;
}

function fieldGrid(
  fn: SheetFunction,
  columns: Columns,
  plan: Plan,
  given: readonly Given[],
  shape: Shape,
  lists: Args | undefined,
): Cell | Grid {
  const wide = given.find(({ arg }) => isGrid(arg) && (arg[0]?.length ?? 1) > 1);
  if (wide) return say.oneColumnOnly(wide.param.name);
  const grid: Cell[][] = [];
  for (let row = 0; row < shape.rows; row++) {
    const answer = answerAt(fn, plan, given, shape, row, 0, lists);
    grid.push(answer === '' ? Object.keys(columns).map(() => '') : rowOf(columns, answer));
  }
  return withHeadings(given, columns, grid);
}

function withHeadings(given: readonly Given[], columns: Columns, grid: Cell[][]): Cell | Grid {
  const asked = given.find(({ param }) => param.name === HEADINGS);
  const wanted = asked && (isGrid(asked.arg) ? readScalar(asked.param, asked.arg[0]?.[0]) : asked.value);
  if (isError(wanted)) return wanted;
  return wanted ? [headingRow(columns), ...grid] : grid;
}

function table(
  fn: SheetFunction,
  columns: Columns,
  plan: Plan,
  given: readonly Given[],
  shape: Shape,
  lists: Args | undefined,
): Cell | Grid {
  const range = given.find(({ arg }) => isGrid(arg));
  if (range) return say.oneCellOnly(range.param.name, shape.rows, shape.columns);
  const answer = answerAt(fn, plan, given, shape, 0, 0, lists);
  if (isError(answer)) return answer;
  return withHeadings(
    given,
    columns,
    (answer as readonly unknown[]).map((row) => rowOf(columns, row)),
  );
}

/**
 * Calls a declared function with what a sheet hands over: checks every argument from its declaration, lets
 * ranges broadcast as built-in functions do, and answers with a cell or a grid that spills. Never throws for
 * bad input.
 */
export function invoke(fn: SheetFunction, cells: readonly Arg[]): Cell | Grid {
  if (cells.length > fn.params.length) return say.tooMany(fn.name, fn.params.length, cells.length);
  const plan = planOf(fn);
  const args = cells.map(unwrap);
  const lists =
    plan.lists.length > 0 ? readLists(plan.lists, (p) => args[plan.positions.get(p.name) ?? -1]) : undefined;
  if (isError(lists)) return lists;
  const given = givenTo(plan, args);
  const shape = shapeOf(given);
  const { returns } = fn;
  if (returns.kind === 'rows') return table(fn, returns.columns, plan, given, shape, lists);
  if (returns.kind === 'fields') return fieldGrid(fn, returns.columns, plan, given, shape, lists);
  if (shape.rows === 1 && shape.columns === 1) return finish(answerAt(fn, plan, given, shape, 0, 0, lists));
  return spread(fn, plan, given, shape, lists);
}

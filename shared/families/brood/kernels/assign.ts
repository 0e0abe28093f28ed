/** State of the search; index 0 is no row and no column. */
interface Search {
  readonly cost: readonly (readonly number[])[];
  readonly rowPotential: Float64Array;
  readonly columnPotential: Float64Array;
  /** Row seated in each column, 0 for none. */
  readonly rowOf: Int32Array;
}

/**
 * Least-cost assignment of rows to columns (rows ≤ columns), by shortest augmenting paths with potentials.
 * In: costs. Out: the column of each row. Exact while costs are whole numbers below 2^53.
 * Source: the Hungarian method, KUHN55. Example: [[1, 2], [1, 5]] → [1, 0].
 */
export function assign(cost: readonly (readonly number[])[]): number[] {
  const columns = cost[0]?.length ?? 0;
  const search: Search = {
    cost,
    rowPotential: new Float64Array(cost.length + 1),
    columnPotential: new Float64Array(columns + 1),
    rowOf: new Int32Array(columns + 1),
  };
  for (let row = 1; row <= cost.length; row++) seat(search, row);
  const columnOf = cost.map(() => -1);
  for (let column = 1; column <= columns; column++) {
    const row = search.rowOf[column] ?? 0;
    if (row > 0) columnOf[row - 1] = column - 1;
  }
  return columnOf;
}

const get = (list: Float64Array | Int32Array, i: number): number => list[i] ?? NaN;

/** Looks at every open column from the row seated at `at`; returns the nearest column. */
function reach(
  search: Search,
  at: number,
  least: Float64Array,
  cameFrom: Int32Array,
  isDone: Uint8Array,
): number {
  const row = get(search.rowOf, at);
  const line = search.cost[row - 1] ?? [];
  let next = 0;
  for (let column = 1; column < least.length; column++) {
    if (isDone[column] === 1) continue;
    const slack =
      (line[column - 1] ?? Infinity) - get(search.rowPotential, row) - get(search.columnPotential, column);
    if (slack < get(least, column)) {
      least[column] = slack;
      cameFrom[column] = at;
    }
    if (next === 0 || get(least, column) < get(least, next)) next = column;
  }
  return next;
}

/** Moves the potentials so that the nearest column costs nothing more. */
function lower(
  { rowOf, rowPotential, columnPotential }: Search,
  by: number,
  least: Float64Array,
  isDone: Uint8Array,
): void {
  for (let column = 0; column < least.length; column++) {
    if (isDone[column] !== 1) {
      least[column] = get(least, column) - by;
      continue;
    }
    const row = get(rowOf, column);
    rowPotential[row] = get(rowPotential, row) + by;
    columnPotential[column] = get(columnPotential, column) - by;
  }
}

/** Seats one more row along the cheapest chain of moves. */
function seat(search: Search, row: number): void {
  const { rowOf } = search;
  const least = new Float64Array(rowOf.length).fill(Infinity);
  const cameFrom = new Int32Array(rowOf.length);
  const isDone = new Uint8Array(rowOf.length);
  let at = 0;
  rowOf[0] = row;
  do {
    isDone[at] = 1;
    const next = reach(search, at, least, cameFrom, isDone);
    lower(search, get(least, next), least, isDone);
    at = next;
  } while (rowOf[at] !== 0);
  while (at !== 0) {
    const before = get(cameFrom, at);
    rowOf[at] = get(rowOf, before);
    at = before;
  }
}

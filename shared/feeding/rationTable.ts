/** A hatchery's own ration table: rows of (weight, ration), or (temperature, weight, ration). */
export interface RationRow {
  readonly weight: number;
  readonly ration: number;
  /** Left out in a table that does not depend on temperature. */
  readonly temperature?: number;
}

/** Straight line between neighbours of a list sorted by x; NaN outside it. */
const between = (points: readonly (readonly [x: number, y: number])[], x: number): number => {
  const after = points.findIndex(([at]) => at >= x);
  const right = points[after];
  if (!right) return NaN;
  if (right[0] === x) return right[1];
  const left = points[after - 1];
  return left ? left[1] + ((right[1] - left[1]) * (x - left[0])) / (right[0] - left[0]) : NaN;
};

const byWeight = (rows: readonly RationRow[], weight: number): number =>
  between(rows.map((r) => [Math.log(r.weight), r.ration] as const).sort((a, b) => a[0] - b[0]), Math.log(weight));

/**
 * Ration at a weight (and temperature) from the user's own table.
 *
 * Between two rows: straight line over the logarithm of weight, then straight line over temperature. Outside the table: NaN, the
 * table is never stretched. In: g, °C. Out: share of body weight per day. Source: DEFINITION (the figures are the user's).
 * Example: rows 1 g 10 % and 4 g 6 %: at 2 g 8 %.
 */
export const rationAt = (rows: readonly RationRow[], weight: number, temperature?: number): number => {
  if (temperature === undefined || rows.every((r) => r.temperature === undefined)) return byWeight(rows, weight);
  const temperatures = [...new Set(rows.map((r) => r.temperature ?? NaN))].sort((a, b) => a - b);
  // Only the rows beside the wished temperature matter; the others may cover other weights.
  const upper = temperatures.find((t) => t >= temperature);
  const lower = [...temperatures].reverse().find((t) => t <= temperature);
  if (upper === undefined || lower === undefined) return NaN;
  const at = (t: number): number => byWeight(rows.filter((r) => r.temperature === t), weight);
  return upper === lower ? at(upper) : between([[lower, at(lower)], [upper, at(upper)]], temperature);
};

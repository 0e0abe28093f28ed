/** A hatchery's own ration table: rows of (weight, ration), or (temperature, weight, ration). */
export interface RationRow {
  readonly weight: number;
  readonly ration: number;
  /** Left out in a table that does not depend on temperature. */
  readonly temperature?: number;
}

/** Columns of a sheet as rows of a table. Example: [1], [0.1] → one row without a temperature. */
export const rationRows = (
  weights: readonly number[],
  rations: readonly number[],
  temperatures?: readonly number[],
): readonly RationRow[] =>
  weights.map((weight, i) => {
    const temperature = temperatures?.[i];
    return { weight, ration: rations[i] ?? NaN, ...(temperature === undefined ? {} : { temperature }) };
  });

type Line = readonly (readonly [x: number, y: number])[];

/** Straight line between neighbours of a list sorted by x; NaN outside it. */
const between = (points: Line, x: number): number => {
  const after = points.findIndex(([at]) => at >= x);
  const right = points[after];
  if (!right) return NaN;
  if (right[0] === x) return right[1];
  const left = points[after - 1];
  return left ? left[1] + ((right[1] - left[1]) * (x - left[0])) / (right[0] - left[0]) : NaN;
};

const overLogWeight = (rows: readonly RationRow[]): Line =>
  rows.map((r) => [Math.log(r.weight), r.ration] as const).sort((a, b) => a[0] - b[0]);

/**
 * Ration at a weight (and temperature) from the user's own table; the table is sorted once for many look-ups.
 *
 * Between two rows: straight line over the logarithm of weight, then straight line over temperature. Outside
 * the table: NaN, the table is never stretched. In: g, °C. Out: share of body weight per day. Source:
 * DEFINITION (the figures are the user's). Example: rows 1 g 10 % and 4 g 6 %: at 2 g 8 %.
 */
export const rationTable = (
  rows: readonly RationRow[],
): ((weight: number, temperature?: number) => number) => {
  if (rows.every((r) => r.temperature === undefined)) {
    const line = overLogWeight(rows);
    return (weight) => between(line, Math.log(weight));
  }
  const temperatures = [...new Set(rows.map((r) => r.temperature ?? NaN))].sort((a, b) => a - b);
  const lines = temperatures.map((t) => overLogWeight(rows.filter((r) => r.temperature === t)));
  return (weight, temperature = NaN) => {
    // Only the rows beside the wished temperature matter; the others may cover other weights.
    const upper = temperatures.findIndex((t) => t >= temperature);
    const isExact = temperatures[upper] === temperature;
    const at = (i: number): number => between(lines[i] ?? [], Math.log(weight));
    if (upper < 0 || (upper === 0 && !isExact)) return NaN;
    return isExact
      ? at(upper)
      : between(
          [
            [temperatures[upper - 1] ?? NaN, at(upper - 1)],
            [temperatures[upper] ?? NaN, at(upper)],
          ],
          temperature,
        );
  };
};

/** Numbers of columns as relations are searched in them: some rows, and how nearly each must be met. */

export type Numbers = ArrayLike<number>;
export const at = (list: Numbers | undefined, i: number): number => list?.[i] ?? NaN;

export const LEAST_ROWS = 4;
export const SAMPLE = 40;
export const LEAST_HOLDING = 0.66;

/** Behind the point, in most numbers. */
const USUAL_DIGITS = 3;
/** How nearly a typed number must follow: half a unit of its last written digit, or a part in two hundred. */
export function roundingOf(value: number): number {
  const size = Math.abs(value);
  if (Number.isInteger(size)) return 0.51;
  // Most are written with up to three decimals; the text of the number says it for the others.
  for (let [digits, power, step] = [1, 10, 0.1]; digits <= USUAL_DIGITS; digits++, power *= 10, step /= 10)
    if (Math.abs(size * power - Math.round(size * power)) < 1e-9 * power * Math.max(1, size))
      return 0.51 * step;
  const text = String(size);
  const point = text.indexOf('.');
  return point < 0 ? 0.51 : 0.51 * 10 ** -(text.length - point - 1);
}
/** A number that ends in zeros may have been rounded to them. */
const zerosOf = (value: number): number => {
  if (!Number.isInteger(value) || value === 0) return 0;
  let step = 1;
  while (value % (step * 10) === 0) step *= 10;
  return step > 1 ? 0.51 * step : 0;
};

/** No number is rounded by more. */
const MOST_ROUNDED = 0.03;
export const near = (seen: number, expected: number, slack = 0.006): boolean =>
  Math.abs(seen - expected) <=
  Math.max(
    slack * Math.abs(expected),
    roundingOf(seen),
    Math.min(zerosOf(seen), MOST_ROUNDED * Math.abs(expected)),
  );

/** Rows spread over the table, those with most numbers first. */
export function sampleRows(columns: readonly Numbers[], length: number): number[] {
  const step = Math.max(1, Math.floor(length / SAMPLE));
  const rows: number[] = [];
  for (let i = 0; i < length; i += step) if (columns.some((list) => !Number.isNaN(at(list, i)))) rows.push(i);
  return rows;
}

/** The sampled numbers of a column, with how nearly each must be met. */
export interface Sampled {
  readonly seen: Float64Array;
  readonly rounding: Float64Array;
  readonly zeros: Float64Array;
  readonly n: number;
}
export function sampledFrom(seen: Float64Array): Sampled {
  return {
    seen,
    rounding: seen.map(roundingOf),
    zeros: seen.map(zerosOf),
    n: seen.reduce((n, x) => (Number.isNaN(x) ? n : n + 1), 0),
  };
}
export const isNear = (
  { seen, rounding, zeros }: Sampled,
  i: number,
  expected: number,
  slack: number,
): boolean => {
  const size = Math.abs(expected);
  const off = Math.abs((seen[i] ?? NaN) - expected);
  return (
    off <= slack * size || off <= (rounding[i] ?? 0) || off <= Math.min(zeros[i] ?? 0, MOST_ROUNDED * size)
  );
};

/** Middle and spread that a few wild values cannot move. */
export interface Robust { readonly middle: number; readonly spread: number; readonly n: number }

/** Makes the median absolute deviation comparable with a standard deviation (normal distribution: 1 / 0.6745). */
const TO_DEVIATION = 1.4826;

const middleOf = (sorted: Float64Array): number => {
  const half = sorted.length >> 1;
  return sorted.length % 2 === 1 ? sorted[half] ?? NaN : ((sorted[half - 1] ?? NaN) + (sorted[half] ?? NaN)) / 2;
};

/** NaN are left out. */
export function robust(values: ArrayLike<number>): Robust {
  const kept = new Float64Array(values.length);
  let n = 0;
  for (let i = 0; i < values.length; i++) {
    const value = values[i] ?? NaN;
    if (Number.isFinite(value)) kept[n++] = value;
  }
  const sorted = kept.subarray(0, n).sort();
  const middle = middleOf(sorted);
  const away = Float64Array.from(sorted, (x) => Math.abs(x - middle)).sort();
  return { middle, spread: middleOf(away) * TO_DEVIATION, n };
}

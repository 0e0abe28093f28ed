/**
 * Value below which a share p of the sorted numbers lies, straight between neighbours (rule 7 of Hyndman and
 * Fan 1996, textbook).
 */
export const quantileOf = (sorted: ArrayLike<number>, p: number): number => {
  const at = p * (sorted.length - 1);
  const i = Math.floor(at);
  const low = sorted[i] ?? NaN;
  return low + ((sorted[Math.min(i + 1, sorted.length - 1)] ?? low) - low) * (at - i);
};

export interface Range {
  readonly p10: number;
  readonly p50: number;
  readonly p90: number;
}
export const rangeOf = (sorted: ArrayLike<number>): Range => ({
  p10: quantileOf(sorted, 0.1),
  p50: quantileOf(sorted, 0.5),
  p90: quantileOf(sorted, 0.9),
});

/** Share of the sorted numbers that reach the wish. */
export const shareReaching = (sorted: ArrayLike<number>, wanted: number): number => {
  let low = 0;
  let high = sorted.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((sorted[middle] ?? NaN) < wanted) low = middle + 1;
    else high = middle;
  }
  return sorted.length === 0 ? NaN : (sorted.length - low) / sorted.length;
};

export interface SizeSpread {
  readonly fish: number;
  readonly mean: number;
  readonly deviation: number;
  readonly variation: number;
  readonly smallest: number;
  readonly largest: number;
}

/**
 * Mean, standard deviation (n − 1) and coefficient of variation of a weighed sample.
 * In: g, two or more. Source: DEFINITION. Example: 1, 2, 3 → mean 2, deviation 1, variation 0.5.
 */
export const sizeSpread = (weights: readonly number[]): SizeSpread => {
  const fish = weights.length;
  const mean = weights.reduce((a, b) => a + b, 0) / fish;
  const deviation = Math.sqrt(weights.reduce((sum, w) => sum + (w - mean) ** 2, 0) / (fish - 1));
  const ends = weights.reduce(([low, high], w) => [Math.min(low, w), Math.max(high, w)] as const, [
    Infinity,
    -Infinity,
  ] as readonly [number, number]);
  return { fish, mean, deviation, variation: deviation / mean, smallest: ends[0], largest: ends[1] };
};

export interface SizeClass {
  readonly from: number;
  readonly to: number;
  readonly fish: number;
  readonly share: number;
  readonly mean: number;
}

/**
 * Sorts a sample into size classes: below the first limit, between limits (lower limit included), from the
 * last one up. In: weights g, rising limits g. Out: one row per class; the mean of an empty class is NaN.
 * Source: DEFINITION. Example: 1, 2, 3 with one limit 2 → one fish below, two from 2 up.
 */
export const sizeClasses = (weights: readonly number[], limits: readonly number[]): readonly SizeClass[] =>
  [0, ...limits].map((from, i) => {
    const to = limits[i] ?? Infinity;
    const inside = weights.filter((w) => w >= from && w < to);
    return {
      from,
      to,
      fish: inside.length,
      share: inside.length / weights.length,
      mean: inside.reduce((a, b) => a + b, 0) / inside.length,
    };
  });

/** Middle and spread that a few wild values cannot move. */
export interface Robust {
  readonly middle: number;
  readonly spread: number;
  readonly n: number;
}

/**
 * Makes the median absolute deviation comparable with a standard deviation (normal distribution: 1 / 0.6745).
 */
const TO_DEVIATION = 1.4826;

/** Puts the k-th smallest at place k, everything smaller before it (Hoare's selection, no full sort). */
function select(list: Float64Array, k: number): number {
  let low = 0;
  let high = list.length - 1;
  while (low < high) {
    const pivot = list[(low + high) >> 1] ?? NaN;
    let i = low;
    let j = high;
    while (i <= j) {
      while ((list[i] ?? NaN) < pivot) i++;
      while ((list[j] ?? NaN) > pivot) j--;
      if (i > j) break;
      const held = list[i] ?? NaN;
      list[i++] = list[j] ?? NaN;
      list[j--] = held;
    }
    if (k <= j) high = j;
    else if (k >= i) low = i;
    else break;
  }
  return list[k] ?? NaN;
}

/** The value that this share of the others lies below; the list is left in another order. */
export const rankOf = (list: Float64Array, share: number): number =>
  select(list, Math.floor(share * (list.length - 1)));

/** Middle value; the list is left in another order. */
function middleOf(list: Float64Array): number {
  const half = list.length >> 1;
  const upper = select(list, half);
  if (list.length % 2 === 1 || list.length === 0) return upper;
  let lower = -Infinity;
  for (let i = 0; i < half; i++) lower = Math.max(lower, list[i] ?? NaN);
  return (lower + upper) / 2;
}

/** NaN are left out. */
export function robust(values: ArrayLike<number>): Robust {
  const kept = new Float64Array(values.length);
  let n = 0;
  for (let i = 0; i < values.length; i++) {
    const value = values[i] ?? NaN;
    if (Number.isFinite(value)) kept[n++] = value;
  }
  const list = kept.subarray(0, n);
  const middle = middleOf(list);
  for (let i = 0; i < n; i++) list[i] = Math.abs((list[i] ?? NaN) - middle);
  return { middle, spread: middleOf(list) * TO_DEVIATION, n };
}

const MOST_SAMPLED = 3000;
/** Middle and spread of at most so many values, taken evenly from the list: enough to know a habit. */
export const robustOfSome = (values: ArrayLike<number>): Robust =>
  values.length <= MOST_SAMPLED ? robust(values) : robustOfPicked(values.length, (i) => values[i] ?? NaN);

/** The same of values that are worked out when asked for, at most so many of them. */
export function robustOfPicked(length: number, valueOf: (index: number) => number): Robust {
  const most = Math.min(MOST_SAMPLED, length);
  const some = new Float64Array(most);
  const step = length / most;
  for (let i = 0; i < most; i++) some[i] = valueOf(Math.floor(i * step));
  const own = robust(some);
  return { ...own, n: Math.round((own.n * length) / most) };
}

/** Room for what a logarithm rounds; inside it the logarithm itself decides. */
const ROUNDING = 1.001;
/**
 * Between these two bounds no number has a logarithm further than `limit` from `middle`: for most of a long list they
 * save the logarithm.
 */
export const boundsOf = (middle: number, limit: number): readonly [low: number, high: number] => [
  ROUNDING * 10 ** (middle - limit),
  10 ** (middle + limit) / ROUNDING,
];

/** Is any value of a long list outside the bounds? */
export function isBeyond(list: Float64Array, low: number, high: number): boolean {
  for (let i = 0; i < list.length; i++) {
    const value = list[i] as number;
    if (value < low || value > high) return true;
  }
  return false;
}

const bits = new Float64Array(1);
const words = new Int32Array(bits.buffer);
/** A hash with one more number in it: by its bits, so that numbers that look alike stay apart. */
export const mix = (hash: number, value: number): number => {
  bits[0] = value;
  return Math.imul(
    Math.imul(hash ^ (words[0] ?? 0), 0x9e3779b1) ^ (words[1] ?? 0) ^ (hash >>> 15),
    0x85ebca6b,
  );
};

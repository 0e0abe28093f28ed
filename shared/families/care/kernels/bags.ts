/**
 * Load of sealed bags, a quarter water and three quarters oxygen, g per litre of water at 18.3 °C (DUPREE84: pounds
 * per US gallon for 1, 12, 24 and 48 h, many species). Straight between the hours; at another temperature the load
 * halves for each 10 °C more (SWANN). Source keys DUPREE84, SWANN.
 */
const POUNDS_PER_GALLON = {
  fry: [
    [1, 0.5, 2.0],
    [12, 0.4, 1.6],
    [24, 0.4, 1.2],
    [48, 0.2, 0.6],
  ],
  fingerlings: [
    [1, 1.0, 3.7],
    [12, 0.9, 3.2],
    [24, 0.7, 2.7],
    [48, 0.3, 1.3],
  ],
} as const; // h, lb/gal, DUPREE84
/** 453.59237 g ÷ 3.785411784 L, both exact. */
const GRAMS_PER_LITRE = 453.59237 / 3.785411784;
const TABLE_CELSIUS = 18.3; // °C, DUPREE84
/** A fish of an inch weighs about 0.15 g; lighter ones count as swim-up fry. */
export const FINGERLING_GRAMS = 0.15; // g, worked out from length with a condition of 0.9
/** Larvae are counted, not weighed: 710 to 1,760 a litre in three sources; the low end (WOYN80). */
export const LARVAE_PER_LITRE = [700, 900] as const; // per L, WOYN80
export const LARVA_GRAMS = 0.01; // g, below this counts rule

export interface Load {
  readonly low: number;
  readonly high: number;
}
/** Grams of fish in a litre of bag water; NaN outside 1 to 48 h. */
export function bagLoad(fishGrams: number, hours: number, celsius: number): Load {
  const rows = POUNDS_PER_GALLON[fishGrams < FINGERLING_GRAMS ? 'fry' : 'fingerlings'];
  const after = rows.findIndex(([at]) => at >= hours);
  const [right, left] = [rows[after], rows[Math.max(0, after - 1)]];
  if (!right || !left || hours < rows[0][0]) return { low: NaN, high: NaN };
  const part = right === left ? 0 : (hours - left[0]) / (right[0] - left[0]);
  const warmth = 2 ** ((TABLE_CELSIUS - celsius) / 10) * GRAMS_PER_LITRE;
  return {
    low: (left[1] + (right[1] - left[1]) * part) * warmth,
    high: (left[2] + (right[2] - left[2]) * part) * warmth,
  };
}
/** Fish in a litre: by weight, and for larvae no more than was counted. */
export function bagFish(fishGrams: number, hours: number, celsius: number): Load {
  const { low, high } = bagLoad(fishGrams, hours, celsius);
  const by = { low: low / fishGrams, high: high / fishGrams };
  return fishGrams < LARVA_GRAMS
    ? { low: Math.min(by.low, LARVAE_PER_LITRE[0]), high: Math.min(by.high, LARVAE_PER_LITRE[1]) }
    : by;
}

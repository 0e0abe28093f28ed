/**
 * Weight of larvae by day of feeding, along two seen paths: growth of larvae is not one rate.
 * ordinary – 16.5 % a day from 2.5 mg: 2.8 to 90 mg in 21 d (KAWAMURA17), 83 mg at 28 d (NAJA16)
 * plenty   – Artemia in surplus, warm: 50 to 60 mg after one week, 100 to 150 after two, 300 to 500 after a month
 *            (VERRETH99), the middles; straight between on logarithms
 * Validity: African catfish, day 0 to 30 of feeding; NaN outside.
 */
export const FIRST_FOOD_GRAMS = 0.0025; // g, JANSSEN85 (2 to 3 mg), KAWAMURA17 (2.8 mg)
export const ORDINARY_RATE = 16.5; // % per day, KAWAMURA17
export const LAST_DAY = 30;
const PLENTY = [
  [0, FIRST_FOOD_GRAMS],
  [7, 0.055],
  [14, 0.125],
  [30, 0.4],
] as const; // d, g, VERRETH99

export const ordinaryWeight = (day: number): number =>
  day >= 0 && day <= LAST_DAY ? FIRST_FOOD_GRAMS * Math.exp((ORDINARY_RATE * day) / 100) : NaN;

export function plentyWeight(day: number): number {
  if (!(day >= 0 && day <= LAST_DAY)) return NaN;
  const after = Math.max(
    1,
    PLENTY.findIndex(([at]) => at >= day),
  );
  const [left, right] = [PLENTY[after - 1], PLENTY[after]];
  if (!left || !right) return NaN;
  return left[1] * (right[1] / left[1]) ** ((day - left[0]) / (right[0] - left[0]));
}

/**
 * Where a weighing lies between the paths: 0 on the ordinary one, 1 on the other, on logarithms; a little beyond
 * either is kept. NaN on day 0, where both begin.
 */
export const pathShare = (day: number, weighed: number): number => {
  const low = Math.log(ordinaryWeight(day));
  const high = Math.log(plentyWeight(day));
  return high > low ? Math.min(1.3, Math.max(-0.5, (Math.log(weighed) - low) / (high - low))) : NaN;
};

/** Weight on a day of the path that a weighing decided. */
export const weightOnPath = (day: number, share: number): number =>
  ordinaryWeight(day) * (plentyWeight(day) / ordinaryWeight(day)) ** share;

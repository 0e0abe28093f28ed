/**
 * Feed grain by fish length, channel catfish, Table 3 of WALSH86, printed in inches: [longest fish mm, from mm,
 * to mm].
 */
export const GRAINS = [
  [12.7, 0.42, 0.6],
  [25.4, 0.6, 0.84],
  [38.1, 0.84, 1.19],
  [63.5, 1.19, 1.68],
  [101.6, 1.68, 2.38],
  [152.4, 2.38, 3.36],
  [Infinity, 4.76, 4.76],
] as const;
export const grainFor = (lengthMm: number): readonly [number, number] => {
  const row = GRAINS.find(([longest]) => lengthMm < longest) ?? GRAINS[GRAINS.length - 1];
  return [row?.[1] ?? NaN, row?.[2] ?? NaN];
};
/**
 * Length from weight, mm: L cm = (100·g ÷ K)^(1/3). K 0.6 in larvae (2.8 mg at 7.8 mm, KAWAMURA17) to 0.8 from 1 g
 * (practice), straight over the logarithm of weight. Example: 1 g → 50 mm.
 */
export function lengthOf(grams: number): number {
  const part = Math.min(1, Math.max(0, Math.log(grams / 0.0028) / Math.log(1 / 0.0028)));
  return 10 * ((100 * grams) / (0.59 + 0.21 * part)) ** (1 / 3);
}
/** Meals a day by weight, g: larvae 6 to 8, fry 5 to 6 (FEEDFREQ), fingerlings 2 to 6 (WALSH86), later 2 to 3. */
export const mealsFor = (grams: number): readonly [number, number] =>
  grams < 0.05 ? [6, 8] : grams < 0.5 ? [5, 6] : grams < 10 ? [3, 6] : [2, 3];

import type { Near } from '../../../base/near';

/** Active chlorine for gear and empty vats: 200 mg/L for 30 to 60 minutes, or 100 mg/L for hours (PIPER82 p. 283). */
export const CHLORINE_MG_PER_L = 200; // mg/L, PIPER82
export const CHLORINE_MINUTES = [30, 60] as const; // min, PIPER82
/**
 * Sodium thiosulfate, crystals, for each gram of chlorine: 2 × 248.18 / 70.91 g/mol; PIPER82 prints 1.48 g/L for
 * 200 mg/L.
 */
export const THIOSULFATE_PER_CHLORINE = (2 * 248.18) / 70.91; // g/g, DEFINITION
/** A tenth more for safety: PIPER82 gives 7.4 g where the arithmetic gives 7.0. */
export const THIOSULFATE_SPARE = 1.06; // ratio, PIPER82

export interface ChlorineProduct {
  readonly name: string;
  /** Share of the weight that is active chlorine. */
  readonly share: number;
  /** Grams in a millilitre; undefined for powders. */
  readonly density: number | undefined;
}
export const CHLORINE_PRODUCTS: readonly ChlorineProduct[] = [
  // 70 % (PIPER82) and about 65 % (Boyd): the lower one, so that the bath is not weak.
  { name: 'calcium hypochlorite', share: 0.65, density: undefined },
  // 5.25 % household bleach (WALSH86); density of thin bleach about 1.08 g/mL, from memory.
  { name: 'household bleach', share: 0.0525, density: 1.08 },
];

/** Grams of product for a bath: litres × mg/L ÷ (1000 × share). Example: 500 L at 200 mg/L, 65 % → 153.8 g. */
export const chlorineGrams = (litres: number, mgPerLitre: number, share: number): number =>
  (litres * mgPerLitre) / (1000 * share);
/** Grams of thiosulfate crystals that take the chlorine away. Example: 1 L of 200 mg/L → 1.48 g. */
export const thiosulfateGrams = (litres: number, mgPerLitre: number): number =>
  (litres * mgPerLitre * THIOSULFATE_PER_CHLORINE * THIOSULFATE_SPARE) / 1000;

/** Below this a bath is a quick wash only, 5 minutes between crops (WALSH86, about 68 mg/L). */
export const WEAK_BATH = 100; // mg/L, PIPER82
export const bathWord = (mgPerLitre: number): 'wash' | 'long' | 'full' =>
  mgPerLitre < WEAK_BATH ? 'wash' : mgPerLitre < CHLORINE_MG_PER_L ? 'long' : 'full';

export const NEAR: readonly Near[] = [
  {
    number: 'weakest chlorine that disinfects in hours, mg/L',
    value: WEAK_BATH,
    below: () => bathWord(99.9),
    above: () => bathWord(100),
    answers: ['wash', 'long'],
  },
  {
    number: 'chlorine that disinfects in half an hour, mg/L',
    value: CHLORINE_MG_PER_L,
    below: () => bathWord(199.9),
    above: () => bathWord(200),
    answers: ['long', 'full'],
  },
];

import { gramsFromKilograms } from '../../../units/convert';

/**
 * Weight of eggs a female is expected to give: body weight × stripped egg weight as a share of body weight.
 * In: kg, share. Out: g. Example: 1 kg in the rains, share 0.143 (GRAAF95) → 143 g.
 */
export const eggWeight = (kg: number, eggShare: number): number => gramsFromKilograms(kg) * eggShare;

/** Eggs one female gives: egg weight × eggs per gram of eggs (never per gram of fish). */
export const eggsPerFemale = (kg: number, eggShare: number, eggsPerGram: number): number =>
  eggWeight(kg, eggShare) * eggsPerGram;

/**
 * Whole females that together give the eggs: rounded up, with a guard so that an exact quotient is not pushed
 * up by rounding error. `spawning` is the share of injected females that give eggs.
 */
export const femalesFor = (eggs: number, perFemale: number, spawning: number): number => {
  const exact = eggs / (perFemale * spawning);
  return Math.ceil(exact * (1 - 1e-12));
};

/**
 * Stripped egg weight as a share of body weight, mean and printed spread, African catfish in Congo (GRAAF95).
 */
export const SEASONS = {
  rainy: { share: 0.143, spread: 0.013 }, // share of body weight, GRAAF95
  dry: { share: 0.013, spread: 0.003 }, // share of body weight, GRAAF95
} as const;

/** Weight of females: fry ÷ (eggs per kg × every share on the way) (SRAC1803). */
export const broodWeight = (fry: number, eggsPerKg: number, shares: readonly number[]): number =>
  fry / shares.reduce((product, s) => product * s, eggsPerKg);

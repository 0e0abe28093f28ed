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
 * Stripped egg weight as a share of body weight, African catfish in Congo (GRAAF95): the printed ± is the error of
 * the mean, not what females differ by. Females differ by 19 to 32 % in most trials, by 40 to 67 % in the dry
 * season or when stripped early (SHOURBELA, NGUENGA04 and kin): 30 and 40 % are taken.
 */
export const SEASONS = {
  rainy: { share: 0.143, error: 0.013, between: 0.3 }, // shares of body weight, GRAAF95
  dry: { share: 0.013, error: 0.003, between: 0.4 }, // shares of body weight, GRAAF95
} as const;

/** Bell-curve distance that leaves one season in ten below. */
const NINE_IN_TEN = 1.2816;
/**
 * Females to inject so that nine seasons in ten bring the eggs, when each gives eggs or not and the yields of those
 * that do differ by `between` (share of their mean): the least F with F·μ − 1.28·σ·√F ≥ eggs.
 * Example: 5.48 mean females at 30 % → 7.
 */
export function femalesForNineInTen(eggs: number, each: number, spawning: number, between: number): number {
  const mean = each * spawning;
  const sd = each * Math.sqrt(spawning * (between * between + 1 - spawning));
  // Root of F·mean − 1.28·sd·√F = eggs in √F; then whole fish.
  const half = (NINE_IN_TEN * sd) / (2 * mean);
  return Math.ceil((half + Math.sqrt(half * half + eggs / mean)) ** 2 * (1 - 1e-12));
}

/** Weight of females: fry ÷ (eggs per kg × every share on the way) (SRAC1803). */
export const broodWeight = (fry: number, eggsPerKg: number, shares: readonly number[]): number =>
  fry / shares.reduce((product, s) => product * s, eggsPerKg);

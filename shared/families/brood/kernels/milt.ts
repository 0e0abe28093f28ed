import { litresFromMillilitres } from '../../../units/convert';

/** Sperm per egg: best fertilisation (80 %) and the least before success falls (RURANGWA98). */
export const BEST_SPERM_PER_EGG = 15_000; // sperm/egg, RURANGWA98
export const LEAST_SPERM_PER_EGG = 3_000; // sperm/egg, RURANGWA98

/**
 * Undiluted milt for a batch of eggs: eggs × sperm per egg ÷ (sperm per mL × motile share).
 * In: numbers, sperm per mL. Out: mL. Exact arithmetic. Example: 105,000 eggs at 15,000 and 5.62e9/mL → 0.28
 * mL.
 */
export const miltVolume = (eggs: number, spermPerEgg: number, spermPerMl: number, motile: number): number =>
  (eggs * spermPerEgg) / (spermPerMl * motile);

/** Whole males for a volume of milt. */
export const malesFor = (milt: number, perMale: number): number =>
  Math.max(1, Math.ceil((milt / perMale) * (1 - 1e-12)));

/** Salt in the diluent, g/L: 0.9 % NaCl; 150 mM is 8.77 g/L (MANSOUR04). */
export const DILUENT_SALT = 9; // g/L, MANSOUR04 (molarity), rounded as the trade does

export const diluent = (milt: number, parts: number): { readonly volume: number; readonly salt: number } => ({
  volume: milt * parts,
  salt: DILUENT_SALT * litresFromMillilitres(milt * parts),
});

/**
 * Strengths published evidence forbids on eggs and fry of African catfish. A bath here lasts 15 minutes, as
 * in the trials.
 */
export const BATH_MINUTES = 15; // min, EGGFORMALIN10 and FRYSALT11

/** Formalin on eggs: 50 to 250 mg/L lowered the hatch, 500, 750 and 1000 mg/L killed all (EGGFORMALIN10). */
export const FORMALIN_TESTED = 250; // mg/L of product, EGGFORMALIN10
export const FORMALIN_KILLS = 500; // mg/L of product, EGGFORMALIN10

/**
 * Salt with larvae and fry: 4 g/L is borne by all seen trials but one, whose fry died at a sixth of it; 6 kills
 * hybrids within days (KAWAMURA17, GBULUBO98, HYBSALT; alone FRYSALT11).
 */
export const FRY_SALT_MOST = 4; // g/L, HYBSALT

/** Grams in a volume of water at a strength in g/L. */
export const gramsAt = (litres: number, gramsPerLitre: number): number => litres * gramsPerLitre;

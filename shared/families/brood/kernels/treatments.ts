/**
 * Strengths published evidence forbids on eggs and fry of African catfish. A bath here lasts 15 minutes, as
 * in the trials.
 */
export const BATH_MINUTES = 15; // min, EGGFORMALIN10 and FRYSALT11

/** Formalin on eggs: 50 to 250 mg/L lowered the hatch, 500, 750 and 1000 mg/L killed all (EGGFORMALIN10). */
export const FORMALIN_TESTED = 250; // mg/L of product, EGGFORMALIN10
export const FORMALIN_KILLS = 500; // mg/L of product, EGGFORMALIN10

export interface SaltLimit {
  readonly stage: 'yolk-sac fry' | 'swim-up fry';
  /** Highest strength used safely for 15 minutes, g/L. */
  readonly highest: number;
  /** Half die in 24 hours, g/L. */
  readonly halfDie: number;
}
export const SALT_LIMITS: readonly SaltLimit[] = [
  { stage: 'yolk-sac fry', highest: 0.8, halfDie: 0.61 }, // g/L, FRYSALT11
  { stage: 'swim-up fry', highest: 1, halfDie: 0.7 }, // g/L, FRYSALT11
];

/** Grams in a volume of water at a strength in g/L. */
export const gramsAt = (litres: number, gramsPerLitre: number): number => litres * gramsPerLitre;

/** Weight of a millilitre of formalin solution (37 % formaldehyde), from memory of product sheets. */
export const FORMALIN_GRAMS_PER_ML = 1.09; // g/mL, FORMALINDENS

/** Condition factor: 100 × weight / length³. In: g, cm. Source: FULTON. Example: 100 g at 22 cm → 0.939. */
export const conditionFactor = (weight: number, length: number): number => (100 * weight) / length ** 3;

/**
 * Volume of a solution that holds a dose: weight × dose per kg, for a solution dosed by volume.
 * In: kg and mL/kg. Out: mL. Exact arithmetic. Example: 1.2 kg at 0.5 mL/kg → 0.60 mL.
 */
export const volumeByWeight = (kg: number, mlPerKg: number): number => kg * mlPerKg;

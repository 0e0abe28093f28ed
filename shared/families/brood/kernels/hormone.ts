import type { Preparation } from '../../preparations';

/**
 * Volume of a solution that holds a dose: weight × dose per kg, for a solution dosed by volume.
 * In: kg and mL/kg. Out: mL. Exact arithmetic. Example: 1.2 kg at 0.5 mL/kg → 0.60 mL.
 */
export const volumeByWeight = (kg: number, mlPerKg: number): number => kg * mlPerKg;

export interface Dose {
  readonly amount: number;
  readonly antagonist: number;
  readonly volume: number | undefined;
}

/**
 * Dose of one fish. `concentration` is amount per mL of what is in the syringe; without it a powder has no
 * volume. The antagonist keeps its published proportion to the dose. Example: carp pituitary, 1.2 kg at 4
 * mg/kg → 4.8 mg.
 */
export function doseFor(
  preparation: Preparation,
  kg: number,
  perKg: number,
  concentration: number | undefined,
): Dose {
  const amount = kg * perKg;
  const volume = preparation.isSolution
    ? amount
    : concentration === undefined
      ? undefined
      : amount / concentration;
  return { amount, antagonist: preparation.antagonist * kg * (perKg / preparation.dose), volume };
}

/**
 * First and second part of a split dose. Published for migrants of another continent: 10 % then 90 %
 * (NEOTROP13).
 */
export const splitDose = (amount: number, firstShare: number): readonly [number, number] => [
  amount * firstShare,
  amount * (1 - firstShare),
];

/**
 * Whole packs for an amount with a spare, less what is left from before. The guard keeps an exact quotient
 * whole.
 */
export const packsFor = (needed: number, spare: number, perPack: number, left: number): number =>
  Math.max(0, Math.ceil(((needed * (1 + spare) - left) / perPack) * (1 - 1e-12)));

/**
 * Donor fish for glands of the same species: donors weigh `ratio` times the fish to be injected (1.5,
 * CLARIIDPAGE).
 */
export const donorsFor = (kg: number, donorKg: number, ratio: number): number =>
  Math.ceil(((kg * ratio) / donorKg) * (1 - 1e-12));

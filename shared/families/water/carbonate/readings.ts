import type { Constants } from './constants';
import { pressureOfCO2 } from './constants';
import type { Water } from './carbonate';
import type { Conditions } from './conditions';
import { alkalinityOf, solve } from './carbonate';
import { sharesAt } from './conditions';

/** What is known of a water beside its pH: the background its ions make. */
export interface Background {
  readonly temperature: number;
  /** Calcium, mmol/L; hardness is counted as calcium. */
  readonly calcium: number;
  /** Ionic strength from conductivity, dissolved solids or salt, mol/L; 0 when unknown. */
  readonly ionicStrength: number;
}

export type DissolvedUnit = 'µS/cm' | 'mg/L TDS' | 'g/L salt';
/**
 * Ionic strength, mol/L, per unit: conductivity at 25 °C (seen in a chemistry site's help), dissolved solids
 * (from memory), NaCl 58.44 g/mol.
 */
const IONIC_STRENGTH_PER: Readonly<Record<DissolvedUnit, number>> = {
  'µS/cm': 1.6e-5,
  'mg/L TDS': 2.5e-5,
  'g/L salt': 1 / 58.44,
};
/**
 * What a mole of H+ per litre conducts over and above another ion: about 350 − 65 S·cm²/mol, in µS/cm (from
 * memory).
 */
const EXCESS_OF_ACID = 285e3;
/** Ionic strength from what was measured; in acid water the conductivity of H+ itself is taken out first. */
export const ionicStrengthFrom = (amount: number, unit: DissolvedUnit, ph = 7): number =>
  Math.max(0, unit === 'µS/cm' ? amount - EXCESS_OF_ACID * 10 ** -ph : amount) * IONIC_STRENGTH_PER[unit];

/**
 * Strong ions that carry an alkalinity: calcium as given, sodium or chloride for the rest, salt up to the
 * ionic strength.
 */
export const compose = (
  { temperature, calcium, ionicStrength }: Background,
  alkalinity: number,
  carbon: number,
): Water => {
  const rest = alkalinity - 2 * calcium;
  const sodium = Math.max(0, rest);
  const chloride = Math.max(0, -rest);
  const salt = Math.max(
    0,
    1000 * ionicStrength - (sodium + chloride + 4 * calcium + Math.abs(alkalinity)) / 2,
  );
  return { temperature, calcium, sulfate: 0, carbon, sodium: sodium + salt, chloride: chloride + salt };
};

/** Alkalinity and carbon settle together when pH and dissolved CO2 are known. */
const fromCO2 = (
  k: Constants,
  back: Background,
  ph: number,
  carbonDioxideOf: (c: Conditions) => number,
): Water => {
  let water = compose(back, 0, 0);
  for (let pass = 0; pass < 30; pass++) {
    const { conditions } = solve(k, water, { kind: 'at', ph });
    const { perCarbon, perCO2, w } = sharesAt(conditions, ph);
    const carbonDioxide = carbonDioxideOf(conditions);
    const alkalinity = carbonDioxide * perCO2 + w;
    const isSettled = Math.abs(alkalinity - alkalinityOf(water)) < 1e-9 * (1e-3 + Math.abs(alkalinity));
    water = compose(back, alkalinity, (carbonDioxide * perCO2) / perCarbon);
    if (isSettled) break;
  }
  return water;
};

/** A water from its pH and its dissolved CO2, mmol/L. */
export const waterFromCO2 = (k: Constants, back: Background, ph: number, carbonDioxide: number): Water =>
  fromCO2(k, back, ph, () => carbonDioxide);

/** A water in balance with air of a CO2 content, from its pH: what an hour of strong aeration leaves. */
export const airedWater = (k: Constants, back: Background, ph: number, ppm: number): Water =>
  fromCO2(k, back, ph, (c) => c.kh * pressureOfCO2(ppm));

export type Impossible = 'too little alkalinity' | 'too much alkalinity';
/** CO2 pressure no natural water reaches: 10^−0.5 atm, about 470 mg/L. */
const HIGHEST_PRESSURE = 10 ** -0.5;

/**
 * A water from its pH and measured alkalinity: DIC = (Alk − W)/ᾱ.
 * In: mmol/L and meq/L. Out: the water, or why the two cannot belong together. Below about pH 5.2 the
 * difference Alk − W is that of two nearly equal numbers and the carbon found is not to be relied on.
 */
export const waterFromAlkalinity = (
  k: Constants,
  back: Background,
  ph: number,
  alkalinity: number,
): Water | Impossible => {
  // The ions follow from the alkalinity alone: the carbon does not move them.
  const state = solve(k, compose(back, alkalinity, 0), { kind: 'carbon at', ph });
  if (state.carbonDioxide < 0) return 'too little alkalinity';
  const pressure = state.carbonDioxide / state.conditions.kh;
  return pressure > HIGHEST_PRESSURE ? 'too much alkalinity' : compose(back, alkalinity, state.carbon);
};

/** Below this pH the carbon of a water cannot be had from pH and alkalinity. */
export const LOWEST_PH_FOR_CARBON = 5.2;

import type { Conditions, Detail, Free } from './conditions';
import { conditionsFor, rootPH } from './conditions';
import type { Constants } from './constants';

// Taken out of Math once: these run in the innermost loops.
const { LN10, abs, exp, log10, max } = Math;

/**
 * A water as its strong ions and its inorganic carbon, mmol/L. Alkalinity is what is left of the strong ions,
 * Na + 2 Ca − Cl − 2 SO4, and may be negative (mineral acid). One litre is taken as one kilogram of water.
 */
export interface Water {
  readonly temperature: number;
  readonly sodium: number;
  readonly calcium: number;
  readonly chloride: number;
  readonly sulfate: number;
  /** Total inorganic carbon: CO2 + HCO3− + CO3 2− and their pairs. */
  readonly carbon: number;
}

export const alkalinityOf = ({ sodium, calcium, chloride, sulfate }: Water): number =>
  sodium + 2 * calcium - chloride - 2 * sulfate;

/** What a solved water is made of, mmol/L, at its pH. */
export interface CarbonateState {
  readonly ph: number;
  readonly carbonDioxide: number;
  readonly carbon: number;
  readonly alkalinity: number;
  readonly ionicStrength: number;
  /** log10 of ion product over solubility product of calcite; −Infinity without calcium. */
  readonly saturationIndex: number;
}

/**
 * What is asked: the pH of a closed water, of one in balance with CO2 at a pressure, or the CO2 that a pH and
 * an alkalinity imply.
 */
export type CarbonateQuestion =
  | { readonly kind: 'closed'; readonly guess?: number }
  | { readonly kind: 'open'; readonly pressure: number; readonly guess?: number }
  | { readonly kind: 'at'; readonly ph: number; readonly pressure?: number }
  | { readonly kind: 'carbon at'; readonly ph: number };

export interface Solved extends CarbonateState {
  readonly conditions: Conditions;
}

const answer = (
  question: CarbonateQuestion,
  c: Conditions,
  alkalinity: number,
  carbon: number,
  last: number,
): { ph: number; carbonDioxide: number } => {
  const pressure = 'pressure' in question ? question.pressure : undefined;
  const pressureCO2 = pressure === undefined ? undefined : c.kh * pressure;
  const ph =
    question.kind === 'at' || question.kind === 'carbon at'
      ? question.ph
      : rootPH(c, alkalinity, carbon, pressureCO2, last);
  const a = exp(-LN10 * ph);
  const r1 = c.k1 / a;
  const r2 = c.k12 / (a * a);
  if (pressureCO2 !== undefined) return { ph, carbonDioxide: pressureCO2 };
  if (question.kind === 'carbon at')
    return { ph, carbonDioxide: (alkalinity - c.wBase / a + c.wAcid * a) / (r1 + 2 * r2) };
  return { ph, carbonDioxide: carbon / (1 + r1 + r2) };
};

const freeOf = (c: Detail, water: Water, a: number, carbonDioxide: number, before: Free): Free => {
  const pairs = 1 + c.pairCaHCO3 * before.calcium + c.pairNaHCO3 * before.sodium;
  const plainK1 = c.k1 / pairs;
  const hco3 = max(0, (carbonDioxide * plainK1) / a);
  const co3 = max(0, (carbonDioxide * c.k12) / (a * a) / (1 + c.pairCaCO3 * before.calcium));
  const calcium = water.calcium / (1 + c.pairCaHCO3 * hco3 + c.pairCaCO3 * co3 + c.caOH / a);
  const sodium = water.sodium / (1 + c.pairNaHCO3 * hco3);
  const single = sodium + water.chloride + hco3 * (1 + c.pairCaHCO3 * calcium) + c.wAcid * a + c.wBase / a;
  return {
    calcium,
    sodium,
    sulfate: water.sulfate,
    ionicStrength: (single + 4 * (calcium + co3 + water.sulfate)) / 2000,
  };
};

/**
 * Solves a water at its own ionic strength, with the ion pairs CaHCO3+, CaCO3°, NaHCO3° and CaOH+.
 *
 * The pH root is explicit in the strong ions (above); ionic strength and free calcium and sodium are settled
 * around it. In: constants of the water's temperature, totals in mmol/L, the question. Out: state, NaN when
 * nothing satisfies it. Validity: ionic strength to 0.5 mol/kg. Source: PLBU82, PHREEQC (conventions of its
 * default database). Example: pure water at 25 °C against CO2 at 10^−3.5 atm → pH 5.66.
 */
export const solve = (k: Constants, water: Water, question: CarbonateQuestion): Solved => {
  const alkalinity = alkalinityOf(water);
  let free: Free = {
    calcium: water.calcium,
    sodium: water.sodium,
    sulfate: water.sulfate,
    ionicStrength:
      (water.sodium + water.chloride + 4 * (water.calcium + water.sulfate) + abs(alkalinity)) / 2000,
  };
  let ph = 'guess' in question && question.guess !== undefined ? question.guess : 7;
  let c = conditionsFor(k, free);
  let carbonDioxide = 0;
  for (let pass = 0; pass < 40; pass++) {
    const found = answer(question, c, alkalinity, water.carbon, ph);
    const a = exp(-LN10 * found.ph);
    const next = freeOf(c, water, a, found.carbonDioxide, free);
    const isSettled =
      abs(next.ionicStrength - free.ionicStrength) <= 1e-7 * (1e-3 + next.ionicStrength) &&
      abs(next.calcium - free.calcium) <= 1e-6 * water.calcium &&
      abs(found.ph - ph) < 1e-6;
    ({ ph, carbonDioxide } = found);
    free = next;
    if (isSettled) break;
    c = conditionsFor(k, free);
  }
  return stateOf(c, water, free, ph, carbonDioxide, alkalinity);
};

const stateOf = (
  c: Detail,
  water: Water,
  free: Free,
  ph: number,
  carbonDioxide: number,
  alkalinity: number,
): Solved => {
  const a = exp(-LN10 * ph);
  const r2 = (carbonDioxide * c.k12) / (a * a);
  const co3 = r2 / (1 + c.pairCaCO3 * free.calcium);
  return {
    ph,
    carbonDioxide,
    alkalinity,
    conditions: c,
    carbon: carbonDioxide * (1 + c.k1 / a) + r2,
    ionicStrength: free.ionicStrength,
    saturationIndex: water.calcium > 0 ? log10(free.calcium * co3 * c.calcite) : -Infinity,
  };
};

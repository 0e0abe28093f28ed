import { activityAt } from './activity';
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

export const alkalinityOf = ({ sodium, calcium, chloride, sulfate }: Water): number => sodium + 2 * calcium - chloride - 2 * sulfate;

/** What a solved water is made of, mmol/L, at its pH. */
export interface State {
  readonly ph: number;
  readonly carbonDioxide: number;
  readonly carbon: number;
  readonly alkalinity: number;
  readonly ionicStrength: number;
  /** log10 of ion product over solubility product of calcite; −Infinity without calcium. */
  readonly calciteIndex: number;
}

/** Conditional constants: concentrations in mmol/L against the activity of H+, for the moment's ionic strength and free ions. */
export interface Conditions {
  /** K1' and K1'K2' with the pairs of bicarbonate and carbonate counted in. */
  readonly k1: number;
  readonly k12: number;
  /** [OH] + [CaOH+] = wBase / a ; [H] + [HSO4] = wAcid · a. */
  readonly wBase: number;
  readonly wAcid: number;
  /** CO2(aq) per atm. */
  readonly kh: number;
}

interface Free { readonly ionicStrength: number; readonly calcium: number; readonly sodium: number; readonly sulfate: number }

interface Detail extends Conditions {
  readonly pairCaHCO3: number;
  readonly pairCaCO3: number;
  readonly pairNaHCO3: number;
  readonly caOH: number;
  readonly calcite: number;
}

const conditionsFor = (k: Constants, free: Free): Detail => {
  const g = activityAt(k, free.ionicStrength);
  const pairCaHCO3 = (k.kCaHCO3 * g.ca * g.hco3) / g.caHCO3 / 1000;
  const pairCaCO3 = (k.kCaCO3 * g.ca * g.co3) / g.neutral / 1000;
  const pairNaHCO3 = (k.kNaHCO3 * g.na * g.hco3) / g.neutral / 1000;
  const k1 = (k.k1 * g.co2) / g.hco3;
  const k2 = (k.k2 * g.hco3) / g.co3;
  const caOH = (k.kCaOH * g.ca) / g.caOH;
  return {
    k1: k1 * (1 + pairCaHCO3 * free.calcium + pairNaHCO3 * free.sodium),
    k12: k1 * k2 * (1 + pairCaCO3 * free.calcium),
    wBase: (1000 * k.kw) / g.oh + caOH * free.calcium,
    wAcid: 1000 / g.h + (free.sulfate * g.so4) / (k.kHSO4 * g.hso4),
    kh: (1000 * k.kh) / g.co2,
    pairCaHCO3, pairCaCO3, pairNaHCO3, caOH,
    calcite: (g.ca * g.co3) / (k.kCalcite * 1e6),
  };
};

/**
 * Alkalinity at a pH when the carbon is fixed (closed) or when CO2(aq) is fixed by the air (open), and its slope β = dAlk/dpH.
 * Alk = DIC·ᾱ + W, ᾱ = (r1 + 2 r2)/(1 + r1 + r2), r1 = K1'/a, r2 = K1'K2'/a², W = [OH] − [H]. Open: Alk = CO2·(r1 + 2 r2) + W.
 */
const alkalinityAt = (c: Conditions, a: number, carbon: number, carbonDioxide: number | undefined): { value: number; slope: number } => {
  const r1 = c.k1 / a;
  const r2 = c.k12 / (a * a);
  const base = c.wBase / a;
  const acid = c.wAcid * a;
  const sum = 1 + r1 + r2;
  if (carbonDioxide === undefined)
    return { value: (carbon * (r1 + 2 * r2)) / sum + base - acid, slope: LN10 * ((carbon * (r1 * (1 + r2) + 4 * r2)) / (sum * sum) + base + acid) };
  return { value: carbonDioxide * (r1 + 2 * r2) + base - acid, slope: LN10 * (carbonDioxide * (r1 + 4 * r2) + base + acid) };
};

const LOWEST_PH = 0;
const HIGHEST_PH = 14;

/** The pH whose alkalinity is the one given: Newton steps held inside a bracket that halves whenever a step leaves it. */
const rootPH = (c: Conditions, alkalinity: number, carbon: number, carbonDioxide: number | undefined, guess: number): number => {
  let low = LOWEST_PH;
  let high = HIGHEST_PH;
  let ph = guess;
  let lastMiss = 1e300;
  for (let step = 0; step < 80; step++) {
    const { value, slope } = alkalinityAt(c, exp(-LN10 * ph), carbon, carbonDioxide);
    const miss = value - alkalinity;
    if (miss > 0) high = ph; else low = ph;
    const newton = ph - miss / slope;
    // A Newton step that does not shrink the miss by half crawls along an exponential: halve the bracket instead.
    const next = newton > low && newton < high && abs(miss) < 0.5 * abs(lastMiss) ? newton : (low + high) / 2;
    lastMiss = miss;
    if (abs(next - ph) < 1e-9) return next;
    ph = next;
  }
  return ph;
};

/** What is asked: the pH of a closed water, of one in balance with CO2 at a pressure, or the CO2 that a pH and an alkalinity imply. */
export type Question =
  | { readonly kind: 'closed'; readonly guess?: number }
  | { readonly kind: 'open'; readonly pressure: number; readonly guess?: number }
  | { readonly kind: 'at'; readonly ph: number; readonly pressure?: number }
  | { readonly kind: 'carbon at'; readonly ph: number };

export interface Solved extends State { readonly conditions: Conditions }

const answer = (question: Question, c: Conditions, alkalinity: number, carbon: number, last: number): { ph: number; carbonDioxide: number } => {
  const pressure = 'pressure' in question ? question.pressure : undefined;
  const pressureCO2 = pressure === undefined ? undefined : c.kh * pressure;
  const ph = question.kind === 'at' || question.kind === 'carbon at' ? question.ph : rootPH(c, alkalinity, carbon, pressureCO2, last);
  const a = exp(-LN10 * ph);
  const r1 = c.k1 / a;
  const r2 = c.k12 / (a * a);
  if (pressureCO2 !== undefined) return { ph, carbonDioxide: pressureCO2 };
  if (question.kind === 'carbon at') return { ph, carbonDioxide: (alkalinity - c.wBase / a + c.wAcid * a) / (r1 + 2 * r2) };
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
  return { calcium, sodium, sulfate: water.sulfate, ionicStrength: (single + 4 * (calcium + co3 + water.sulfate)) / 2000 };
};

/**
 * Solves a water at its own ionic strength, with the ion pairs CaHCO3+, CaCO3°, NaHCO3° and CaOH+.
 *
 * The pH root is explicit in the strong ions (above); ionic strength and free calcium and sodium are settled around it.
 * In: constants of the water's temperature, totals in mmol/L, the question. Out: state, NaN when nothing satisfies it.
 * Validity: ionic strength to 0.5 mol/kg. Source: PLBU82, PHREEQC (conventions of its default database).
 * Example: pure water at 25 °C against CO2 at 10^−3.5 atm → pH 5.66.
 */
export const solve = (k: Constants, water: Water, question: Question): Solved => {
  const alkalinity = alkalinityOf(water);
  let free: Free = {
    calcium: water.calcium, sodium: water.sodium, sulfate: water.sulfate,
    ionicStrength: (water.sodium + water.chloride + 4 * (water.calcium + water.sulfate) + abs(alkalinity)) / 2000,
  };
  let ph = 'guess' in question && question.guess !== undefined ? question.guess : 7;
  let c = conditionsFor(k, free);
  let carbonDioxide = 0;
  for (let pass = 0; pass < 40; pass++) {
    const found = answer(question, c, alkalinity, water.carbon, ph);
    const a = exp(-LN10 * found.ph);
    const next = freeOf(c, water, a, found.carbonDioxide, free);
    const isSettled = abs(next.ionicStrength - free.ionicStrength) <= 1e-7 * (1e-3 + next.ionicStrength)
      && abs(next.calcium - free.calcium) <= 1e-6 * water.calcium && abs(found.ph - ph) < 1e-6;
    ({ ph, carbonDioxide } = found);
    free = next;
    if (isSettled) break;
    c = conditionsFor(k, free);
  }
  return stateOf(c, water, free, ph, carbonDioxide, alkalinity);
};

const stateOf = (c: Detail, water: Water, free: Free, ph: number, carbonDioxide: number, alkalinity: number): Solved => {
  const a = exp(-LN10 * ph);
  const r2 = (carbonDioxide * c.k12) / (a * a);
  const co3 = r2 / (1 + c.pairCaCO3 * free.calcium);
  return {
    ph, carbonDioxide, alkalinity, conditions: c,
    carbon: carbonDioxide * (1 + c.k1 / a) + r2,
    ionicStrength: free.ionicStrength,
    calciteIndex: water.calcium > 0 ? log10(free.calcium * co3 * c.calcite) : -Infinity,
  };
};

/** Alkalinity per mole of carbon (ᾱ) and the balance of water itself, W = [OH] − [H], at a pH. */
export const sharesAt = (c: Conditions, ph: number): { readonly perCarbon: number; readonly perCO2: number; readonly w: number } => {
  const a = exp(-LN10 * ph);
  const r1 = c.k1 / a;
  const r2 = c.k12 / (a * a);
  return { perCarbon: (r1 + 2 * r2) / (1 + r1 + r2), perCO2: r1 + 2 * r2, w: c.wBase / a - c.wAcid * a };
};

/** Buffer intensity β = dAlk/dpH of a closed water, meq/L per pH unit. */
export const intensityAt = (c: Conditions, ph: number, carbon: number): number => alkalinityAt(c, exp(-LN10 * ph), carbon, undefined).slope;

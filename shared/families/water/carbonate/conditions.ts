import { activityAt } from './activity';
import type { Constants } from './constants';

// Taken out of Math once: these run in the innermost loops.
const { LN10, abs, exp } = Math;

/**
 * Conditional constants: concentrations in mmol/L against the activity of H+, for the moment's ionic strength
 * and free ions.
 */
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

export interface Free {
  readonly ionicStrength: number;
  readonly calcium: number;
  readonly sodium: number;
  readonly sulfate: number;
}

export interface Detail extends Conditions {
  readonly pairCaHCO3: number;
  readonly pairCaCO3: number;
  readonly pairNaHCO3: number;
  readonly caOH: number;
  readonly calcite: number;
}

export const conditionsFor = (k: Constants, free: Free): Detail => {
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
    pairCaHCO3,
    pairCaCO3,
    pairNaHCO3,
    caOH,
    calcite: (g.ca * g.co3) / (k.kCalcite * 1e6),
  };
};

/**
 * Alkalinity at a pH when the carbon is fixed (closed) or when CO2(aq) is fixed by the air (open), and its
 * slope β = dAlk/dpH. Alk = DIC·ᾱ + W, ᾱ = (r1 + 2 r2)/(1 + r1 + r2), r1 = K1'/a, r2 = K1'K2'/a², W = [OH] −
 * [H]. Open: Alk = CO2·(r1 + 2 r2) + W.
 */
const alkalinityAt = (
  c: Conditions,
  a: number,
  carbon: number,
  carbonDioxide: number | undefined,
): { value: number; slope: number } => {
  const r1 = c.k1 / a;
  const r2 = c.k12 / (a * a);
  const base = c.wBase / a;
  const acid = c.wAcid * a;
  const sum = 1 + r1 + r2;
  if (carbonDioxide === undefined)
    return {
      value: (carbon * (r1 + 2 * r2)) / sum + base - acid,
      slope: LN10 * ((carbon * (r1 * (1 + r2) + 4 * r2)) / (sum * sum) + base + acid),
    };
  return {
    value: carbonDioxide * (r1 + 2 * r2) + base - acid,
    slope: LN10 * (carbonDioxide * (r1 + 4 * r2) + base + acid),
  };
};

const LOWEST_PH = 0;
const HIGHEST_PH = 14;

/**
 * The pH whose alkalinity is the one given: Newton steps held inside a bracket that halves whenever a step
 * leaves it.
 */
export const rootPH = (
  c: Conditions,
  alkalinity: number,
  carbon: number,
  carbonDioxide: number | undefined,
  guess: number,
): number => {
  let low = LOWEST_PH;
  let high = HIGHEST_PH;
  let ph = guess;
  let lastMiss = 1e300;
  for (let step = 0; step < 80; step++) {
    const { value, slope } = alkalinityAt(c, exp(-LN10 * ph), carbon, carbonDioxide);
    const miss = value - alkalinity;
    if (miss > 0) high = ph;
    else low = ph;
    const newton = ph - miss / slope;
    // A Newton step that does not shrink the miss by half crawls along an exponential: halve the bracket
    // instead.
    const next = newton > low && newton < high && abs(miss) < 0.5 * abs(lastMiss) ? newton : (low + high) / 2;
    lastMiss = miss;
    if (abs(next - ph) < 1e-9) return next;
    ph = next;
  }
  return ph;
};

/** Alkalinity per mole of carbon (ᾱ) and the balance of water itself, W = [OH] − [H], at a pH. */
export const sharesAt = (
  c: Conditions,
  ph: number,
): { readonly perCarbon: number; readonly perCO2: number; readonly w: number } => {
  const a = exp(-LN10 * ph);
  const r1 = c.k1 / a;
  const r2 = c.k12 / (a * a);
  return { perCarbon: (r1 + 2 * r2) / (1 + r1 + r2), perCO2: r1 + 2 * r2, w: c.wBase / a - c.wAcid * a };
};

/** Buffer intensity β = dAlk/dpH of a closed water, meq/L per pH unit. */
export const intensityAt = (c: Conditions, ph: number, carbon: number): number =>
  alkalinityAt(c, exp(-LN10 * ph), carbon, undefined).slope;

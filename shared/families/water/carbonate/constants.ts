import type { Measure } from '../../../units/quantities';
import { kelvinFromCelsius } from '../../../units/convert';

// Taken out of Math once: these run in the innermost loops.
const { LN10, exp, log, log10, sqrt } = Math;

/**
 * Equilibrium constants of the carbonate system at one temperature, on the activity scale, mol per kg of
 * water.
 */
export interface Constants {
  /** CO2(aq) + H2O = H+ + HCO3− */
  readonly k1: number;
  /** HCO3− = H+ + CO3 2− */
  readonly k2: number;
  /** Henry's constant of CO2, mol/kg/atm. */
  readonly kh: number;
  readonly kw: number;
  /** Solubility product of calcite. */
  readonly kCalcite: number;
  /** Ion pairs, as formation constants. */
  readonly kCaHCO3: number;
  readonly kCaCO3: number;
  readonly kNaHCO3: number;
  /** Ca2+ + H2O = CaOH+ + H+ */
  readonly kCaOH: number;
  /** HSO4− = H+ + SO4 2− */
  readonly kHSO4: number;
  /** Debye–Hückel slopes: A, and B per ångström. */
  readonly slopeA: number;
  readonly slopeB: number;
}

const power10 = (x: number): number => exp(LN10 * x);

/**
 * Density of water, kg/L, 0 to 40 °C. From memory: the usual Kell-type expression; checked against the
 * printed densities in tests.
 */
const density = (t: number): number =>
  1 -
  ((t - 3.9863) ** 2 * (t + 288.9414)) / (508929.2 * (t + 68.12963)) +
  0.011445 * exp(-374.3 / (t + 1e-9 || 1));

/**
 * Dielectric constant of water at 1 bar: Bradley and Pitzer 1979, coefficients from memory, checked through
 * the slopes they give.
 */
const dielectric = (T: number): number => {
  const at1000 = 342.79 * exp(-5.0866e-3 * T + 9.469e-7 * T * T);
  const c = -2.0525 + 3115.9 / (T - 182.89);
  const b = -8032.5 + 4.2142e6 / T + 2.1417 * T;
  return at1000 + c * log((b + 1) / (b + 1000));
};

/**
 * Constants of the carbonate system, calcite and its ion pairs.
 *
 * Equations as published (log10, T in kelvin):
 *   K1, K2, KH, Kcalcite, KCaHCO3+, KCaCO3° – Plummer and Busenberg 1982.
 *   Kw = 293.29227 + 0.1360833 T − 10576.913/T − 123.73158 log T − 6.996455e−5 T² (geochemical database of
 * the U.S. Geological Survey). NaHCO3° −0.06 with ΔH 21 kJ; CaOH+ −12.78; HSO4− 1.988 with its own T terms
 * (same database). In: °C. Out: constants above. Validity: 0 to 90 °C published for the carbonates, used here
 * for 0 to 40 °C. Sources: PLBU82, PHREEQC. No NaCO3− pair, as in that database: waters above 1 g/L salt and
 * pH 8.4 carry ±0.05 to 0.2 pH for it. Example: 25 °C → −log K1 = 6.352, −log K2 = 10.329, −log KH = 1.468.
 */
export const constantsAt = (temperature: Measure<'°C'>): Constants => {
  const T = kelvinFromCelsius(temperature);
  const log = log10(T);
  const epsilonT = dielectric(T) * T;
  const rootDensity = sqrt(density(temperature));
  return {
    k1: power10(-356.3094 - 0.06091964 * T + 21834.37 / T + 126.8339 * log - 1684915 / (T * T)),
    k2: power10(-107.8871 - 0.03252849 * T + 5151.79 / T + 38.92561 * log - 563713.9 / (T * T)),
    kh: power10(108.3865 + 0.01985076 * T - 6919.53 / T - 40.45154 * log + 669365 / (T * T)),
    kw: power10(293.29227 + 0.1360833 * T - 10576.913 / T - 123.73158 * log - 6.996455e-5 * T * T),
    kCalcite: power10(-171.9065 - 0.077993 * T + 2839.319 / T + 71.595 * log),
    kCaHCO3: power10(1209.12 + 0.31294 * T - 34765.05 / T - 478.782 * log),
    kCaCO3: power10(-1228.732 - 0.299444 * T + 35512.75 / T + 485.818 * log),
    kNaHCO3: power10(-0.06 - (21000 / (LN10 * 8.314462)) * (1 / T - 1 / 298.15)),
    kCaOH: power10(-12.78),
    kHSO4: power10(56.889 - 0.006473 * T - 2307.9 / T - 19.8858 * log),
    slopeA: (1.82483e6 * rootDensity) / (epsilonT * sqrt(epsilonT)),
    slopeB: (50.2916 * rootDensity) / sqrt(epsilonT),
  };
};

/**
 * Mole fraction of CO2 in ordinary outdoor air, ppm: Mauna Loa monthly mean of May 2025 was 430; 420 stands
 * for the mid-2020s.
 */
export const AIR_CO2_PPM = 420;
/** atm from ppm of CO2 at sea-level pressure. */
export const pressureOfCO2 = (ppm: number): number => ppm * 1e-6;

import type { Constants } from './constants';

// Taken out of Math once: these run in the innermost loops.
const { LN10, exp, sqrt } = Math;

/** Activity coefficients at one ionic strength. */
export interface Activity {
  readonly h: number;
  readonly oh: number;
  readonly hco3: number;
  readonly co3: number;
  readonly na: number;
  readonly ca: number;
  readonly caOH: number;
  readonly caHCO3: number;
  readonly so4: number;
  readonly hso4: number;
  readonly co2: number;
  readonly neutral: number;
}

/**
 * Activity coefficients of the ions of a fresh or lightly salted water.
 *
 * Equation as published: log γ = −A z² √I / (1 + B å √I) + b I (Truesdell and Jones), Davies for ions without
 * å; uncharged pairs log γ = 0.1 I, CO2(aq) 0.066 I. In: ionic strength, mol/kg. Out: γ. Validity: up to
 * about 0.5 mol/kg (salt 25 g/L). Source: PHREEQC (å in ångström and b as in its default database).
 * Example: 25 °C, I = 0.001 → γ of HCO3− 0.965.
 */
export const activityAt = ({ slopeA, slopeB }: Constants, ionicStrength: number): Activity => {
  const root = sqrt(ionicStrength);
  const one = -LN10 * slopeA * root;
  const size = slopeB * root;
  const per = LN10 * ionicStrength;
  const davies = exp(-LN10 * slopeA * (root / (1 + root) - 0.3 * ionicStrength));
  const hco3 = exp(one / (1 + 5.4 * size));
  const hco3Square = hco3 * hco3;
  return {
    h: exp(one / (1 + 9 * size)),
    oh: exp(one / (1 + 3.5 * size)),
    hco3,
    co3: hco3Square * hco3Square,
    na: exp(one / (1 + 4.08 * size) + 0.082 * per),
    ca: exp((4 * one) / (1 + 5 * size) + 0.165 * per),
    caOH: davies,
    caHCO3: exp(one / (1 + 6 * size)),
    so4: exp((4 * one) / (1 + 5 * size) - 0.04 * per),
    hso4: davies,
    co2: exp(0.066 * per),
    neutral: exp(0.1 * per),
  };
};

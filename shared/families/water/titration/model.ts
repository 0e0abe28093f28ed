import type { Conditions } from '../carbonate/conditions';
import { sharesAt } from '../carbonate/conditions';

// Taken out of Math once: these run in the innermost loops.
const { LN10, abs, exp } = Math;

/**
 * A simplified water for fast repeated solving: fixed conditional constants, carbon, strong-ion balance and
 * organic acid sites.
 */
export interface Sample {
  /** Strong-ion balance, meq/L; equal to alkalinity without organic sites. */
  readonly balance: number;
  /** Total inorganic carbon, mmol/L. */
  readonly carbon: number;
  /** Acid sites of dissolved organic matter, meq/L. */
  readonly sites: number;
}

/**
 * Acid constants of the three equal kinds of site: a three-proton model of humic matter in lakes and streams
 * (KOHL00, HRUS03).
 */
const SITE_K = [10 ** -3.04, 10 ** -4.51, 10 ** -6.46] as const;

/** Share of the sites that have given up their proton. */
export const sitesOpen = (a: number): number =>
  (SITE_K[0] / (SITE_K[0] + a) + SITE_K[1] / (SITE_K[1] + a) + SITE_K[2] / (SITE_K[2] + a)) / 3;

/** Its slope against the natural logarithm of falling acidity. */
export const sitesSlope = (a: number): number =>
  ((SITE_K[0] * a) / (SITE_K[0] + a) ** 2 +
    (SITE_K[1] * a) / (SITE_K[1] + a) ** 2 +
    (SITE_K[2] * a) / (SITE_K[2] + a) ** 2) /
  3;

/**
 * The pH of a closed sample: Newton steps inside a bracket, as in the full solver but with the constants
 * held.
 */
export const samplePH = (
  c: Conditions,
  balance: number,
  carbon: number,
  sites: number,
  guess: number,
): number => {
  let low = 0;
  let high = 14;
  let ph = guess;
  let last = 1e300;
  for (let step = 0; step < 60; step++) {
    const a = exp(-LN10 * ph);
    const r1 = c.k1 / a;
    const r2 = c.k12 / (a * a);
    const sum = 1 + r1 + r2;
    const base = c.wBase / a;
    const acid = c.wAcid * a;
    let miss = (carbon * (r1 + 2 * r2)) / sum + base - acid - balance;
    let slope = (carbon * (r1 * (1 + r2) + 4 * r2)) / (sum * sum) + base + acid;
    if (sites > 0) {
      miss += sites * sitesOpen(a);
      slope += sites * sitesSlope(a);
    }
    if (miss > 0) high = ph;
    else low = ph;
    const newton = ph - miss / (slope * LN10);
    const next = newton > low && newton < high && abs(miss) < 0.5 * abs(last) ? newton : (low + high) / 2;
    last = miss;
    // Newton doubles the digits: after a step this small the rest is below a millionth.
    if (abs(next - ph) < 1e-3 && next === newton) return next;
    if (high - low < 1e-9) return next;
    ph = next;
  }
  return ph;
};

/** CO2(aq) of a sample at its pH, mmol/L. */
export const carbonDioxideAt = (c: Conditions, carbon: number, ph: number): number => {
  const a = exp(-LN10 * ph);
  return carbon / (1 + c.k1 / a + c.k12 / (a * a));
};

/** The sample of a pH and a CO2 content. */
export const sampleFrom = (c: Conditions, ph: number, carbonDioxide: number, sites: number): Sample => {
  const { perCarbon, perCO2, w } = sharesAt(c, ph);
  return {
    balance: carbonDioxide * perCO2 + w + sites * sitesOpen(10 ** -ph),
    carbon: (carbonDioxide * perCO2) / perCarbon,
    sites,
  };
};

/**
 * mmol/L of a material (e meq and c mmol of carbon each) that takes a closed sample to a pH; Infinity when it
 * never gets there.
 */
export const sampleDose = (
  c: Conditions,
  sample: Sample,
  equivalents: number,
  carbonEach: number,
  ph: number,
): number => {
  const { perCarbon, w } = sharesAt(c, ph);
  const each = equivalents - carbonEach * perCarbon;
  const lack = sample.carbon * perCarbon + w + sample.sites * sitesOpen(10 ** -ph) - sample.balance;
  if (lack <= 0) return 0;
  return each > 0 ? lack / each : Infinity;
};

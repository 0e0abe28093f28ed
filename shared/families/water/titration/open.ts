import type { Conditions } from '../carbonate/conditions';
import { sharesAt } from '../carbonate/conditions';
import type { Sample } from './model';
import { sitesOpen, sitesSlope } from './model';

/** A sample of water once the air has had its way: CO2 fixed by the air, strong ions as they are. */

// Taken out of Math once: these run in the innermost loops.
const { LN10, abs, exp } = Math;
/** More than halving alone would need. */
const MOST_STEPS = 60;

/** meq/L of strong-ion balance that stands at a pH in balance with the air. */
export const balanceAired = (c: Conditions, airCO2: number, sites: number, ph: number): number => {
  const { perCO2, w } = sharesAt(c, ph);
  return airCO2 * perCO2 + w + (sites > 0 ? sites * sitesOpen(10 ** -ph) : 0);
};

/** The pH at which a sample stands in balance with the air: Newton steps inside a bracket. */
export const airedPH = (
  c: Conditions,
  airCO2: number,
  { balance, sites }: Pick<Sample, 'balance' | 'sites'>,
): number => {
  let low = 2;
  let high = 12;
  let ph = 6.5;
  let last = 1e300;
  for (let step = 0; step < MOST_STEPS; step++) {
    const a = exp(-LN10 * ph);
    const one = (airCO2 * c.k1) / a;
    const two = (airCO2 * c.k12) / (a * a);
    const base = c.wBase / a;
    const acid = c.wAcid * a;
    let miss = one + 2 * two + base - acid - balance;
    let slope = one + 4 * two + base + acid;
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
    ph = next;
  }
  return ph;
};

/** mmol/L of a material with so many meq each that a sample needs to stand at a pH once aired; 0 when none. */
export const airedDose = (
  c: Conditions,
  airCO2: number,
  { balance, sites }: Sample,
  equivalents: number,
  ph: number,
): number => Math.max(0, (balanceAired(c, airCO2, sites, ph) - balance) / equivalents);

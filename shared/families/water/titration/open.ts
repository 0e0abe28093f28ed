import type { Conditions } from '../carbonate/conditions';
import { sharesAt } from '../carbonate/conditions';
import type { Sample } from './model';
import { sitesOpen } from './model';

/** A sample of water once the air has had its way: CO2 fixed by the air, strong ions as they are. */

const HALVINGS = 26;

/** meq/L of strong-ion balance that stands at a pH in balance with the air. */
export const balanceAired = (c: Conditions, airCO2: number, sites: number, ph: number): number => {
  const { perCO2, w } = sharesAt(c, ph);
  return airCO2 * perCO2 + w + (sites > 0 ? sites * sitesOpen(10 ** -ph) : 0);
};

/** pH of a sample in balance with the air, by halving: the balance rises with the pH. */
export const airedPH = (c: Conditions, airCO2: number, { balance, sites }: Sample): number => {
  let low = 2;
  let high = 12;
  for (let i = 0; i < HALVINGS; i++) {
    const middle = (low + high) / 2;
    if (balanceAired(c, airCO2, sites, middle) < balance) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
};

/** mmol/L of a material with so many meq each that a sample needs to stand at a pH once aired; 0 when none. */
export const airedDose = (
  c: Conditions,
  airCO2: number,
  { balance, sites }: Sample,
  equivalents: number,
  ph: number,
): number => Math.max(0, (balanceAired(c, airCO2, sites, ph) - balance) / equivalents);

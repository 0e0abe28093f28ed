import type { Conditions } from '../carbonate/conditions';

/** One dosing as it was written down: running total of product and the pH read after it. */
export interface Series {
  /** mmol/L of product since the start, one per reading. */
  readonly doses: readonly number[];
  readonly readings: readonly number[];
  /** Readings that a second one has confirmed; the others may have been taken before the dose had mixed. */
  readonly settled?: readonly boolean[];
}

export interface Beliefs {
  readonly conditions: Conditions;
  /** meq and mmol of carbon per mmol of product. */
  readonly equivalents: number;
  readonly carbonEach: number;
  /** Air bubbles through the vat: more gas moves between two readings. */
  readonly isUnderAir?: boolean;
  /** Brown as tea: acids of peat or leaves are likely. */
  readonly isBrown?: boolean;
  /** CO2(aq) in balance with the air, mmol/L. */
  readonly airCO2: number;
  /** Random error of one reading and lasting offset of the meter, standard deviations in pH. */
  readonly noise: number;
  readonly offset: number;
  /** log10 of the CO2 pressure of the untouched water, atm: mean and standard deviation. */
  readonly pressure: { readonly mean: number; readonly sd: number };
  /** Alkalinity by kit, meq/L, with its standard error. */
  readonly kit?: { readonly value: number; readonly error: number } | undefined;
  /** Alkalinity the conductivity leaves room for, meq/L. */
  readonly mostAlkalinity: number;
}

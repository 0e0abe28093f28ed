import type { Constants } from './constants';
import type { Water } from './carbonate';
import { alkalinityOf, solve } from './carbonate';
import { carbonDioxideAt, samplePH } from '../titration/model';

/** How fast a tank exchanges CO2 with the air, per hour. Assumed values from memory: kL divided by depth. */
export const TANKS = { still: 0.05, gentle: 0.3, vigorous: 2 } as const; // 1/h, from memory
export type TankName = keyof typeof TANKS;

export interface DriftMoment {
  readonly hours: number;
  readonly ph: number;
  readonly carbonDioxide: number;
}

/** Fraction of the exchange time one step of the integrator spans. */
const STRIDE = 0.25;

/**
 * pH of a water left to exchange CO2 with the air, at the times asked for (rising, hours).
 *
 * Equation: d DIC/dt = −k ([CO2] − KH p), alkalinity unchanged; fourth-order Runge–Kutta in steps of a
 * quarter of 1/k. In: water in mmol/L, air pressure of CO2 in atm, k in 1/h. Out: mmol/L, pH. Validity:
 * nothing breathes, grows or precipitates. Source: definition of first-order exchange; k is from memory
 * (PRACTICE). Example: 0.1 meq/L with 15 mg/L of CO2, pH 5.81, 26 °C, k 2/h → 6.57 after 1 h, 7.19 at the
 * end.
 */
export const drift = (
  k: Constants,
  water: Water,
  pressure: number,
  rate: number,
  hours: readonly number[],
): DriftMoment[] => {
  const { conditions } = solve(k, water, { kind: 'closed' });
  const air = conditions.kh * pressure;
  const alkalinity = alkalinityOf(water);
  let ph = samplePH(conditions, alkalinity, water.carbon, 0, 7);
  const flow = (carbon: number): number => {
    ph = samplePH(conditions, alkalinity, carbon, 0, ph);
    return -rate * (carbonDioxideAt(conditions, carbon, ph) - air);
  };
  let { carbon } = water;
  let at = 0;
  return hours.map((until) => {
    while (at < until - 1e-12) {
      const step = Math.min(until - at, STRIDE / rate);
      const k1 = flow(carbon);
      if (Math.abs(k1) < 1e-7 * rate * air) {
        at = until;
        break;
      }
      const k2 = flow(carbon + (step * k1) / 2);
      const k3 = flow(carbon + (step * k2) / 2);
      const k4 = flow(carbon + step * k3);
      carbon += (step * (k1 + 2 * k2 + 2 * k3 + k4)) / 6;
      at += step;
    }
    ph = samplePH(conditions, alkalinity, carbon, 0, ph);
    return { hours: until, ph, carbonDioxide: carbonDioxideAt(conditions, carbon, ph) };
  });
};

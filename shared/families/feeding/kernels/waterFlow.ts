import { HOURS_PER_DAY, milligramsFromGrams } from '../../../units/convert';

const MINUTES_PER_HOUR = 60;

/**
 * Flow that brings a given amount of oxygen: use / (inflow − least outflow).
 * In: mg/h, mg/L, mg/L. Out: L/min. NaN when the inflow holds no more than the outflow may. Source:
 * DEFINITION (mass balance). Example: 6,000 mg/h between 7.8 and 5 mg/L → 35.7 L/min.
 */
export const flowForOxygen = (use: number, inflow: number, outflow: number): number =>
  inflow > outflow ? use / (inflow - outflow) / MINUTES_PER_HOUR : NaN;

/**
 * Flow that keeps total ammonia nitrogen below a limit: made / (limit − inflow).
 * In: g/d, mg/L, mg/L. Out: L/min. NaN when the inflow is at the limit already. Source: DEFINITION (mass
 * balance). Example: 41.4 g/d, limit 5.2 mg/L, clean inflow → 5.5 L/min.
 */
export const flowForAmmonia = (made: number, limit: number, inflow: number): number =>
  limit > inflow ? milligramsFromGrams(made) / (limit - inflow) / (HOURS_PER_DAY * MINUTES_PER_HOUR) : NaN;

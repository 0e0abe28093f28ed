import { kelvinFromCelsius } from '../units/convert';
import type { Measure } from '../units/quantities';

/**
 * Share of total ammonia nitrogen that is un-ionised (toxic) NH3 in fresh water.
 *
 * Equation as published: f = 1 / (1 + 10^(pKa − pH)), pKa = 0.09018 + 2729.92 / T, T in kelvin.
 * In: °C, pH. Out: share 0 to 1. Validity: 0 to 50 °C, zero salinity.
 * Source: EMER75. A copy in circulation prints 2727.92 for 2729.92; that is a digit error.
 * Example: 25 °C, pH 8.0 → 0.0537.
 */
export const ammoniaFraction = (temperature: Measure<'°C'>, ph: Measure<'pH'>): number => {
  const pKa = 0.09018 + 2729.92 / kelvinFromCelsius(temperature);
  return 1 / (1 + 10 ** (pKa - ph));
};

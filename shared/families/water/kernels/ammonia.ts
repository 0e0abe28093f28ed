import { kelvinFromCelsius } from '../../../units/convert';
import type { Measure } from '../../../units/quantities';

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

/** pH at which a share of the ammonia is un-ionised; NaN for a share outside 0 to 1. */
export const phForFraction = (temperature: Measure<'°C'>, fraction: number): number =>
  0.09018 + 2729.92 / kelvinFromCelsius(temperature) - Math.log10(1 / fraction - 1);

/** What a kit's figure is of. */
export const AMMONIA_UNITS = ['N', 'NH4', 'NH3'] as const;
/** Molar masses, g/mol: N 14.007, NH4 18.038, NH3 17.031. */
const NITROGEN_PER = { N: 1, NH4: 14.007 / 18.038, NH3: 14.007 / 17.031 } as const;
export const nitrogenFrom = (amount: number, unit: (typeof AMMONIA_UNITS)[number]): number =>
  amount * NITROGEN_PER[unit];

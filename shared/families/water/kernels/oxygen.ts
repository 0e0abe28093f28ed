import type { Measure } from '../../../units/quantities';
import { kelvinFromCelsius } from '../../../units/convert';

/** Pressure at a height, atm. Standard atmosphere: p = (1 − 2.25577e−5 h)^5.25588, h in metres to 11,000. */
export const pressureAt = (altitude: Measure<'m'>): number => (1 - 2.25577e-5 * altitude) ** 5.25588;

/** Vapour pressure of water over a salinity, atm, as in the Benson and Krause pressure term. */
const vapour = (T: number, salinity: number): number =>
  (1 - 0.000537 * salinity) *
  Math.exp(
    18.1973 * (1 - 373.16 / T) +
      3.1813e-7 * (1 - Math.exp(26.1205 * (1 - T / 373.16))) -
      0.018726 * (1 - Math.exp(8.03945 * (1 - 373.16 / T))) +
      5.02802 * Math.log(373.16 / T),
  );

/**
 * Oxygen that water holds in balance with air, mg/L.
 *
 * Equations as published: ln C = −139.34411 + 1.575701e5/T − 6.642308e7/T² + 1.243800e10/T³ − 8.621949e11/T⁴
 *   − S (0.017674 − 10.754/T + 2140.7/T²); C_P = C P (1 − Pw/P)(1 − θP) / ((1 − Pw)(1 − θ)), θ = 0.000975 −
 * 1.426e−5 t + 6.436e−8 t². In: °C, g/kg (taken as g/L below 40), atm. Out: mg/L. Validity: 0 to 40 °C,
 * salinity 0 to 40, 0.5 to 1.1 atm. Source: BEKR84. Example: 28 °C, fresh, sea level → 7.828.
 */
export const oxygenSaturation = (temperature: Measure<'°C'>, salinity: number, pressure: number): number => {
  const T = kelvinFromCelsius(temperature);
  const atSeaLevel = Math.exp(
    -139.34411 +
      1.575701e5 / T -
      6.642308e7 / T ** 2 +
      1.2438e10 / T ** 3 -
      8.621949e11 / T ** 4 -
      salinity * (0.017674 - 10.754 / T + 2140.7 / T ** 2),
  );
  const theta = 0.000975 - 1.426e-5 * temperature + 6.436e-8 * temperature ** 2;
  const pw = vapour(T, salinity);
  return (atSeaLevel * pressure * (1 - pw / pressure) * (1 - theta * pressure)) / ((1 - pw) * (1 - theta));
};

import { fahrenheitFromCelsius } from '../../../units/convert';

/** Change of the safe load per °F, share. PIPER82 p. 356 */
const PER_FAHRENHEIT = 0.0556;

/**
 * Safe load of a transport tank at another temperature: 5.56 % less per °F warmer, as much more per °F
 * cooler.
 *
 * In: kg known to be safe, its temperature, the new one, °C. Out: kg. Published for 5 °F up or down; NaN
 * beyond. Source: PIPER82. Example: 1,000 kg, 5 °F warmer → 722 kg.
 */
export const transportLoad = (load: number, known: number, now: number): number => {
  const warmer = fahrenheitFromCelsius(now) - fahrenheitFromCelsius(known);
  return Math.abs(warmer) <= 5 + 1e-9 ? load * (1 - PER_FAHRENHEIT * warmer) : NaN;
};

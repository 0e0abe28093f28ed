/**
 * Thermal growth coefficient: scale × (end^⅓ − start^⅓) / (temperature × days).
 *
 * In: g, g, °C (mean over the days), days, scale 1000 or 100. Out: coefficient. Source: IWAM81.
 * Limits (JOBL03): assumes growth rises steadily with temperature, weight goes with length cubed and length
 * grows on a straight line. All can fail; never use it above the best temperature. Example: 10 → 350 g at 11
 * °C in 200 d, scale 100 → 0.222.
 */
export const thermalGrowth = (
  start: number,
  end: number,
  temperature: number,
  days: number,
  scale: number,
): number => (scale * (Math.cbrt(end) - Math.cbrt(start))) / (temperature * days);

/**
 * Weight after some days: (start^⅓ + coefficient/scale × temperature × days)³. Example: the inverse of the
 * one above.
 */
export const weightByThermal = (
  start: number,
  coefficient: number,
  temperature: number,
  days: number,
  scale: number,
): number => (Math.cbrt(start) + (coefficient / scale) * temperature * days) ** 3;

/**
 * Days to a weight: scale × (end^⅓ − start^⅓) / (coefficient × temperature). Example: the inverse of the
 * first.
 */
export const daysByThermal = (
  start: number,
  end: number,
  coefficient: number,
  temperature: number,
  scale: number,
): number => (scale * (Math.cbrt(end) - Math.cbrt(start))) / (coefficient * temperature);

/**
 * Specific growth rate: 100 × (ln end − ln start) / days.
 *
 * In: g, g, days. Out: % per day. Source: RICKER79. A page in circulation prints 4.615 for 30 → 60 g in 15
 * days; it is 4.621. Example: 50 → 100 g in 10 days → 6.931.
 */
export const specificGrowth = (start: number, end: number, days: number): number =>
  (100 * Math.log(end / start)) / days;

/**
 * Weight after some days at a steady specific rate: start × e^(rate × days / 100). Example: 50 g at 6.931 for
 * 10 days → 100 g.
 */
export const weightAfter = (start: number, rate: number, days: number): number =>
  start * Math.exp((rate * days) / 100);

/** Days from one weight to another at a steady specific rate. Example: 50 → 100 g at 6.931 → 10. */
export const daysToWeight = (start: number, end: number, rate: number): number =>
  (100 * Math.log(end / start)) / rate;

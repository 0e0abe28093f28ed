/**
 * Daily survival behind a total one: (alive / stocked)^(1/days). Source: DEFINITION. Example: 50 % over 10
 * days → 0.9330.
 */
export const dailySurvival = (stocked: number, alive: number, days: number): number =>
  (alive / stocked) ** (1 / days);

/**
 * Number left after some days at an even daily survival. Source: DEFINITION. Example: 1,000 at 0.99 for 10
 * days → 904.4.
 */
export const survivorsAfter = (stocked: number, daily: number, days: number): number =>
  stocked * daily ** days;

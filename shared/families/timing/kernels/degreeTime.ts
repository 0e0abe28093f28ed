/**
 * Degree-time arithmetic of yolk-feeding fish.
 * Equation as published: τ = D/(t − t0), 1/τ = a + b·t, t0 = −a/b, D = 1/b. In: °C, h. Out: °C·h or h.
 * Validity: a constant temperature inside the linear range. Source: KAMLER02.
 * Example: carp at 26 °C 45.17 h and 33 °C 32.75 h → t0 7.54 °C.
 */

/** Warmth above a base over some hours; none below the base. */
export const degreeHoursOf = (hours: number, temperature: number, base: number): number =>
  hours * Math.max(0, temperature - base);

/** Hours for a warmth sum; NaN at or below the base, where nothing develops. */
export const hoursForWarmth = (warmth: number, temperature: number, base: number): number =>
  temperature > base ? warmth / (temperature - base) : NaN;

/**
 * Base temperature from two durations: t0 = (D1·T1 − D2·T2)/(D1 − D2) (CARPZERO). NaN when the durations are
 * alike.
 */
export const baseFromPair = (t1: number, h1: number, t2: number, h2: number): number =>
  h1 === h2 ? NaN : (h1 * t1 - h2 * t2) / (h1 - h2);

export interface WarmthFit {
  readonly base: number;
  readonly warmth: number;
  readonly rSquared: number;
}

/** Least squares of 1/τ on t (KAMLER02). NaN when all temperatures are alike. */
export function fitWarmth(temperatures: readonly number[], hours: readonly number[]): WarmthFit {
  const rates = hours.map((h) => 1 / h);
  const mean = (list: readonly number[]): number => list.reduce((a, b) => a + b, 0) / list.length;
  const t = mean(temperatures);
  const r = mean(rates);
  const sum = (f: (dt: number, dr: number) => number): number =>
    temperatures.reduce((s, ti, i) => s + f(ti - t, (rates[i] ?? NaN) - r), 0);
  const txt = sum((dt) => dt * dt);
  const slope = sum((dt, dr) => dt * dr) / txt;
  return {
    base: t - r / slope,
    warmth: 1 / slope,
    rSquared: (slope * slope * txt) / sum((_, dr) => dr * dr),
  };
}

/**
 * How many to start with so that the wanted number is left, and how many are left of a number started with.
 *
 * Equation: start = wanted / (s1 · s2 · … · sn); left = start · s1 · s2 · … · sn.
 * In: number of fish, survival shares 0 to 1. Out: number of fish, not rounded.
 * Validity: any; a share of 0 gives no finite start. Exact arithmetic.
 * A known error in print adds the loss to the number (1 + 0.5 for a loss of half) instead of dividing by what
 * survives (STERLETCHAIN). Example: 100,000 wanted, survivals 0.7 and 0.8 → 178,571.4 to start with.
 */
export const startOfChain = (wanted: number, survivals: readonly number[]): number =>
  survivals.reduce((n, s) => n / s, wanted);
export const endOfChain = (started: number, survivals: readonly number[]): number =>
  survivals.reduce((n, s) => n * s, started);

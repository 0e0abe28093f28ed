/**
 * Repeatable random numbers: the same seed gives the same numbers in every host.
 *
 * Generator: three shifts and a counter over 128 bits of state (Doty-Humphrey's small fast counting
 * generator, from memory), the state filled from the seed by a mixing step and twelve idle rounds. Normal
 * numbers by the polar method of Marsaglia and Bray 1964 (textbook). Example: the same seed twice gives the
 * same list.
 */
export interface Rng {
  /** Evenly between 0 and 1, neither end. */
  readonly even: () => number;
  /** Bell-shaped, mean 0, deviation 1. */
  readonly normal: () => number;
}

const IDLE_ROUNDS = 12;
const STEP = 2 ** -32;

export function rngOf(seed: number): Rng {
  let a = Math.imul(seed | 0, 0x9e3779b1) ^ 0x243f6a88;
  let b = Math.floor(seed / 2 ** 32) ^ 0x85a308d3;
  let c = 0x13198a2e;
  let counter = 1;
  const next = (): number => {
    const sum = (((a + b) | 0) + counter) | 0;
    counter = (counter + 1) | 0;
    a = b ^ (b >>> 9);
    b = (c + (c << 3)) | 0;
    c = (((c << 21) | (c >>> 11)) + sum) | 0;
    return sum >>> 0;
  };
  for (let i = 0; i < IDLE_ROUNDS; i++) next();
  const even = (): number => (next() + 0.5) * STEP;
  let spare = NaN;
  const normal = (): number => {
    if (spare === spare) {
      const kept = spare;
      spare = NaN;
      return kept;
    }
    for (;;) {
      const x = 2 * even() - 1;
      const y = 2 * even() - 1;
      const square = x * x + y * y;
      if (square >= 1 || square === 0) continue;
      const factor = Math.sqrt((-2 * Math.log(square)) / square);
      spare = y * factor;
      return x * factor;
    }
  };
  return { even, normal };
}

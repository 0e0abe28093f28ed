/** Repeatable chance for simulations in tests: the same seed gives the same numbers on every machine. */
export const chance = (seed: number): (() => number) => {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return (state + 0.5) / 4294967296;
  };
};

/** A bell-shaped number with mean 0 and deviation 1 (Box and Muller). */
export const bell = (random: () => number): number =>
  Math.sqrt(-2 * Math.log(random())) * Math.cos(2 * Math.PI * random());

/** How many of n succeed. */
export const successes = (random: () => number, n: number, p: number): number => {
  let k = 0;
  for (let i = 0; i < n; i++) if (random() < p) k++;
  return k;
};

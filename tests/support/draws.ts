/** A repeatable stream of draws for simulations: even, bell-shaped, between two numbers (mulberry32). */
export interface Draws {
  readonly uniform: () => number;
  readonly normal: () => number;
  readonly between: (a: number, b: number) => number;
}
export const drawsFrom = (seed: number): Draws => {
  let state = seed >>> 0;
  const uniform = (): number => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = state;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
  return {
    uniform,
    normal: () => Math.sqrt(-2 * Math.log(1 - uniform())) * Math.cos(2 * Math.PI * uniform()),
    between: (a, b) => a + (b - a) * uniform(),
  };
};

export interface Uncertain {
  readonly name: string;
  readonly low: number;
  readonly planned: number;
  readonly high: number;
}
export interface Swing {
  readonly name: string;
  readonly atLow: number;
  readonly atHigh: number;
  readonly swing: number;
}

/**
 * What the result does when one figure at a time goes from its low to its high end and all others stay as
 * planned, the widest first (a tornado table).
 * In: figures with their ends, and the result as a function of them. Out: one row a figure. Source:
 * DEFINITION. Example: result a·b with a 1…3 around 2 and b 4…5 around 5 → a: 5 to 15; b: 8 to 10.
 */
export function swingsOf(
  figures: readonly Uncertain[],
  result: (values: readonly number[]) => number,
): Swing[] {
  const planned = figures.map((f) => f.planned);
  const withOne = (i: number, value: number): number => result(planned.map((p, k) => (k === i ? value : p)));
  return figures
    .map(({ name, low, high }, i) => {
      const [atLow, atHigh] = [withOne(i, low), withOne(i, high)];
      return { name, atLow, atHigh, swing: Math.abs(atHigh - atLow) };
    })
    .sort((a, b) => b.swing - a.swing);
}

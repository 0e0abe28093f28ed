/**
 * Median time of a batch, in nanoseconds per call; A and B are interleaved so that both see the same machine.
 */
export function compare(
  a: () => number,
  b: () => number,
  callsPerBatch: number,
  rounds = 21,
): { a: number; b: number; ratio: number } {
  const times: [number[], number[]] = [[], []];
  let sink = 0;
  for (let round = 0; round < rounds + 3; round++) {
    for (const [i, run] of [a, b].entries()) {
      const start = process.hrtime.bigint();
      sink += run();
      const spent = Number(process.hrtime.bigint() - start) / callsPerBatch;
      // The first rounds warm the compiler up.
      if (round >= 3) times[i as 0 | 1].push(spent);
    }
  }
  if (!Number.isFinite(sink)) throw new Error('the loops must consume real results');
  const median = (xs: number[]): number => xs.toSorted((x, y) => x - y)[Math.floor(xs.length / 2)] ?? NaN;
  return { a: median(times[0]), b: median(times[1]), ratio: median(times[0]) / median(times[1]) };
}

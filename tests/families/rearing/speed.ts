/**
 * Run by speed.test.ts in a plain Node process, as the shipped bundle runs: times 10,000 rows of each
 * function, as JSON lines.
 */
import { findFunction } from '../../../shared/catalogue';
import { invoke } from '../../../shared/functions/invoke';
import type { Cell, Grid } from '../../../shared/base/values';
import { isError, isGrid } from '../../../shared/base/values';

const ROWS = 10_000;
const RUNS = 25;
const range = (at: (i: number) => Cell): Grid => Array.from({ length: ROWS }, (_, i) => [at(i)]);
const fish = range((i) => 20 + (i % 500));
const weights = range((i) => 1 + (i % 400) / 10);
const rations = range((i) => 0.02 + (i % 30) / 1000);
const sample = range((i) => 200 + (i % 50));
const hatched = range((i) => 100 + (i % 90));
const column = (...values: readonly number[]): Grid => values.map((v) => [v]);

const cases: readonly (readonly [string, readonly (Cell | Grid)[]])[] = [
  ['FEED.DAILY', [fish, weights, rations]],
  ['SHARE.INTERVAL', [hatched, sample]],
  ['HATCH.SHARE', [hatched, sample]],
  ['SHARE.COMPARE', [hatched, sample, 150, 200]],
  ['COUNT.INTERVAL', [fish]],
  ['OXYGEN.USE', [fish, weights]],
  ['RATION.GUIDE', [weights]],
  ['RATION.LOOKUP', [weights, column(0.5, 2, 5, 12, 45), column(0.15, 0.1, 0.08, 0.06, 0.04)]],
  ['GROWTH.SGR', [weights, 60, 20]],
  ['GROWTH.DAYSBYTGC', [weights, 60, 1.2, 27]],
  ['STOCKING.CHECK', [fish, 'eggs', 60]],
  ['CONDITION.FACTOR', [weights, 12]],
  ['CYSTS.WATER', [fish]],
];

for (const [id, args] of cases) {
  const fn = findFunction(`SPAWN.${id}`);
  if (!fn) throw new Error(id);
  let best = Infinity;
  let answered = 0;
  for (let run = 0; run < RUNS; run++) {
    const from = performance.now();
    const got = invoke(fn, args);
    best = Math.min(best, performance.now() - from);
    answered = isGrid(got) ? got.filter((row) => !row.some(isError)).length : 0;
  }
  console.log(JSON.stringify({ id, best, answered }));
}

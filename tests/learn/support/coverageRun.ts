/**
 * Simulates farms and prints how often the intervals hold the truth, one JSON line for each cell.
 *   node src/build/run.mjs tests/learn/support/coverageRun.ts 2000 > tests/data/learn_coverage.jsonl   writes the
 * table again (long) node src/build/run.mjs tests/learn/support/coverageRun.ts 10  
 *    what the test repeats of it Each line also holds the hits of the first farms, so that the test can see
 * whether the table is still that of this estimator.
 */
import { RATE_KEYS } from '../../../shared/families/learning/rates';
import { coverage } from './coverage';
import type { World } from './farms';

export const FIRST = 10;
const WORLDS: readonly World[] = ['assumed', 'other', 'far'];
const RUNS = [1, 2, 4, 10, 30];

const [farms = FIRST, part = 0, parts = 1] = process.argv.slice(2).map(Number);
let cell = 0;
for (const [r, rate] of RATE_KEYS.entries())
  for (const [w, world] of WORLDS.entries())
    for (const runs of RUNS) {
      if (cell++ % parts !== part) continue;
      const seed = 1 + 7919 * (100 * r + 10 * w) + runs;
      const first = coverage(rate, world, runs, FIRST, seed);
      console.log(
        JSON.stringify({
          ...(farms > FIRST ? coverage(rate, world, runs, farms, seed) : first),
          first: {
            mean: first.mean,
            next: first.next,
            kindMean: first.kindMean,
            kindNext: first.kindNext,
            width: Number(first.width.toPrecision(8)),
          },
        }),
      );
    }

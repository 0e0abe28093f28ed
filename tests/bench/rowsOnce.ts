/**
 * Run by rows.ts in a plain Node process, as the shipped bundle runs: processor time of 10,000 rows of
 * each function, as JSON lines.
 */
import { findFunction } from '../../shared/catalogue';
import { invoke } from '../../shared/functions/invoke';
import type { Cell, Grid } from '../../shared/base/values';
import { isError, isGrid } from '../../shared/base/values';

const ROWS = 10_000;
const RUNS = 25;
const range = (at: (i: number) => Cell): Grid => Array.from({ length: ROWS }, (_, i) => [at(i)]);
const fish = range((i) => 20 + (i % 500));
const weights = range((i) => 1 + (i % 400) / 10);
const rations = range((i) => 0.02 + (i % 30) / 1000);
const sample = range((i) => 200 + (i % 50));
const hatched = range((i) => 100 + (i % 90));
const column = (...values: readonly number[]): Grid => values.map((v) => [v]);

const temperatures = range((i) => 20 + (i % 1000) / 100);
const females = range((i) => 0.5 + (i % 300) / 100);
const moments = range((i) => 46_000 + i / 1e4);
const log: readonly [Grid, Grid] = [
  Array.from({ length: 500 }, (_, i) => [46_000 + i / 240]),
  Array.from({ length: 500 }, (_, i) => [25 + Math.sin(i / 20)]),
];
const ownTable: readonly [Grid, Grid] = [column(20, 24, 30), column(20, 13, 7)];

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
  ['LATENCY.HOURS', [temperatures]],
  ['STRIP.TIME', [moments, temperatures, 'pituitary', 0, ...ownTable]],
  ['STRIP.WINDOW', [moments, temperatures]],
  ['HATCH.TIME', [moments, temperatures, 'African catfish']],
  ['LOG.PROGRESS', [46_000, moments, ...log]],
  ['LOG.FINISH', [46_000, ...log, temperatures]],
  ['LOG.DEGREE.HOURS', [...log, 15.4, 46_000, moments]],
  ['HORMONE.VOLUME', [females]],
  ['HORMONE.DOSE', [females, 'hCG', 3000, 1000]],
  ['HORMONE.TABLE', [females]],
  ['FEMALES.NEEDED', [100_000, females, 0.143, 669]],
];

for (const [id, args] of cases) {
  const fn = findFunction(`SPAWN.${id}`);
  if (!fn) throw new Error(id);
  let best = Infinity;
  let answered = 0;
  for (let run = 0; run < RUNS; run++) {
    const from = process.cpuUsage();
    const got = invoke(fn, args);
    const { user, system } = process.cpuUsage(from);
    best = Math.min(best, (user + system) / 1000);
    answered = isGrid(got) ? got.filter((row) => !row.some(isError)).length : 0;
  }
  console.log(JSON.stringify({ id, best, answered }));
}

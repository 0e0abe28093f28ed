import { execFileSync } from 'node:child_process';
import type { Timing } from './catalogue';

interface Timed {
  readonly id: string;
  /** Milliseconds of processor time, the best of some runs. */
  readonly best: number;
  /** Rows that did not end in an error. */
  readonly answered: number;
}
const LEAST_ANSWERED = 8000;

/** 10,000 rows in one call, function by function; the slowest is the figure. */
export function rowTimings(): Timing[] {
  const timed = execFileSync(process.execPath, ['src/build/run.mjs', 'tests/bench/rowsOnce.ts'], {
    encoding: 'utf8',
  })
    .trim()
    .split('\n')
    .map((line) => JSON.parse(line) as Timed);
  const idle = timed.filter(({ answered }) => answered < LEAST_ANSWERED);
  if (idle.length > 0) throw new Error(`no real work: ${idle.map(({ id }) => id).join(', ')}`);
  const slowest = timed.reduce((a, b) => (b.best > a.best ? b : a));
  return [
    {
      name: `10,000 rows of the slowest of ${timed.length} functions (${slowest.id})`,
      value: slowest.best,
      unit: 'ms',
      limit: 20,
    },
  ];
}

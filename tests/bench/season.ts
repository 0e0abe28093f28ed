import { execFileSync } from 'node:child_process';
import type { Timing } from './catalogue';

interface Timed {
  readonly id: string;
  readonly ms: number;
}
const LIMITS: Readonly<Record<string, readonly [name: string, limit: number]>> = {
  '40 runs that can be met': ['season of 40 runs planned', 100],
  '40 runs that cannot be met': ['season that cannot be met: what binds and what helps', 100],
  '10,000 draws of 40 runs': ['10,000 drawn seasons of 40 runs', 1000],
  '1,000 orders': ['order book of 1,000 orders, with odds', 5000],
};

/** Planning of seasons, in a process of its own as the shipped bundle runs. */
export const seasonTimings = (): Timing[] =>
  execFileSync(process.execPath, ['src/build/run.mjs', 'tests/bench/seasonOnce.ts'], { encoding: 'utf8' })
    .trim()
    .split('\n')
    .map((line): Timing => {
      const { id, ms } = JSON.parse(line) as Timed;
      const [name = id, limit = 0] = LIMITS[id] ?? [];
      return { name, value: ms, unit: 'ms', limit };
    });

import { execFileSync } from 'node:child_process';
import type { Timing } from './catalogue';

interface Timed {
  readonly id: string;
  readonly ms: number;
}
const LIMITS: Readonly<Record<string, readonly [name: string, limit: number, isForReadme: boolean]>> = {
  'forty batches': ['season of forty batches planned, with odds (processor time)', 300, true],
  'forty batches, the workbook': ['its workbook calculated (processor time)', 1500, false],
  'what binds': ['season that cannot be met: what binds and what helps (processor time)', 300, false],
  '1,000 orders': ['order book of 1,000 orders, with odds (processor time)', 5000, true],
};

/** Planning of seasons, in a process of its own as the shipped bundle runs. */
export const seasonTimings = (): Timing[] =>
  execFileSync(process.execPath, ['src/build/run.mjs', 'tests/bench/seasonOnce.ts'], { encoding: 'utf8' })
    .trim()
    .split('\n')
    .map((line): Timing => {
      const { id, ms } = JSON.parse(line) as Timed;
      const [name = id, limit = 0, isForReadme = false] = LIMITS[id] ?? [];
      return { name, value: ms, unit: 'ms', limit, isForReadme };
    });

import { execFileSync } from 'node:child_process';
import type { Timing } from './catalogue';

/** Own rates and trends of 400 runs, in a process of its own. */
export function learnTimings(): Timing[] {
  const { rates, trends } = JSON.parse(
    execFileSync(process.execPath, ['src/build/run.mjs', 'tests/bench/learnOnce.ts'], { encoding: 'utf8' }),
  ) as { rates: number; trends: number };
  return [
    { name: 'own rates learned from 400 runs', value: rates, unit: 'ms', limit: 500 },
    { name: 'trends of 400 runs', value: trends, unit: 'ms', limit: 500 },
  ];
}

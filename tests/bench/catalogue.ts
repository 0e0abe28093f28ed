import { findFunction } from '../../shared/catalogue';
import type { SheetFunction } from '../../shared/functions/define';
import { invoke } from '../../shared/functions/invoke';
import { isGrid } from '../../shared/base/values';
import { ammoniaFraction } from '../../shared/families/water/kernels/ammonia';
import { compare } from './measure';

const CALLS = 100_000;

export interface Timing {
  readonly name: string;
  readonly value: number;
  readonly unit: string;
  /** Nothing is promised of what has none. */
  readonly limit?: number;
  /** Shown on the front page too; all stand in DEVELOPERS.md. */
  readonly isForReadme?: boolean;
}

const fn = findFunction('SPAWN.AMMONIA.SHARE') as SheetFunction;
const ph = (i: number): number => 6 + (i % 300) / 100;

/** A checked catalogue call against the bare kernel, and a 10,000-row spill. */
export function catalogueTimings(): Timing[] {
  const call = compare(
    () => {
      let sum = 0;
      for (let i = 0; i < CALLS; i++) sum += invoke(fn, [ph(i), 25]) as number;
      return sum;
    },
    () => {
      let sum = 0;
      for (let i = 0; i < CALLS; i++) sum += ammoniaFraction(25, ph(i));
      return sum;
    },
    CALLS,
  );
  const column = Array.from({ length: 10_000 }, (_, i) => [ph(i)]);
  const spill = compare(
    () => {
      const grid = invoke(fn, [column, 25]);
      return isGrid(grid) ? grid.length : 0;
    },
    () => {
      let sum = 0;
      for (const [x = 0] of column) sum += ammoniaFraction(25, x);
      return sum;
    },
    1,
  );
  return [
    { name: 'catalogue call with checks', value: call.a / 1000, unit: 'µs', limit: 1, isForReadme: true },
    { name: 'catalogue call ÷ bare kernel', value: call.ratio, unit: '×', limit: 10 },
    { name: '10,000-row spill', value: spill.a / 1e6, unit: 'ms', limit: 20, isForReadme: true },
  ];
}

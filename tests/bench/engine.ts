import { findFunction } from '../../shared/catalogue';
import type { SheetFunction } from '../../shared/functions/define';
import { invoke } from '../../shared/functions/invoke';
import { isGrid } from '../../shared/base/values';
import { solve } from '../../shared/families/water/carbonate/carbonate';
import { constantsAt } from '../../shared/families/water/carbonate/constants';
import { SEASON_PLAN_FORM, oneOrderBook } from '../../templates/season-plan.template';
import type { Timing } from './catalogue';

/** Shortest of some rounds, milliseconds. */
const best = (rounds: number, run: () => number): number => {
  let least = Infinity;
  for (let i = 0; i < rounds; i++) {
    const start = process.hrtime.bigint();
    if (!Number.isFinite(run())) throw new Error('the loop must consume real results');
    least = Math.min(least, Number(process.hrtime.bigint() - start) / 1e6);
  }
  return least;
};

const SOLVES = 50_000;

/**
 * The heavier parts of the engine: the carbonate system, one day-by-day table, a season plan with its
 * workbook.
 */
export function engineTimings(): Timing[] {
  const k = constantsAt(25);
  const solving = best(7, () => {
    let sum = 0;
    for (let i = 0; i < SOLVES; i++)
      sum += solve(
        k,
        {
          temperature: 25,
          sodium: 1 + (i % 1000) * 0.001,
          calcium: 0.2,
          chloride: 0.4,
          sulfate: 0,
          carbon: 1.5,
        },
        { kind: 'closed' },
      ).ph;
    return sum;
  });
  const table = findFunction('SPAWN.FEED.TABLE') as SheetFunction;
  const feeding = best(15, () => {
    const grid = invoke(table, [20_000, 0.05, 365, 2, 0.05]);
    return isGrid(grid) ? grid.length : NaN;
  });
  const planning = best(3, () => oneOrderBook(SEASON_PLAN_FORM).sheets.length);
  return [
    {
      name: 'pH solve with ion pairs and ionic strength',
      value: (solving / SOLVES) * 1000,
      unit: 'µs',
      limit: 10,
    },
    { name: 'feed table of 365 days in one call', value: feeding, unit: 'ms', limit: 20 },
    {
      name: 'one order planned with its odds, and its workbook, every formula calculated',
      value: planning,
      unit: 'ms',
      limit: 1500,
    },
  ];
}

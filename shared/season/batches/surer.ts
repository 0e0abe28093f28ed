import { shareReaching } from '../../maths/quantiles';
import type { OrderBook } from '../orderBook';
import { drawSeasons } from './odds';
import type { BatchSchedule } from './schedule';
import { copyOf } from './schedule';
import { isMetTask, serve } from './serve';

/** Draws that are enough to see which orders are not sure yet, and rounds of mending them. */
const DRAWS = 500;
const ROUNDS = 5;
/** Part of an order planned on top in a round, and how far below the certainty wanted is near enough. */
const MORE = 0.1;
const NEAR = 0.01;

/** Share of the drawn seasons in which each order is met whole. */
export const certaintiesOf = ({ problem }: BatchSchedule, orders: readonly Float64Array[]): number[] =>
  problem.tasks.map(({ order }, t) =>
    shareReaching(
      Float64Array.from(orders[t] ?? []).sort(),
      order.number - (problem.delivered[t] ?? 0) - 0.5,
    ),
  );

/**
 * Orders that are planned whole and yet less sure than wanted (they depend on several things at once) get
 * some more fish, as long as there are any. Needs come back as they were.
 */
export function* surerSteps(book: OrderBook, found: BatchSchedule): Generator<number, BatchSchedule> {
  if (found.problem.safety.females.fry.length === 0) return found;
  let schedule = found;
  const isGiven = (t: number): boolean => isMetTask(found, t) && (found.problem.tasks[t]?.wanted ?? 0) > 0;
  for (let round = 0; round < ROUNDS; round++) {
    const certainties = certaintiesOf(schedule, drawSeasons(book, schedule, DRAWS, book.seed + 1).orders);
    const low = certainties.flatMap((share, t) => (isGiven(t) && share < book.certainty - NEAR ? [t] : []));
    if (low.length === 0) break;
    const next = copyOf(schedule);
    for (const t of low) {
      const more = MORE * (found.problem.tasks[t]?.wanted ?? 0);
      next.need[t] = more;
      serve(next, t);
      next.need[t] = found.need[t] ?? 0;
    }
    schedule = next;
    yield (round + 1) / ROUNDS;
  }
  return schedule;
}

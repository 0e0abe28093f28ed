import { within } from '../../../base/steps';
import { shareReaching } from '../../../maths/quantiles';
import { VERDICT_LOOKS } from '../../../maths/verdict';
import type { OrderBook } from '../../book/orderBook';
import { drawSeasons } from './odds';
import type { BatchSchedule } from '../search/schedule';
import { copyOf } from '../search/schedule';
import type { BatchEffort } from '../search/search';
import { searchSteps } from '../search/search';
import { isMetTask, serve } from '../search/serve';

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

/** Parts planned on top of what is not sure, tried one after the other; books of more orders are left as found. */
const ON_TOP = [0.15, 0.3] as const;
const MOST_ORDERS = 200;
const EFFORT = 0.25;
/** No order is given up for the others: what was at least a coin toss stays one. */
const UNLIKELY = VERDICT_LOOKS['a coin toss'].from;

/** Worth of the orders, each as far as it is as sure as wanted. */
function surenessOf(
  book: OrderBook,
  schedule: BatchSchedule,
): { readonly score: number; readonly low: readonly number[]; readonly unlikely: readonly number[] } {
  const certainties = certaintiesOf(schedule, drawSeasons(book, schedule, DRAWS, book.seed + 1).orders);
  const { tasks } = schedule.problem;
  return {
    score: tasks.reduce(
      (sum, { value, order }, t) =>
        sum + value * order.number * Math.min(book.certainty, certainties[t] ?? 0),
      0,
    ),
    low: tasks.flatMap((_, t) => ((certainties[t] ?? 0) < book.certainty - NEAR ? [t] : [])),
    unlikely: tasks.flatMap((_, t) => ((certainties[t] ?? 0) < UNLIKELY ? [t] : [])),
  };
}

/**
 * A season whose orders are still less sure than wanted is searched for anew with some more fish of these
 * orders from the start: more females, or fewer orders to a batch. What is surer on the whole is kept.
 */
export function* surestSteps(
  book: OrderBook,
  found: BatchSchedule,
  effort: BatchEffort,
): Generator<number, BatchSchedule> {
  const { problem } = found;
  let best = found;
  if (problem.safety.females.fry.length === 0 || problem.tasks.length > MOST_ORDERS) return best;
  let now = surenessOf(book, found);
  for (const [i, part] of ON_TOP.entries()) {
    if (now.low.length === 0) break;
    const { low, score, unlikely } = now;
    const more = new Map(low.map((t) => [t, part * (problem.tasks[t]?.wanted ?? 0)]));
    const tasks = problem.tasks.map((task, t) => ({ ...task, wanted: task.wanted + (more.get(t) ?? 0) }));
    const wider = yield* within(
      searchSteps({ ...problem, tasks }, { ...effort, looks: effort.looks * EFFORT }),
      i / ON_TOP.length,
      1 / ON_TOP.length,
    );
    const back: BatchSchedule = {
      ...wider,
      problem,
      need: wider.need.map((need, t) => Math.max(0, need - (more.get(t) ?? 0))),
    };
    const next = surenessOf(book, back);
    if (next.score > score && next.unlikely.every((t) => unlikely.includes(t))) [best, now] = [back, next];
    yield (i + 1) / ON_TOP.length;
  }
  return best;
}

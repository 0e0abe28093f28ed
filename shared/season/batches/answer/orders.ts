import { quantileOf, rangeOf, shareReaching } from '../../../maths/quantiles';
import { verdictOf } from '../../../maths/verdict';
import type { BookedOrder, OrderBook } from '../../book/orderBook';
import type { OrderPlan } from '../../types';
import { whyNot } from './findings';
import type { Drawn } from '../chance/odds';
import { deliveredTo } from '../problem';
import { parentsOf } from './rows';
import type { Batch, BatchSchedule } from '../search/schedule';

/** Fish an order still gets in each season, ascending: as drawn, or as planned where none were drawn. */
function stillComing(
  { problem, need }: BatchSchedule,
  drawn: Drawn | undefined,
  t: number,
  lacks: number,
): Float64Array {
  const list = drawn?.orders[t];
  if (list && list.length > 0) return Float64Array.from(list).sort();
  return Float64Array.of(Math.max(0, Math.min(lacks, (problem.tasks[t]?.wanted ?? 0) - (need[t] ?? 0))));
}

/** Middles of ten equal parts: what the poorest tenth of seasons brings, and so on. */
const TENTHS = Array.from({ length: 10 }, (_, i) => (i + 0.5) / 10);

const serving = ({ batches }: BatchSchedule, t: number): Batch[] =>
  [...batches.values()].filter(({ shares }) => shares.some((share) => share.task === t && share.fish >= 1));

/** Each order of the book: what one can promise and hope for, how surely it is met, and from which batches. */
export function orderPlans(
  book: OrderBook,
  schedule: BatchSchedule,
  drawn: Drawn | undefined,
  names: ReadonlyMap<number, string>,
  impossible: readonly string[],
): OrderPlan[] {
  const taskOf = new Map(schedule.problem.tasks.map(({ order }, t) => [order.name, t]));
  const handed = deliveredTo(book);
  const planOf = (order: BookedOrder): OrderPlan => {
    const t = taskOf.get(order.name) ?? -1;
    const delivered = handed.get(order.name) ?? 0;
    const lacks = Math.max(0, order.number - delivered);
    const own = serving(schedule, t);
    const sorted = t < 0 ? Float64Array.of(0) : stillComing(schedule, drawn, t, lacks);
    const certainty = lacks === 0 ? 1 : shareReaching(sorted, lacks - 0.5);
    const at = (p: number): number => delivered + Math.floor(quantileOf(sorted, p) + 1e-6);
    const { p10, p50, p90 } = rangeOf(sorted);
    return {
      order,
      batches: own.map(({ id }) => names.get(id) ?? ''),
      delivered,
      promise: at(1 - book.certainty),
      hope: at(0.5),
      range: { p10: delivered + p10, p50: delivered + p50, p90: delivered + p90 },
      seasons: TENTHS.map((p) => at(p)),
      certainty,
      verdict: verdictOf(certainty),
      expected: delivered + sorted.reduce((sum, n) => sum + n, 0) / sorted.length,
      parents: parentsOf(schedule, own),
      why:
        own.length === 0 && lacks > 0
          ? whyNot(book, order, schedule.problem.tasks[t], impossible)
          : undefined,
    };
  };
  return book.orders.map(planOf);
}

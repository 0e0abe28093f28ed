import { verdictOf } from '../../maths/verdict';
import type { OrderBook } from '../../season/orderBook';
import type { SeasonBook } from '../../season/result';
import type { OrderPlan, SeasonBatch, SeasonPlan } from '../../season/types';

const nameOf = (run: number): string => `B${run}`;

/** A plan of runs that serve one order each, as a plan of batches: what the book is written from. */
export function planOfRuns(book: OrderBook, plan: SeasonBook): SeasonPlan {
  const batches = plan.runs.map((run): SeasonBatch => ({
    ...run,
    name: nameOf(run.run),
    state: 'planned',
    pairs: run.females.map(({ tag, male, kilograms }) => ({ female: tag, male, kilograms })),
    promised: run.fish,
    extra: 0,
    leavesOn: run.due,
    counts: [],
    events: [],
    alive: undefined,
  }));
  const orders = plan.orders.map((o): OrderPlan => {
    const certainty = o.odds?.certainty ?? 0;
    return {
      order: o.order,
      batches: o.runs.map(nameOf),
      delivered: 0,
      promise: Math.min(o.order.number, o.odds?.p10 ?? 0),
      hope: Math.min(o.order.number, o.odds?.p50 ?? o.expected),
      range: o.odds ?? { p10: 0, p50: 0, p90: 0 },
      certainty,
      verdict: verdictOf(certainty, o.expected > 0),
      expected: o.expected,
      parents: o.parents,
    };
  });
  const sum = (key: 'promise' | 'hope'): number => orders.reduce((all, o) => all + o[key], 0);
  return {
    plannedOn: book.plannedOn,
    wanted: book.certainty,
    batches,
    orders,
    allocations: plan.runs.map((run) => {
      const grams = plan.orders.find(({ order }) => order.name === run.order)?.product?.grams ?? NaN;
      return {
        batch: nameOf(run.run),
        order: run.order,
        on: run.due,
        ageDays: run.due - run.feedFrom,
        grams,
        fish: run.fish,
        feeding: run.feeding,
        stage: run.vats.length > 2 ? 'nursing' : 'fry',
      } as const;
    }),
    stays: plan.occupancy.map(({ run, ...stay }) => ({ ...stay, batch: nameOf(run) })),
    purchases: plan.purchases.map((p) => ({ ...p })),
    feeding: plan.feeding.map(({ run, ...row }) => ({ ...row, batch: nameOf(run) })),
    entries: [],
    cash: plan.cash,
    money: plan.money,
    odds: undefined,
    promise: sum('promise'),
    hope: sum('hope'),
    fish: { p10: sum('promise'), p50: sum('hope'), p90: sum('hope') },
    verdict: verdictOf(
      orders.length > 0 ? Math.min(...orders.map(({ certainty }) => certainty)) : 0,
      plan.canBeMet,
    ),
    canBeMet: plan.canBeMet,
    findings: plan.findings,
    short: undefined,
  };
}

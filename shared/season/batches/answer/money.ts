import { breakEvenNumber, breakEvenPrice } from '../../../families/money/kernels/breakEven';
import type { CashWeek } from '../../../families/money/kernels/cashWeeks';
import { cashWeeks, leastBalance } from '../../../families/money/kernels/cashWeeks';
import { profitRatios } from '../../../families/money/kernels/ratios';
import { dayParts, monthIndexOf } from '../../../units/dates';
import { feedingOf, purchasesOf } from '../../figures/goods';
import { assumedOf } from '../../figures/growth';
import type { OrderBook } from '../../book/orderBook';
import type {
  Allocation,
  BatchFeeding,
  BatchStay,
  MoneyEntry,
  OrderPlan,
  SeasonBatch,
  SeasonMoney,
  SeasonPurchase,
} from '../../types';
import type { BatchProblem } from '../problem';

/** Goods and money of a season of batches: what was booked, and what is to come from the day of planning on. */

/** Larvae of a batch by the order they are grown for; those for nobody grow with the ones that leave last. */
function groupsOf(
  batch: SeasonBatch,
  own: readonly Allocation[],
  problem: BatchProblem,
): { readonly feeding: number; readonly due: number; readonly task: number }[] {
  const taskOf = new Map(problem.tasks.map(({ order }, t) => [order.name, t]));
  const planned = own.map(({ feeding, on, order }) => ({ feeding, due: on, task: taskOf.get(order) ?? -1 }));
  const sum = planned.reduce((total, { feeding }) => total + feeding, 0);
  const last = [...planned].sort((a, b) => b.due - a.due)[0];
  return last && batch.feeding > sum ? [...planned, { ...last, feeding: batch.feeding - sum }] : planned;
}

export function feedingRows(
  problem: BatchProblem,
  batches: readonly SeasonBatch[],
  allocations: readonly Allocation[],
): BatchFeeding[] {
  return batches.flatMap((batch) => {
    const byDate = new Map<number, BatchFeeding>();
    const assumed = assumedOf(problem.assumed, batch);
    const own = allocations.filter((allocation) => allocation.batch === batch.name);
    for (const { feeding, due, task } of groupsOf(batch, own, problem)) {
      const product = problem.tasks[task]?.product;
      if (!product) continue;
      const group = { feedFrom: batch.feedFrom, feeding, due };
      for (const { date, fish, grams, cysts, dry } of feedingOf(group, product, assumed)) {
        if (date < problem.today) continue;
        const before = byDate.get(date);
        const all = fish + (before?.fish ?? 0);
        byDate.set(date, {
          date,
          batch: batch.name,
          fish: all,
          grams: (grams * fish + (before ? before.grams * before.fish : 0)) / Math.max(all, 1e-9),
          cysts: cysts + (before?.cysts ?? 0),
          dry: dry + (before?.dry ?? 0),
        });
      }
    }
    return [...byDate.values()].sort((a, b) => a.date - b.date);
  });
}

export function purchasesFor(
  book: OrderBook,
  batches: readonly SeasonBatch[],
  feeding: readonly BatchFeeding[],
): SeasonPurchase[] {
  // Hormone of a batch that stands is bought already.
  return purchasesOf(
    book,
    batches.filter(({ state }) => state === 'planned'),
    feeding,
  );
}

const isSameMonth = (a: number, b: number): boolean => {
  const [x, y] = [dayParts(a), dayParts(b)];
  return x.year === y.year && x.month === y.month;
};
const RENT = 'rent, wages and wear';
/** A line that begins with it, in English or French, pays the rent of its month. */
const isRent = (what: string): boolean => /^(?:rent|loyer)/i.test(what);

/** First days of the months from the day of planning to the last day, that of planning itself where it was not paid. */
function rentDays(book: OrderBook, last: number): number[] {
  const isPaid = book.booked.some(({ what, date }) => isRent(what) && isSameMonth(date, book.plannedOn));
  const days = isPaid ? [] : [book.plannedOn];
  for (let day = book.plannedOn + 1; day <= last; day++)
    if (monthIndexOf(day) !== monthIndexOf(day - 1)) days.push(day);
  return days;
}

interface Parts {
  readonly batches: readonly SeasonBatch[];
  readonly stays: readonly BatchStay[];
  readonly purchases: readonly SeasonPurchase[];
  readonly orders: readonly OrderPlan[];
}

/** What was typed as paid or received: money of its own, and what buyers paid for fish of a batch. */
export const bookedEntries = (book: OrderBook): MoneyEntry[] => [
  ...book.booked.map((entry) => ({ ...entry, isBooked: true, isFixed: isRent(entry.what) })),
  ...book.batches.flatMap(({ name, events }) =>
    events.flatMap(({ at, kind, order, paid }): MoneyEntry[] =>
      kind === 'sold' && paid !== undefined && paid !== 0
        ? [
            {
              date: Math.floor(at),
              what: 'sales',
              amount: paid,
              batch: name,
              order,
              isBooked: true,
              isFixed: false,
            },
          ]
        : [],
    ),
  ),
];

export function entriesFor(book: OrderBook, { batches, stays, purchases, orders }: Parts): MoneyEntry[] {
  const { prices, plannedOn } = book;
  const last = Math.max(plannedOn, ...orders.map(({ order }) => order.due));
  const out = (what: string, date: number, amount: number, batch?: string, isFixed = false): MoneyEntry => ({
    what,
    date: Math.max(plannedOn, Math.floor(date)),
    amount: -amount,
    batch,
    isBooked: false,
    isFixed,
  });
  const ahead = batches.filter(
    ({ state, stripAt }) => state === 'planned' || (state === 'fixed' && stripAt >= plannedOn),
  );
  return [
    ...bookedEntries(book),
    ...purchases.map(({ item, week, cost }) => out(item, week, cost)),
    ...ahead.map(({ name, stripAt }) => out('wages and other costs of runs', stripAt, prices.perRun, name)),
    ...(book.malesSurvive
      ? []
      : ahead.map(({ name, stripAt, males }) =>
          out('males used up', stripAt, prices.male * males.length, name),
        )),
    ...stays
      .filter(({ to }) => to > plannedOn)
      .map(({ batch, from, to }) =>
        out('water and power of vats', to, prices.perVatDay * (to - Math.max(from, plannedOn)), batch),
      ),
    ...rentDays(book, last).map((day) => out(RENT, day, prices.perMonth, undefined, true)),
    ...orders
      .filter(
        ({ order, expected, delivered }) =>
          !order.cancelled && order.due >= plannedOn && expected > delivered,
      )
      .map(({ order, expected, delivered }): MoneyEntry => ({
        what: 'sales',
        date: order.due,
        amount: (expected - delivered) * (order.price ?? 0),
        order: order.name,
        isBooked: false,
        isFixed: false,
      })),
  ].filter(({ amount }) => amount !== 0);
}

export function moneyOf(
  book: OrderBook,
  entries: readonly MoneyEntry[],
  orders: readonly OrderPlan[],
): { readonly money: SeasonMoney; readonly cash: CashWeek[] } {
  const sum = (keep: (e: MoneyEntry) => boolean): number =>
    entries.reduce((total, e) => total + (keep(e) ? e.amount : 0), 0);
  const sales = sum(({ amount, what }) => what === 'sales' || amount > 0);
  const cost = -sum(({ amount, what }) => what !== 'sales' && amount < 0);
  const fixed = -sum(({ isFixed, amount }) => isFixed && amount < 0);
  const fish = orders.reduce((total, { expected }) => total + expected, 0);
  const cash = cashWeeks([...entries], book.prices.atHand);
  const { profit, margin } = profitRatios(sales, cost);
  const names = [...new Set(entries.filter(({ amount }) => amount < 0).map(({ what }) => what))];
  return {
    cash,
    money: {
      sales,
      cost,
      profit,
      margin,
      costs: names
        .map((what) => ({ what, amount: -sum((e) => e.what === what && e.amount < 0) }))
        .sort((x, y) => y.amount - x.amount),
      costPerFish: cost / fish,
      breakEvenPrice: breakEvenPrice(fixed, (cost - fixed) / fish, fish),
      breakEvenNumber: breakEvenNumber(fixed, (cost - fixed) / fish, sales / fish),
      leastBalance: leastBalance(cash, book.prices.atHand),
      swings: [],
    },
  };
}

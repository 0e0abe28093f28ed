import { breakEvenNumber, breakEvenPrice } from '../families/money/kernels/breakEven';
import type { CashWeek, DatedAmount } from '../families/money/kernels/cashWeeks';
import { cashWeeks, leastBalance } from '../families/money/kernels/cashWeeks';
import { profitRatios } from '../families/money/kernels/ratios';
import type { Uncertain } from '../families/money/kernels/swings';
import { swingsOf } from '../families/money/kernels/swings';
import type { Assumed, AssumptionKey } from '../families/assumptions';
import { ASSUMPTIONS } from '../families/assumptions';
import type { OrderBook } from './orderBook';
import { monthIndexOf } from '../units/dates';
import type { PlannedOrder, PlannedRun, Purchase, SeasonMoney, VatStay } from './result';

/** Prices are moved by a fifth each way; chosen here, no source. */
const PRICE_SWING = 0.2;

interface Entry extends DatedAmount {
  readonly what: string;
  readonly isFixed: boolean;
}

/** First days of the months from the day of planning to the last delivery. */
function monthStarts(from: number, to: number): number[] {
  const starts: number[] = [from];
  for (let day = from + 1; day <= to; day++)
    if (monthIndexOf(day) !== monthIndexOf(day - 1)) starts.push(day);
  return starts;
}

function entriesOf(
  book: OrderBook,
  orders: readonly PlannedOrder[],
  runs: readonly PlannedRun[],
  stays: readonly VatStay[],
  purchases: readonly Purchase[],
): Entry[] {
  const { prices } = book;
  const last = Math.max(...book.orders.map(({ due }) => due));
  const out = (what: string, date: number, amount: number, isFixed = false): Entry => ({
    what,
    date,
    amount: -amount,
    isFixed,
  });
  return [
    ...purchases.map(({ item, week, cost }) => out(item, Math.max(week, book.plannedOn), cost)),
    ...runs.map((run) => out('wages and other costs of runs', Math.floor(run.stripAt), prices.perRun)),
    ...(book.malesSurvive
      ? []
      : runs.map((run) => out('males used up', Math.floor(run.stripAt), prices.male * run.males.length))),
    ...stays.map((stay) =>
      out('water and power of vats', Math.floor(stay.to), prices.perVatDay * (stay.to - stay.from)),
    ),
    ...monthStarts(book.plannedOn, last).map((day) =>
      out('rent, wages and wear', day, prices.perMonth, true),
    ),
    ...orders.map(({ order, expected }) => ({
      what: 'sales',
      date: order.due,
      amount: Math.min(order.number, expected) * (order.price ?? 0),
      isFixed: false,
    })),
  ].filter(({ amount }) => amount !== 0);
}

/** Each figure of the chain at its poor and its good end, and prices up and down. */
function figures(a: Assumed, feed: number): Uncertain[] {
  const chain: readonly AssumptionKey[] = [
    'eggShare',
    'eggsPerGram',
    'hatch',
    'yolkSurvival',
    'frySurvival',
    'nurserySurvival',
  ];
  return [
    ...chain.map((key) => ({
      name: ASSUMPTIONS[key].label,
      low: Math.min(a[key], ASSUMPTIONS[key].low),
      planned: a[key],
      high: Math.max(a[key], ASSUMPTIONS[key].high),
    })),
    { name: 'Price of fish', low: 1 - PRICE_SWING, planned: 1, high: 1 + PRICE_SWING },
    {
      name: 'Price of cysts and feed',
      low: (1 + PRICE_SWING) * feed,
      planned: feed,
      high: (1 - PRICE_SWING) * feed,
    },
  ];
}

/** Profit when one figure moves; fish beyond what was ordered find no buyer. */
function profitWith(
  a: Assumed,
  orders: readonly PlannedOrder[],
  cost: number,
  feed: number,
  values: readonly number[],
): number {
  const [
    eggShare = NaN,
    eggsPerGram = NaN,
    hatch = NaN,
    yolk = NaN,
    fry = NaN,
    nursery = NaN,
    price = NaN,
    feedCost = NaN,
  ] = values;
  const all =
    (eggShare / a.eggShare) *
    (eggsPerGram / a.eggsPerGram) *
    (hatch / a.hatch) *
    (yolk / a.yolkSurvival) *
    (fry / a.frySurvival);
  const sales = orders.reduce((sum, { order, expected }) => {
    const fish = expected * all * (order.product === 'fingerlings' ? nursery / a.nurserySurvival : 1);
    return sum + Math.min(order.number, fish) * (order.price ?? 0);
  }, 0);
  return sales * price - (cost - feed + feedCost);
}

export function accountsOf(
  book: OrderBook,
  a: Assumed,
  orders: readonly PlannedOrder[],
  runs: readonly PlannedRun[],
  stays: readonly VatStay[],
  purchases: readonly Purchase[],
): { readonly money: SeasonMoney; readonly cash: CashWeek[] } {
  const entries = entriesOf(book, orders, runs, stays, purchases);
  const sum = (keep: (e: Entry) => boolean): number =>
    entries.filter(keep).reduce((total, e) => total + e.amount, 0);
  const sales = sum(({ what }) => what === 'sales');
  const cost = -sum(({ what }) => what !== 'sales');
  const fixed = -sum(({ isFixed }) => isFixed);
  const fish = orders.reduce((total, { order, expected }) => total + Math.min(order.number, expected), 0);
  const names = [...new Set(entries.map(({ what }) => what))].filter((what) => what !== 'sales');
  const feed = -sum(({ what }) => what === 'cysts' || what === 'dry feed');
  const cash = cashWeeks(entries, book.prices.atHand);
  const { profit, margin } = profitRatios(sales, cost);
  return {
    cash,
    money: {
      sales,
      cost,
      profit,
      margin,
      costs: names
        .map((what) => ({ what, amount: -sum((e) => e.what === what) }))
        .sort((x, y) => y.amount - x.amount),
      costPerFish: cost / fish,
      breakEvenPrice: breakEvenPrice(fixed, (cost - fixed) / fish, fish),
      breakEvenNumber: breakEvenNumber(fixed, (cost - fixed) / fish, sales / fish),
      leastBalance: leastBalance(cash, book.prices.atHand),
      swings: swingsOf(figures(a, feed), (values) => profitWith(a, orders, cost, feed, values)),
    },
  };
}

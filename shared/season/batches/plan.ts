import { runNow, within } from '../../base/steps';
import type { Range } from '../../maths/quantiles';
import { quantileOf, rangeOf } from '../../maths/quantiles';
import { verdictOf } from '../../maths/verdict';
import type { OrderBook } from '../book/orderBook';
import type { OrderPlan, PlanFinding, SeasonPlan, SeasonShort } from '../types';
import { planFindings, thinWater } from './answer/findings';
import { entriesFor, feedingRows, moneyOf, purchasesFor } from './answer/money';
import { moneyOdds } from './chance/moneyOdds';
import type { Drawn } from './chance/odds';
import { drawSeasons } from './chance/odds';
import type { BatchProblem, PlanOn } from './problem';
import { orderPlans } from './answer/orders';
import { batchProblemOf } from './problem';
import { rowsOf } from './answer/rows';
import type { BatchSchedule } from './search/schedule';
import type { BatchEffort } from './search/search';
import { BATCH_EFFORT, searchSteps } from './search/search';
import { isMetTask } from './search/serve';
import { shortSteps } from './answer/short';
import { surerSteps, surestSteps } from './chance/surer';
import { spreadOut } from './search/spread';
import { NEAR_WANTED, unsureSteps } from './chance/unsure';

export interface BatchOptions {
  /** Seasons drawn for the odds; 0 leaves the odds out. */
  readonly draws?: number;
  readonly effort?: BatchEffort;
  /** Plan on the middling season instead of the certainty wanted; for comparing. */
  readonly planOn?: PlanOn;
  /** Ask what binds and what helps when orders are short. */
  readonly explains?: boolean;
}
const DRAWS = 2000;

/** All fish of the season, those nobody ordered included, in each draw. */
function totalsOf({ orders, extra }: Drawn, draws: number): Float64Array {
  const total = new Float64Array(draws);
  for (const list of [...orders, ...extra])
    for (let d = 0; d < draws; d++) total[d] = (total[d] ?? 0) + (list[d] ?? 0);
  return total.sort();
}
const promisedIn = (
  drawn: Drawn | undefined,
  draws: number,
  book: OrderBook,
  orders: readonly OrderPlan[],
): { readonly promise: number; readonly hope: number; readonly fish: Range } => {
  if (!drawn || draws === 0) {
    const sum = orders.reduce((total, { promise, delivered }) => total + promise - delivered, 0);
    return { promise: sum, hope: sum, fish: { p10: sum, p50: sum, p90: sum } };
  }
  const totals = totalsOf(drawn, draws);
  return {
    promise: Math.floor(quantileOf(totals, 1 - book.certainty)),
    hope: Math.floor(quantileOf(totals, 0.5)),
    fish: rangeOf(totals),
  };
};

const isShort = (schedule: BatchSchedule): boolean =>
  schedule.problem.tasks.some((_, t) => !isMetTask(schedule, t));
const openOrders = (book: OrderBook, orders: readonly OrderPlan[]): OrderPlan[] =>
  orders.filter(({ order }) => !order.cancelled && order.due >= book.plannedOn);
const salesOf = (problem: BatchProblem, drawn: Drawn | undefined) =>
  problem.tasks.map(({ order }, t) => ({
    due: order.due,
    price: order.price ?? 0,
    drawn: drawn?.orders[t] ?? new Float64Array(),
  }));

/** How sure the least sure order is. */
const leastOf = (open: readonly OrderPlan[]): number =>
  open.reduce((least, { certainty }) => Math.min(least, certainty), 1);

/** How long the parts take, of the whole. */
const SEARCH = 0.5;
const SURER = 0.1;
const SUREST = 0.2;

/** Some more fish where orders are less sure than wanted: first within what was found, then searched for anew. */
function* sureSteps(
  book: OrderBook,
  found: BatchSchedule,
  effort: BatchEffort,
): Generator<number, BatchSchedule> {
  const surer = yield* within(surerSteps(book, found), SEARCH, SURER);
  return yield* within(surestSteps(book, surer, effort), SEARCH + SURER, SUREST);
}

interface Why {
  readonly short: SeasonShort | undefined;
  readonly unsure: readonly PlanFinding[];
}
function* notAskedSteps(): Generator<number, Why> {
  return { short: undefined, unsure: [] };
}
/** What stands in the way: something that is short, or, where every order is planned whole, chance alone. */
function* whySteps(
  book: OrderBook,
  {
    found,
    schedule,
    drawn,
  }: { readonly found: BatchSchedule; readonly schedule: BatchSchedule; readonly drawn: Drawn | undefined },
  effort: BatchEffort,
): Generator<number, Why> {
  if (isShort(schedule) || !drawn) return { short: yield* shortSteps(book, found, effort), unsure: [] };
  return { short: undefined, unsure: yield* unsureSteps(book, schedule, effort) };
}

/**
 * Plans a season of batches: nights to strip with parents, vats and hours, fish of each batch for each order,
 * odds, goods, money, and what stands in the way. Batches that stand in the book stay as they are. Never fails:
 * what cannot be had is a finding. The same book gives the same plan everywhere. Yields the share done.
 */
export function* planBatchesSteps(
  book: OrderBook,
  { draws = DRAWS, effort = BATCH_EFFORT, planOn = 'certainty', explains = true }: BatchOptions = {},
): Generator<number, SeasonPlan> {
  const { problem, impossible } = batchProblemOf(book, planOn);
  const found = yield* within(searchSteps(problem, effort), 0, SEARCH);
  const schedule = spreadOut(draws > 0 ? yield* sureSteps(book, found, effort) : found);
  const drawn = draws > 0 ? drawSeasons(book, schedule, draws, book.seed) : undefined;
  const rows = rowsOf(book, schedule);
  const orders = orderPlans(book, schedule, drawn, rows.names, impossible);
  const feeding = feedingRows(problem, rows.batches, rows.allocations);
  const purchases = purchasesFor(book, rows.batches, feeding);
  const entries = entriesFor(book, { batches: rows.batches, stays: rows.stays, purchases, orders });
  const open = openOrders(book, orders);
  // Drawn seasons decide; without them, whether the plan itself is short.
  const isMissed =
    drawn && planOn === 'certainty' ? leastOf(open) < book.certainty - NEAR_WANTED : isShort(schedule);
  const { short, unsure } = yield* within(
    explains && isMissed ? whySteps(book, { found, schedule, drawn }, effort) : notAskedSteps(),
    SEARCH + SURER + SUREST,
    1 - SEARCH - SURER - SUREST,
  );
  const { promise, hope, fish } = promisedIn(drawn, draws, book, open);
  return {
    plannedOn: book.plannedOn,
    wanted: book.certainty,
    batches: rows.batches,
    orders,
    allocations: rows.allocations,
    stays: rows.stays,
    purchases,
    feeding,
    entries,
    ...moneyOf(book, entries, orders),
    odds: moneyOdds(book, entries, salesOf(problem, drawn), drawn ? draws : 0),
    promise,
    hope,
    fish,
    verdict: verdictOf(leastOf(open)),
    canBeMet: !isMissed && impossible.length === 0,
    findings: [
      ...planFindings(book, problem, impossible, open, short),
      ...unsure,
      ...thinWater(book, rows.batches),
    ],
    short,
  };
}

export const planBatches = (book: OrderBook, options: BatchOptions = {}): SeasonPlan =>
  runNow(planBatchesSteps(book, options));

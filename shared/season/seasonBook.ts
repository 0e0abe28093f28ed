import { effectiveNumber } from '../families/brood/kernels/inbreeding';
import type { Assumed } from '../families/assumptions';
import { accountsOf } from './accounts';
import { feedingOf, purchasesOf } from './goods';
import type { OrderBook } from './orderBook';
import type { PlacedRun } from './place';
import type { Problem } from './problem';
import { problemOf } from './problem';
import type { PlannedOrder, PlannedRun, SeasonBook } from './result';
import { plannedRuns, vatStays } from './runs';
import { seasonFindings } from './seasonFindings';
import type { OrderOdds } from './seasonOdds';
import { seasonOddsSteps } from './seasonOdds';
import { shortfallSteps } from './shortfall';
import type { Effort } from './solve';
import { EFFORT, deliveredOf, isMet, solveSteps } from './solve';
import { runNow, within } from '../base/steps';

export interface PlanOptions {
  /** Seasons drawn for the odds; 0 leaves the odds out. */
  readonly draws?: number;
  readonly effort?: Effort;
}
/** P10 and P90 of an order within about three parts in a hundred. */
const DRAWS = 2000;

/** Fish with the same parents count once. */
const parentsOf = (problem: Problem, placed: readonly PlacedRun[]): number => {
  const pairs = placed.flatMap((run) => run.pairs);
  const females = new Set(pairs.map(({ female }) => problem.females[female]?.tag));
  const males = new Set(pairs.map(({ male }) => problem.males[male]?.tag));
  return females.size > 0 && males.size > 0 ? effectiveNumber(females.size, males.size) : 0;
};

function plannedOrders(
  book: OrderBook,
  problem: Problem,
  placed: readonly PlacedRun[],
  delivered: readonly number[],
  odds: readonly OrderOdds[],
): PlannedOrder[] {
  const taskOf = new Map(problem.tasks.map((task, t) => [task.order.name, t]));
  return book.orders.map((order): PlannedOrder => {
    const t = taskOf.get(order.name) ?? -1;
    const own = placed.filter((run) => run.task === t);
    return {
      order,
      product: problem.tasks[t]?.product,
      expected: (delivered[t] ?? 0) + (problem.tasks[t]?.underway ?? 0),
      runs: placed.flatMap((run, i) => (run.task === t ? [i + 1] : [])),
      females: own.reduce((sum, run) => sum + run.pairs.length, 0),
      odds: odds[t]?.odds,
      femalesForNinety: odds[t]?.femalesForNinety,
      parents: parentsOf(problem, own),
    };
  });
}

const feedingRows = (orders: readonly PlannedOrder[], runs: readonly PlannedRun[], a: Assumed) => {
  const productOf = new Map(orders.map(({ order, product }) => [order.name, product]));
  return runs.flatMap((run) => {
    const product = productOf.get(run.order);
    return product ? feedingOf(run, product, a) : [];
  });
};

/**
 * How long the parts take, of the whole: looking for a schedule, drawing the odds, asking what stands in the
 * way.
 */
const SEARCH = 0.5;
const ODDS = 0.25;

/**
 * Plans a checked order book: runs with their days, hours, fish and vats, what to buy and when, money by
 * week, odds, and what stands in the way. Never fails: what cannot be had is a finding. The same book gives
 * the same plan everywhere. Yields the share done.
 */
export function* planSeasonSteps(
  book: OrderBook,
  { draws = DRAWS, effort = EFFORT }: PlanOptions = {},
): Generator<number, SeasonBook> {
  const { problem, assumed: a, impossible } = problemOf(book);
  const schedule = yield* within(solveSteps(problem, effort), 0, SEARCH);
  const delivered = deliveredOf(schedule);
  const { runs, placed } = plannedRuns(schedule, a);
  const occupancy = vatStays(schedule, placed);
  const odds = draws > 0 ? yield* within(seasonOddsSteps(book, problem, a, placed, draws), SEARCH, ODDS) : [];
  const orders = plannedOrders(book, problem, placed, delivered, odds);
  const feeding = feedingRows(orders, runs, a);
  const purchases = purchasesOf(book, runs, feeding);
  const { money, cash } = accountsOf(book, a, orders, runs, occupancy, purchases);
  const shortfall = isMet(schedule)
    ? undefined
    : yield* within(shortfallSteps(book, problem, delivered, effort), SEARCH + ODDS, 1 - SEARCH - ODDS);
  const findings = seasonFindings(book, problem, impossible, orders, runs, money, shortfall);
  return {
    orders,
    runs,
    occupancy,
    purchases,
    feeding,
    cash,
    money,
    findings,
    shortfall,
    canBeMet: !findings.some(({ kind }) => kind === 'cannot'),
  };
}

export const planSeasonBook = (book: OrderBook, options: PlanOptions = {}): SeasonBook =>
  runNow(planSeasonSteps(book, options));

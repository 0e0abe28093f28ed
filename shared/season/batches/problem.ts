import type { Assumed } from '../../families/assumptions';
import type { BookedBatch } from '../book/living';
import { assumedOf } from '../figures/growth';
import type { OrderBook } from '../book/orderBook';
import type { Candidate, Problem, Task } from '../problem';
import { MORNING, problemOf } from '../problem';
import type { Product } from '../figures/product';
import { productOf } from '../figures/product';
import type { BatchStanding } from './alive';
import { standingOf } from './alive';
import type { Safety } from './chance/safety';
import { MEAN, safetyOf } from './chance/safety';

/** An order book as the planner of batches sees it. */
export interface BatchProblem extends Problem {
  readonly fixed: readonly FixedBatch[];
  readonly safety: Safety;
  /** Fish of an order handed over already, by task. */
  readonly delivered: readonly number[];
  /** Tasks that a batch stripped on a day can serve. */
  readonly byDay: ReadonlyMap<number, readonly DayTask[]>;
  readonly assumed: Assumed;
  /** The day of planning. */
  readonly today: number;
}
export interface DayTask {
  readonly task: number;
  readonly candidate: Candidate;
}
/** A batch that no longer moves: day, parents and clock stand. */
export interface FixedBatch {
  readonly batch: BookedBatch;
  readonly day: number;
  readonly standing: BatchStanding;
  /** Figures as its weighing tells them. */
  readonly assumed: Assumed;
  /** Orders it could serve, as candidates of its own day. */
  readonly serves: readonly DayTask[];
  /** Stays that are going on, by place of the vat; they end when the fish leave. */
  readonly stays: readonly {
    readonly vat: number;
    readonly stage: number;
    readonly from: number;
    readonly to: number;
  }[];
}

/** Fish handed over to each order by events of the batches, fish that are not from a batch left out. */
export function deliveredTo(book: Pick<OrderBook, 'batches'>): ReadonlyMap<string, number> {
  const sum = new Map<string, number>();
  for (const { events } of book.batches)
    for (const { kind, order, number } of events)
      if (kind === 'sold' && order !== undefined) sum.set(order, (sum.get(order) ?? 0) + number);
  return sum;
}

const isOpen = ({ cancelled, due }: OrderBook['orders'][number], today: number): boolean =>
  !cancelled && due >= today;

const STAGE_PLACE = { eggs: 0, fry: 1, nursing: 2 } as const;

/** A batch under way can serve an order whose fish its fish are on the day, whenever it was stripped. */
function servesOf(book: OrderBook, { clock }: BookedBatch, own: Assumed, tasks: readonly Task[]): DayTask[] {
  const day = Math.floor(clock.stripAt);
  return tasks.flatMap((task, t): DayTask[] => {
    const { order } = task;
    const product = productOf(order, own);
    if (typeof product === 'string') return [];
    const days = ({ rearingDays, nurseryDays }: Product): number => rearingDays + nurseryDays;
    const readyAt = clock.feedFrom + days(product);
    // Fish that grew faster than planned still go to the order they were planned for: they wait, and are fed less.
    const longest = Math.max(days(product), days(task.product));
    if (readyAt > order.due || clock.feedFrom + longest < order.due - book.holdDays) return [];
    const leaves = order.due + MORNING;
    const spans: Candidate['spans'] =
      product.nurseryDays > 0
        ? [
            [clock.stripAt, clock.firstFeedAt],
            [clock.firstFeedAt, clock.weanedAt],
            [clock.weanedAt, leaves],
          ]
        : [
            [clock.stripAt, clock.firstFeedAt],
            [clock.firstFeedAt, leaves],
          ];
    return [{ task: t, candidate: { day, clock, eggFactor: 1, weanedAt: clock.weanedAt, readyAt, spans } }];
  });
}

function fixedOf(book: OrderBook, a: Assumed, tasks: readonly Task[]): FixedBatch[] {
  const today = book.plannedOn;
  return book.batches
    .filter(({ state }) => state === 'fixed' || state === 'growing')
    .map((batch) => ({ batch, own: assumedOf(a, { ...batch.clock, weighed: batch.weighed }) }))
    .map(({ batch, own }) => ({
      batch,
      day: Math.floor(batch.clock.stripAt),
      standing: standingOf(batch, a, today),
      assumed: own,
      serves: servesOf(book, batch, own, tasks),
      stays: batch.stays
        .filter(({ from, to }) => to > today && (from <= today + 1 || batch.state === 'fixed'))
        .map(({ vat, stage, from, to }) => ({
          vat: book.vats.findIndex(({ name }) => name === vat),
          stage: STAGE_PLACE[stage],
          from,
          to,
        }))
        .filter(({ vat }) => vat >= 0),
    }));
}

/** Days a fish was used by batches that stand. */
const usedBy = (book: OrderBook, list: 'female' | 'male', tag: string): number[] =>
  book.batches.flatMap(({ clock, pairs }) =>
    pairs.some((pair) => pair[list] === tag) ? [Math.floor(clock.stripAt)] : [],
  );

function byDayOf(tasks: readonly Task[]): Map<number, DayTask[]> {
  const byDay = new Map<number, DayTask[]>();
  tasks.forEach(({ candidates }, task) => {
    for (const candidate of candidates) {
      const list = byDay.get(candidate.day) ?? [];
      byDay.set(candidate.day, list);
      list.push({ task, candidate });
    }
  });
  return byDay;
}

export type PlanOn = 'certainty' | 'mean';

/**
 * The problem of a living order book. Orders past, cancelled or handed over whole ask for nothing; batches
 * under way take their vats, parents and hands.
 */
export function batchProblemOf(
  book: OrderBook,
  planOn: PlanOn = 'certainty',
): { readonly problem: BatchProblem; readonly assumed: Assumed; readonly impossible: readonly string[] } {
  const delivered = deliveredTo(book);
  const open = book.orders.filter((order) => isOpen(order, book.plannedOn));
  const base = problemOf({ ...book, orders: open });
  const a = base.assumed;
  const tasks = base.problem.tasks.map((task): Task => ({
    ...task,
    wanted: Math.max(
      0,
      Math.ceil(task.order.number * (1 + book.spare) - (delivered.get(task.order.name) ?? 0)),
    ),
  }));
  const fixed = fixedOf(book, a, tasks);
  const strippedOn = new Map<number, number>();
  for (const { day, batch } of fixed) strippedOn.set(day, (strippedOn.get(day) ?? 0) + batch.pairs.length);
  const isGone = (goneOn: number | undefined): boolean => goneOn !== undefined;
  const { females, males } = base.problem;
  const problem: BatchProblem = {
    ...base.problem,
    tasks,
    strippedOn,
    restDays: Math.max(1, book.restDays),
    females: females.map((f) => ({
      ...f,
      used: [...f.used, ...usedBy(book, 'female', f.tag)],
    })),
    byEggs: base.problem.byEggs.filter((i) => !isGone(book.females[i]?.goneOn)),
    males: males.map((m, i) => ({
      ...m,
      used: [...m.used, ...usedBy(book, 'male', m.tag)],
      isGone: isGone(book.males[i]?.goneOn),
    })),
    taken: book.vats.flatMap(({ outFrom, outUntil }, vat) =>
      outFrom === undefined && outUntil === undefined
        ? []
        : [{ vat, from: outFrom ?? -Infinity, until: outUntil === undefined ? Infinity : outUntil + 1 }],
    ),
    fixed,
    safety: planOn === 'mean' ? MEAN : safetyOf(book, a),
    delivered: tasks.map(({ order }) => delivered.get(order.name) ?? 0),
    byDay: byDayOf(tasks),
    assumed: a,
    today: book.plannedOn,
  };
  return { problem, assumed: a, impossible: base.impossible };
}

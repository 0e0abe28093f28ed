import type { OrderBook } from '../../season/book/orderBook';
import type { BatchStay, SeasonBatch, SeasonPlan } from '../../season/types';
import { TASKS, taskList } from '../../run/lines';
import type { TaskContext, TaskKey } from '../../run/lines';
import { preparationNamed } from '../../families/preparations';
import { mondayOf } from '../../units/dates';
import * as columns from './columns';
import { Table } from './table';

/** Sheets in the order they stand; the first eight are shown. */
export const SHEETS = {
  today: 'Today',
  orders: 'Orders',
  batches: 'Batches',
  calendar: 'Calendar',
  vats: 'Vats',
  counts: 'Counts',
  money: 'Shopping and money',
  checks: 'Checks',
  setup: 'Setup',
  brood: 'Brood fish',
  figures: 'Figures',
  notes: 'Notes',
  workings: 'Workings',
  shares: 'Shares',
  days: 'Feed by batch',
  feed: 'Feed by day',
  times: 'Task times',
  tasks: 'Task list',
  promises: 'Promises',
  stays: 'Vat use',
  bars: 'Vat chart',
} as const;
export type SheetKey = keyof typeof SHEETS;
export const SHOWN: ReadonlySet<SheetKey> = new Set([
  'today',
  'orders',
  'batches',
  'calendar',
  'vats',
  'counts',
  'money',
  'checks',
]);

/** Headings of the first table of a sheet stand in this row. */
export const HEAD = 4;
/** Lines left open for what comes in later. */
export const SPARE = { orders: 6, vats: 4, fish: 8, log: 240, booked: 16, days: 2, weeks: 4 } as const;
/** Rows between two tables of one sheet: an empty one and a title. */
const GAP = 3;

export interface DayLine {
  readonly batch: string;
  readonly day: number;
}
export interface TaskLine {
  readonly batch: string;
  readonly task: TaskKey;
  readonly order: string;
  readonly later: number;
  readonly what: string;
  /** When it is planned: decides where it stands. */
  readonly when: number;
}

/** Everything the sheets have a line for, in the order of the lines. */
export interface LivingRows {
  readonly batches: readonly SeasonBatch[];
  readonly pairs: readonly (SeasonBatch['pairs'][number] & { readonly batch: string })[];
  readonly shares: SeasonPlan['allocations'];
  readonly stays: readonly BatchStay[];
  readonly days: readonly DayLine[];
  readonly tasks: readonly TaskLine[];
}

/** What of a plan stands in the book; all of it can be read back from the sheets. */
export type BookPlan = Pick<
  SeasonPlan,
  'plannedOn' | 'batches' | 'orders' | 'allocations' | 'stays' | 'findings' | 'promise' | 'hope' | 'verdict'
> & {
  readonly odds:
    | (Pick<NonNullable<SeasonPlan['odds']>, 'gain' | 'solvent'> &
        Partial<Pick<NonNullable<SeasonPlan['odds']>, 'profit'>>)
    | undefined;
};

export type Tables = ReturnType<typeof tablesOf>;

const isAlive = ({ state }: SeasonBatch): boolean => state !== 'over' && state !== 'lost';

export const contextOf = (
  plan: BookPlan,
  batch: SeasonBatch,
  preparation: string,
  order = '',
): TaskContext => {
  const hormone = preparationNamed(preparation);
  const vats = (stage: BatchStay['stage']): string[] => [
    ...new Set(plan.stays.flatMap((s) => (s.batch === batch.name && s.stage === stage ? [s.vat] : []))),
  ];
  return {
    batch: batch.name,
    females: batch.pairs.map(({ female }) => female),
    males: [...new Set(batch.pairs.map(({ male }) => male))],
    eggVats: vats('eggs'),
    fryVats: vats('fry'),
    nursingVats: vats('nursing'),
    order,
    preparation,
    unit: hormone?.unit ?? '',
    isSolution: hormone?.isSolution ?? true,
    donors: (hormone?.donorsPerKg ?? 0) > 0,
  };
};

/** What tells a line of the calendar from the others, whatever day it moves to; `task` by its title. */
export const tickOf = (line: {
  readonly batch?: unknown;
  readonly task?: unknown;
  readonly order?: unknown;
  readonly later?: unknown;
}): string => [line.batch, line.task, line.order, line.later].map((part) => String(part ?? '')).join('|');
export const titleOfTask = (task: TaskKey): string => TASKS[task].at.label;

/**
 * `timesOf`: when each task of a batch (or of its fish for an order) is planned. Work of a batch that is over or
 * lost is listed only where it was ticked off.
 */
export function rowsOf(
  plan: BookPlan,
  preparation: string,
  timesOf: (
    batch: SeasonBatch,
    order: SeasonPlan['allocations'][number] | undefined,
  ) => (task: TaskKey) => number,
  ticked: ReadonlySet<string> = new Set(),
): LivingRows {
  const batches = plan.batches;
  const isListed = (batch: SeasonBatch, line: TaskLine): boolean =>
    isAlive(batch) || ticked.has(tickOf({ ...line, task: titleOfTask(line.task) }));
  const tasks = batches.flatMap((batch): TaskLine[] => {
    if (!isAlive(batch) && ticked.size === 0) return [];
    const own = plan.allocations.filter((a) => a.batch === batch.name);
    const context = contextOf(plan, batch, preparation);
    const asked = taskList.filter(([, task]) => task.isAsked?.(context) ?? true);
    const lines = asked.flatMap(([key, task]): TaskLine[] => {
      if (task.per === 'order')
        return own.map((share) => ({
          batch: batch.name,
          task: key,
          order: share.order,
          later: 0,
          what: task.what({ ...context, order: share.order }),
          when: timesOf(batch, share)(key),
        }));
      const at = timesOf(batch, undefined)(key);
      const repeats = task.every ? Math.max(1, Math.ceil((batch.leavesOn - 1 - at) / task.every)) : 1;
      return Array.from({ length: repeats }, (_, i) => ({
        batch: batch.name,
        task: key,
        order: '',
        later: i * (task.every ?? 0),
        what: task.what(context),
        when: at + i * (task.every ?? 0),
      }));
    });
    return lines.filter((line) => isListed(batch, line));
  });
  return {
    batches,
    pairs: batches.flatMap((b) => b.pairs.map((pair) => ({ ...pair, batch: b.name }))),
    shares: plan.allocations,
    stays: plan.stays,
    days: batches.filter(isAlive).flatMap((b) =>
      Array.from({ length: Math.max(0, b.leavesOn - b.feedFrom) + SPARE.days }, (_, day) => ({
        batch: b.name,
        day,
      })),
    ),
    tasks: tasks.sort((x, y) => x.when - y.when),
  };
}

/** The first Monday of the book's money and shopping, and how many weeks to the last day in it. */
export function weeksOf(book: OrderBook, plan: BookPlan): { readonly from: number; readonly count: number } {
  const days = [
    book.plannedOn,
    ...book.booked.map(({ date }) => date),
    ...book.orders.map(({ due }) => due),
    ...plan.stays.map(({ to }) => Math.floor(to)),
  ];
  const from = mondayOf(Math.min(...days));
  return { from, count: Math.floor((Math.max(...days) - from) / 7) + 1 + SPARE.weeks };
}

export function tablesOf(book: OrderBook, rows: LivingRows, weeks: number, logged?: number) {
  const { batches, pairs, shares, stays, days, tasks } = rows;
  const orders = book.orders.length + SPARE.orders;
  const top = <K extends string>(
    sheet: SheetKey,
    of: ConstructorParameters<typeof Table<K>>[1],
    lines: number,
  ) => new Table<K>(SHEETS[sheet], of, HEAD, lines);
  const under = <K extends string>(
    above: Table<string>,
    of: ConstructorParameters<typeof Table<K>>[1],
    lines: number,
    gap = GAP,
  ) => new Table<K>(above.title, of, above.last + gap, lines);
  const batch = top('batches', columns.BATCHES, batches.length);
  const eggs = top('counts', columns.EGG_COUNTS, batches.length);
  const fry = under(eggs, columns.FRY_COUNTS, batches.length);
  const vats = top('vats', columns.VATS, book.vats.length + SPARE.vats);
  const stay = under(vats, columns.STAYS, stays.length);
  const events = logged ?? batches.reduce((sum, b) => sum + b.events.length + b.counts.length, 0);
  const shopping = new Table(SHEETS.money, columns.SHOPPING, HEAD + 14, weeks + 1);
  const cash = under(shopping, columns.CASH, weeks + 1, GAP + 1);
  const females = top('brood', columns.FEMALES, book.females.length + SPARE.fish);
  return {
    orders: top('orders', columns.ORDERS, orders),
    promises: top('promises', columns.PROMISES, book.orders.length),
    batches: batch,
    pairs: under(batch, columns.PAIRS, pairs.length),
    eggs,
    fry,
    log: under(fry, columns.LOG, events + SPARE.log),
    vats,
    stays: stay,
    stayWorkings: new Table(SHEETS.stays, columns.STAY_WORKINGS, stay.head, stays.length),
    calendar: top('calendar', columns.CALENDAR, tasks.length),
    tasks: top('tasks', columns.TASK_LIST, tasks.length),
    times: top('times', columns.TIMES, batches.length),
    shopping,
    cash,
    booked: under(cash, columns.BOOKED, book.booked.length + SPARE.booked),
    females,
    males: under(females, columns.MALES, book.males.length + SPARE.fish),
    workings: top('workings', columns.WORKINGS, batches.length),
    shares: top('shares', columns.SHARES, shares.length),
    days: top('days', columns.DAYS, days.length),
  };
}

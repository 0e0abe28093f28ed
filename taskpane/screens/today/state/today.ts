import type { BookDay, BookTask, DayOrder } from '../../../../shared/books/living/reading/day';

/** What the day asks, as read of the workbook. */
export interface TodayState {
  /** Undefined until the workbook was read. */
  readonly tasks: readonly TaskOfDay[] | undefined;
  /** The season that stands in the workbook, as of its last reading. */
  readonly book: BookDay | undefined;
  /** Seasons in the workbook, by what stands behind their sheets' names. */
  readonly seasons: readonly string[];
  /** The one somebody chose; else the last. */
  readonly chosen: string | undefined;
}
export interface TaskOfDay extends Partial<Pick<BookTask, 'task' | 'order' | 'batch'>> {
  /** The same for the same task however often it is read. */
  readonly key: string;
  readonly at: number;
  readonly what: string;
  readonly amount: string;
  readonly remember: string;
  readonly sheet: string;
  readonly row: number;
  /** The cell it is ticked off in, where the sheet has one. */
  readonly tick: string | undefined;
  /** Done according to the sheet. */
  readonly isDone: boolean;
}
export const initialToday: TodayState = {
  tasks: undefined,
  book: undefined,
  seasons: [],
  chosen: undefined,
};

/** How far Today looks: what is overdue since a week (what is older is history), today and tomorrow. */
export const DAYS_BACK = 7;
export const DAYS_AHEAD = 2;

export interface Day {
  readonly next: TaskOfDay | undefined;
  readonly overdue: readonly TaskOfDay[];
  readonly today: readonly TaskOfDay[];
  readonly tomorrow: readonly TaskOfDay[];
}
/** Tasks not done yet, by when they are due. */
export function dayOf(tasks: readonly TaskOfDay[], done: ReadonlySet<string>, now: number): Day {
  const open = tasks
    .filter(({ key, isDone, at }) => !isDone && !done.has(key) && at > Math.floor(now) - DAYS_BACK)
    .sort((a, b) => a.at - b.at);
  // The latest first: it is the likeliest to be still done.
  const overdue = open.filter(({ at }) => at < now).reverse();
  const day = Math.floor(now);
  return {
    overdue,
    // However far: a quiet week still has a next hour.
    next: open.find(({ at }) => at >= now),
    today: open.filter(({ at }) => at >= now && at < day + 1),
    tomorrow: open.filter(({ at }) => at >= day + 1 && at < day + DAYS_AHEAD),
  };
}

/** Fewer than this share of the fish expected when it was planned: chosen here, smaller differences are rounding. */
const LEAST = 0.97;
/** An order still to be handed over of which clearly fewer fish are expected now than when it was planned. */
export const isShort =
  (now: number) =>
  ({ due, delivered, number, expected, planned, isCancelled }: DayOrder): boolean =>
    !isCancelled &&
    delivered < number &&
    (due === undefined || due >= Math.floor(now)) &&
    expected !== undefined &&
    planned !== undefined &&
    expected < LEAST * Math.min(planned, number);

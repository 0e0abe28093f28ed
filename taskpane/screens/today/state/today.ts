/** What the day asks, as read of the workbook. */
export interface TodayState {
  readonly tasks: readonly TaskOfDay[] | undefined;
  /** Sheets with what to do were found in the workbook. */
  readonly hasPlan: boolean;
}
export interface TaskOfDay {
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
export const initialToday: TodayState = { tasks: undefined, hasPlan: false };

/** How far Today looks: what is overdue since yesterday, today and tomorrow. */
export const DAYS_BACK = 1;
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
  const overdue = open.filter(({ at }) => at < now);
  const day = Math.floor(now);
  return {
    overdue,
    next: open.find(({ at }) => at >= now && at < day + DAYS_AHEAD),
    today: open.filter(({ at }) => at >= now && at < day + 1),
    tomorrow: open.filter(({ at }) => at >= day + 1 && at < day + DAYS_AHEAD),
  };
}

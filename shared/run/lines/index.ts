import type { Operand } from '../../sheet/formula';
import { CLOCK_LINES } from './clock';
import { DAY_LINES } from './days';
import { FISH_LINES } from './fish';
import type { RunLine } from './declare';
import { SHARE_LINES } from './share';
import { taskList } from './tasks';
import type { TaskKey } from './tasks';
import { LineTable } from './read';
import { THERE_LINES } from './there';
import { WATER_LINES } from './water';

export type { LineGivens, RunLine } from './declare';
export { filled } from './declare';
export { RUN_GIVEN } from './given';
export type { GivenKey } from './given';
export { LineReader, LineTable } from './read';
export { CLOCK_LINES, DAY_LINES, FISH_LINES, SHARE_LINES, WATER_LINES };
export { EVENTS_IN_ORDER, TASKS, plural, taskList } from './tasks';
export type { RunTask, TaskContext, TaskKey } from './tasks';

/** Every figure of a run. */
export const RUN_LINES = { ...CLOCK_LINES, ...FISH_LINES, ...THERE_LINES, ...WATER_LINES } as const;
export type RunLineKey = keyof typeof RUN_LINES;
/** Every figure of a run on a day. */
export type DayLineKey = keyof typeof DAY_LINES;

export const runLines = new LineTable<RunLineKey>(RUN_LINES);
export const dayLines = new LineTable<DayLineKey>(DAY_LINES);

export type ShareLineKey = keyof typeof SHARE_LINES;
export const shareLines = new LineTable<ShareLineKey>(SHARE_LINES);
const timeOf = (key: TaskKey): `at_${TaskKey}` => `at_${key}`;
const times = new LineTable(
  Object.fromEntries(taskList.map(([key, { at }]) => [timeOf(key), at])) as Record<`at_${TaskKey}`, RunLine>,
);
/** When each task of a batch (or of an order it serves) is due; `read` gives the figures of the batch. */
export function taskTimes(read: (key: string) => Operand): (task: TaskKey) => number {
  const reader = times.open(Object.fromEntries(times.needs.map((key) => [key, read(key)])));
  return (task) => reader.number(timeOf(task));
}

import type { Command, Working } from '../../../pane/command';
import { working } from '../../../pane/command';
import { showPlace } from '../../../pane/navigate';
import type { PaneState } from '../../../pane/state';
import { hasWorkbook } from '../../../pane/state';
import { HostProblem } from '../../../host/port';
import { noteLines } from '../../vat/commands/notebook';
import type { NotebookLine } from '../../vat/state/notebook';
import { PLAN_SHEETS, tasksIn } from '../state/calendar';
import type { TaskOfDay } from '../state/today';

const quiet = (): void => undefined;

/** Reads the sheets of a plan in the workbook, as they stand now. */
export const readDay: Command = {
  name: 'readDay',
  label: 'Read the workbook again',
  perform: (state): PaneState | Working => {
    if (!hasWorkbook(state)) return state;
    return working(state, async ({ workbook }) => {
      try {
        const names = (await workbook.listSheets()).filter((name) => PLAN_SHEETS.test(name));
        const read = await Promise.all(
          names.map((sheet) => workbook.readCells({ sheet }, quiet, () => false)),
        );
        const tasks = tasksIn(read.flatMap((one) => one?.sheets ?? []));
        return (now) => ({ ...now, today: { tasks, hasPlan: names.length > 0 && tasks.length > 0 } });
      } catch (error) {
        // A cell is being edited, say: what was read before stays.
        if (error instanceof HostProblem) return (now) => now;
        throw error;
      }
    });
  },
};

/** Ticked off with the hour of now: a line in the book, from which the delay can be told. */
export const tickTask: Command<TaskOfDay> = {
  name: 'tickTask',
  label: 'Done',
  perform: (state, task) =>
    noteLines(
      state,
      state.vat,
      [
        {
          what: 'done',
          value: null,
          unit: '',
          note: task.what,
          task: task.key,
          ...(task.tick === undefined ? {} : { ticked: { sheet: task.sheet, address: task.tick } }),
        },
      ],
      state.now,
    ),
};

export const doneTasks = (lines: readonly NotebookLine[]): ReadonlySet<string> =>
  new Set(lines.flatMap(({ task }) => (task === undefined ? [] : [task])));

export type Start = 'order' | 'season' | 'sour' | 'number' | 'check';
/** Where each way to begin leads. */
export const START_PLACES = {
  order: 'plan',
  season: 'plan',
  sour: 'vat',
  number: 'why',
  check: 'why',
} as const satisfies Readonly<Record<Start, string>>;

const placed = (state: PaneState, start: Start): PaneState => {
  if (start === 'order' || start === 'season')
    return { ...state, season: { ...state.season, mode: start === 'season' ? 'season' : 'run' } };
  if (start === 'sour') return { ...state, vat: { ...state.vat, card: 'dose' } };
  return {
    ...state,
    why: { ...state.why, part: start === 'check' ? 'check' : 'find' },
    focus: start === 'number' ? 'function-search' : undefined,
  };
};

export const begin: Command<Start> = {
  name: 'begin',
  label: 'Begin',
  perform: (state, start): PaneState | Working => {
    const shown = showPlace.perform(state, START_PLACES[start]);
    if (!('work' in shown)) return placed(shown, start);
    return working(
      shown.next.ready.includes(START_PLACES[start]) ? placed(shown.next, start) : shown.next,
      async (...doors) => {
        const change = await shown.work(...doors);
        return (now) => placed(change(now), start);
      },
    );
  },
};

import type { Command, Working } from '../../../pane/command';
import { working } from '../../../pane/command';
import { showPlace } from '../../../pane/frame/navigate';
import type { PaneState } from '../../../pane/keeping/state';
import { atCard } from '../../vat/commands/vat';
import type { CardId } from '../../vat/state/cards';
import { noteLines } from '../../vat/commands/notebook';
import { tickEntries } from '../../vat/state/entries';
import type { NotebookLine } from '../../vat/state/notebook';
import type { TaskOfDay } from '../state/today';

/** What is noted as done, and when it was really done: now, or at its planned hour. */
export interface Ticked {
  readonly task: TaskOfDay;
  readonly isOnTime?: boolean;
}

/** Ticked off with the hour it was really done: in the list, and for fish injected or stripped in their line. */
export const tickTask: Command<Ticked> = {
  name: 'tickTask',
  label: 'Done',
  perform: (state, { task, isOnTime = false }) =>
    noteLines(
      state,
      state.vat,
      [
        {
          what: 'done',
          value: null,
          unit: '',
          note: [task.batch, task.what].filter(Boolean).join(': '),
          task: task.key,
          entries: tickEntries(task),
          isLogged: true,
        },
      ],
      isOnTime ? task.at : state.now,
    ),
};

export const doneTasks = (lines: readonly NotebookLine[]): ReadonlySet<string> =>
  new Set(lines.flatMap(({ task }) => (task === undefined ? [] : [task])));

export type Start = 'order' | 'season' | 'sour' | 'number' | 'check';
/** One of the ways to begin, or the card a task asks for. */
export type Beginning =
  Start | { readonly start: 'card'; readonly card: CardId; readonly vat: string | undefined };
/** Where each way to begin leads. */
export const START_PLACES = {
  order: 'plan',
  season: 'plan',
  sour: 'vat',
  number: 'why',
  check: 'why',
} as const satisfies Readonly<Record<Start, string>>;

const placed = (state: PaneState, start: Beginning): PaneState => {
  if (typeof start === 'object') {
    const vat = start.vat ?? state.vat.vat;
    return atCard({ ...state, vat: { ...state.vat, vat } }, start.card, 'card-title');
  }
  if (start === 'order' || start === 'season')
    return {
      ...state,
      season: { ...state.season, mode: start === 'season' ? 'season' : 'run' },
      // The first question; a season begins with its name, which may stay.
      focus: start === 'order' ? 'plan-wanted' : undefined,
    };
  if (start === 'sour') return { ...state, vat: { ...state.vat, card: 'dose' } };
  return {
    ...state,
    why: { ...state.why, part: start === 'check' ? 'check' : 'find' },
    focus: start === 'number' ? 'function-search' : undefined,
  };
};

export const begin: Command<Beginning> = {
  name: 'begin',
  label: 'Begin',
  perform: (state, start): PaneState | Working => {
    const place = typeof start === 'object' ? 'vat' : START_PLACES[start];
    const shown = showPlace.perform(state, place);
    if (!('work' in shown)) return placed(shown, start);
    return working(
      shown.next.ready.includes(place) ? placed(shown.next, start) : shown.next,
      async (...doors) => {
        const change = await shown.work(...doors);
        return (now) => placed(change(now), start);
      },
    );
  },
};

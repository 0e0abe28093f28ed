import type { StateChange, Command, Doors, Send } from '../command';
import { isWorking } from '../command';
import type { PortTell } from '../../host/port';
import { HostProblem } from '../../host/port';
import type { PaneState } from './state';

export interface PaneStore {
  readonly state: () => PaneState;
  readonly send: Send;
  readonly change: (change: StateChange) => void;
  /** Resolves when no work is under way. */
  readonly idle: () => Promise<void>;
}

const UNEXPECTED =
  'Something went wrong that Spawnbook did not expect. Nothing more was changed; please try again.';

/** A failure as the user reads it: our own sentence, never the host's. */
const problem =
  (error: unknown): StateChange =>
  (state) => ({
    ...state,
    notice: { tone: 'bad', text: error instanceof HostProblem ? error.message : UNEXPECTED },
  });

/** Holds the one state, applies commands, and calls `redraw` after every change. */
export function createStore(initial: PaneState, doors: Doors, redraw: (state: PaneState) => void): PaneStore {
  let state = initial;
  const running = new Set<Promise<void>>();
  const change = (next: StateChange): void => {
    state = next(state);
    redraw(state);
  };
  /**
   * Only work that showed progress takes the progress away again: a quick reading may end while a long
   * writing goes on.
   */
  const run = async (work: Promise<StateChange>, isLong: boolean): Promise<void> => {
    const done: StateChange = isLong ? (now) => ({ ...now, task: undefined }) : (now) => now;
    try {
      const ended = await work;
      change((now) => ended(done(now)));
    } catch (error) {
      change((now) => problem(error)(done(now)));
    }
  };
  function send<I>(command: Command<I>, ...input: [I?]): void {
    const result = command.perform(state, input[0] as I);
    if (!isWorking(result)) return change(() => result);
    const isLong = result.next.task !== undefined && result.next.task !== state.task;
    change(() => result.next);
    const isStopped = (): boolean => isLong && state.task?.isStopping === true;
    const tell: PortTell = (task) => {
      if (isLong) change((now) => ({ ...now, task: isStopped() ? { ...task, isStopping: true } : task }));
    };
    const job: Promise<void> = run(result.work(doors, tell, isStopped), isLong).finally(() =>
      running.delete(job),
    );
    running.add(job);
  }
  return {
    state: () => state,
    send: send as Send,
    change,
    idle: async () => {
      while (running.size > 0) await Promise.all(running);
    },
  };
}

import type { ErrorMemory, FilePort, Tell, WorkbookPort } from '../host/port';
import type { State } from './state';

/** What slow work may reach. */
export interface Doors {
  readonly workbook: WorkbookPort;
  readonly files: FilePort;
  readonly errors: ErrorMemory;
  /** Today as a serial. */
  readonly today: () => number;
  /** This moment as a serial with its hour, as the clock on the wall shows it. */
  readonly now: () => number;
  /** A sound, where there is one. */
  readonly ring?: () => void;
  /** What was typed in this pane, beyond the workbook: gone for good. */
  readonly forget?: () => Promise<void>;
}

export type Change = (state: State) => State;

/**
 * A next state that has work behind it; when the work ends, its change is applied to the state of that
 * moment.
 */
export interface Working {
  readonly next: State;
  /** `isStopped`: the user wants long work to end; it then leaves everything as it was. */
  readonly work: (doors: Doors, tell: Tell, isStopped: () => boolean) => Promise<Change>;
}

/** One thing a user can do. */
export interface Command<I = undefined> {
  readonly name: string;
  /** As a button says it. */
  readonly label: string;
  readonly perform: (state: State, input: I) => State | Working;
}

export const working = (next: State, work: Working['work']): Working => ({ next, work });
export const isWorking = (result: State | Working): result is Working => 'work' in result;

export type Send = <I>(command: Command<I>, ...input: I extends undefined ? [] : [I]) => void;

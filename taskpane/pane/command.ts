import type { ErrorMemory, FilePort, PortTell, WorkbookPort } from '../host/port';
import type { PaneState } from './keeping/state';

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

export type StateChange = (state: PaneState) => PaneState;

/**
 * A next state that has work behind it; when the work ends, its change is applied to the state of that
 * moment.
 */
export interface Working {
  readonly next: PaneState;
  /** `isStopped`: the user wants long work to end; it then leaves everything as it was. */
  readonly work: (doors: Doors, tell: PortTell, isStopped: () => boolean) => Promise<StateChange>;
}

/** One thing a user can do. */
export interface Command<I = undefined> {
  readonly name: string;
  /** As a button says it. */
  readonly label: string;
  readonly perform: (state: PaneState, input: I) => PaneState | Working;
}

export const working = (next: PaneState, work: Working['work']): Working => ({ next, work });
export const isWorking = (result: PaneState | Working): result is Working => 'work' in result;

export type Send = <I>(command: Command<I>, ...input: I extends undefined ? [] : [I]) => void;

import type { LiveCell, LiveName, LiveTable } from '../../../shared/sheet/live/book';
import type { LiveAnswer } from '../../../shared/sheet/live/work';
import type { RuleWatch, WatchAnswer } from '../../../shared/sheet/live/watch';

/** What the page and its calculating worker say to each other. */

/** Changes since the last one; parts that are left out are as they were. */
export interface Changes {
  readonly task: 'calculate';
  /** A workbook by its id: another one than last time begins empty. */
  readonly book: string;
  readonly today: number;
  readonly sheets?: readonly { readonly id: string; readonly name: string }[];
  readonly names?: readonly LiveName[];
  readonly tables?: readonly LiveTable[];
  readonly watches?: readonly RuleWatch[];
  readonly cells: readonly {
    readonly sheet: string;
    /** All cells of the sheet, not only some. */
    readonly isWhole: boolean;
    readonly cells: readonly LiveCell[];
  }[];
  /** Every formula anew. */
  readonly isAll: boolean;
  /** Sheets whose answers did not arrive. */
  readonly again: readonly string[];
}
export interface Results {
  readonly answers: readonly LiveAnswer[];
  readonly watches: readonly WatchAnswer[];
  /** Functions the worker does not know; its answers are then not used. */
  readonly unknown: readonly string[];
}

export interface ReadFile {
  readonly task: 'read';
  readonly bytes: Uint8Array;
}
/** A prepared workbook (files/prepared.ts), as text. */
export type FileRead = string;

export interface Tasks {
  readonly calculate: { readonly ask: Changes; readonly answer: Results };
  readonly read: { readonly ask: ReadFile; readonly answer: FileRead };
}
export interface Asked {
  readonly id: number;
  readonly ask: Changes | ReadFile;
}
export type Answered =
  | { readonly id: number; readonly answer: Results | FileRead }
  | { readonly id: number; readonly failed: string };

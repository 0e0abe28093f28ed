import type { PageLanguage } from '../proof/pageWords';
import type { ShareProblem } from './problems';
import type { Proof } from '../proof/search';

export interface FreezeOptions {
  /** When the copy is made, as it shall read on the page. */
  readonly date: string;
  /** Name of the workbook, for the page. */
  readonly workbook: string;
  /** What makes the copy, with its version. */
  readonly maker?: string;
  /** Go on although cells were never calculated; they stay blank. */
  readonly acceptProblems?: boolean;
  /** Turn calls whose record names a native formula into that formula. */
  readonly keepAlive?: boolean;
  /** Names of the sheets to keep; all when left out. */
  readonly sheets?: readonly string[];
  /** Keep what the other sheets work out from those left out; it may tell what stood there. */
  readonly keepResults?: boolean;
  /** Columns or ranges to empty, with everything that would reveal them: Fish!C, 'Buyers list'!B2:D40. */
  readonly blank?: readonly string[];
  /** Take out authors, paths, printers and the like. */
  readonly personal?: boolean;
  /** 1 packs faster, 6 smaller; left out, large sheets are packed fast and all else small. */
  readonly level?: 1 | 6;
  /** Of the page; English when left out. */
  readonly language?: PageLanguage;
  /** Our own words in that language. */
  readonly say?: (text: string) => string;
}

export interface FreezeReport {
  /** Formulas of ours that became values. */
  readonly frozen: number;
  /** Formulas of ours that became native formulas. */
  readonly alive: number;
  /** Other formulas that became values, because they read what is left out. */
  readonly cut: number;
  /** Formulas that stay as they were. */
  readonly kept: number;
  /** Lines on the page. */
  readonly blocks: number;
  /** Name of the page's sheet. */
  readonly page: string;
  readonly digest: string;
  readonly problems: readonly ShareProblem[];
  /** What was taken out or changed beyond the cells, a sentence each. */
  readonly removed: readonly string[];
  /** What is still in the file and may tell more than the cells, a sentence each. */
  readonly left: readonly string[];
  /** What the search of the copy for values left out found; undefined when nothing was left out. */
  readonly proof: Proof | undefined;
}

export interface SheetSummary {
  readonly name: string;
  readonly calls: number;
  readonly problems: number;
}

export interface Inspection {
  /** Set when no copy can be made of this file. */
  readonly refused: string | undefined;
  readonly calls: number;
  readonly sheets: readonly SheetSummary[];
  readonly problems: readonly ShareProblem[];
  /** Would a copy be refused because of a stopping problem? */
  readonly stops: boolean;
  /** What the reader should know before the copy is made. */
  readonly notes: readonly string[];
}

export type FreezeResult =
  | { readonly kind: 'made'; readonly bytes: Uint8Array; readonly report: FreezeReport }
  /** Nothing to do; the bytes are those that came in. */
  | { readonly kind: 'unchanged'; readonly bytes: Uint8Array; readonly sentence: string }
  | { readonly kind: 'refused'; readonly sentence: string; readonly problems: readonly ShareProblem[] };

/** What the work is at, and how far: 0 to 1 within the step. */
export interface ShareProgress {
  readonly step: 'unpack' | 'read' | 'write' | 'page' | 'pack' | 'prove';
  readonly done: number;
}

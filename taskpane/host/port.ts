// Long: the whole door to the workbook, a member each.
import type { RangeCells } from '../../shared/records';
import type { CellChange } from '../../shared/books/living/reading/day';
import type { SheetModel, WorkbookModel } from '../../shared/sheet/workbook/model';
import type { Cell, ErrorCode, Grid } from '../../shared/base/values';

/**
 * The one door between the pane and a workbook. Everything the pane knows about a sheet or does to it passes
 * here; the pane runs unchanged on any host that opens this door. A method that cannot do its work throws a
 * HostProblem, whose text is for the user.
 */
export class HostProblem extends Error {
  override readonly name = 'HostProblem';
}

export interface RangeReading {
  /** As a formula would write it: B2:B9, with the sheet in front when it is not the active one. */
  readonly reference: string;
  readonly rows: number;
  readonly columns: number;
  readonly values: Grid;
}

export interface Insertion {
  readonly formula: string;
  /** Size of the answer as far as it is known; 1 × 1 when it is not. */
  readonly rows: number;
  readonly columns: number;
  /** Number format for each column of the answer, used where the cell has none of its own. */
  readonly formats: readonly string[];
  /** The first row of the answer is text. */
  readonly hasHeadings: boolean;
  /** The user has agreed to lose what is in the cell. */
  readonly mayReplace: boolean;
  /** Below the selected cell, where the whole answer finds room; else the selected cell itself. */
  readonly isBelow?: boolean;
  /** Written left and right of an answer of one cell, where those cells are empty. */
  readonly name?: string;
  readonly unit?: string;
}

export type InsertOutcome =
  | { readonly kind: 'inserted'; readonly address: string }
  | { readonly kind: 'occupied'; readonly address: string; readonly content: string }
  | { readonly kind: 'refused'; readonly sentence: string };

/** One step of something that takes a while. */
export interface Progress {
  readonly label: string;
  readonly done: number;
  readonly total: number;
  /** The user may stop it; nothing is changed then. */
  readonly canStop?: boolean;
  readonly isStopping?: boolean;
}
export type PortTell = (progress: Progress) => void;

export type WriteOutcome =
  | { readonly kind: 'written'; readonly sheets: readonly string[] }
  /**
   * Nothing was changed: these sheet names are in use. `free` is a word that makes every name free when put
   * behind it.
   */
  | {
      readonly kind: 'taken';
      readonly sheets: readonly string[];
      readonly names: readonly string[];
      readonly free: string;
    };

/** A cell with one of our functions in its formula. */
export interface CallCell {
  readonly sheet: string;
  readonly address: string;
  readonly formula: string;
  readonly value: Cell;
}

export interface Scan {
  readonly calls: readonly CallCell[];
  readonly sheets: number;
  /** What a reference in a formula of `sheet` holds, from the same reading. */
  readonly lookUp: (reference: string, sheet: string) => Grid | undefined;
}

export interface Mending {
  readonly sheet: string;
  readonly address: string;
  /** What the cell must still hold for the mending to be right. */
  readonly was: string;
  readonly formula: string;
  /** It shows a value now, so it may spill. */
  readonly showsValue: boolean;
}
export interface MendReport {
  readonly mended: number;
  /** Cells left as they were, with the reason. */
  readonly left: readonly { readonly sheet: string; readonly address: string; readonly sentence: string }[];
}

/** The open workbook as a file. */
export type FileReading =
  | { readonly kind: 'read'; readonly name: string; readonly bytes: Uint8Array }
  /** The host does not hand its file out; the sentence says what to do instead. */
  | { readonly kind: 'closed'; readonly sentence: string };

/** What of the open workbook is read as records. */
export type CellsWanted = 'selection' | 'sheet' | 'book' | { readonly sheet: string; readonly area?: string };
export interface CellsReading {
  readonly sheets: readonly RangeCells[];
  /** Reads the same place again, wherever the selection went since. */
  readonly again: CellsWanted;
}

/** A colour (#RRGGBB) and a note for a cell. */
export interface CellMark {
  readonly sheet: string;
  readonly address: string;
  readonly fill: string;
  readonly note: string;
}
export interface Marked extends CellMark {
  /** The colour before. */
  readonly was: string;
}
export interface MarkReport {
  readonly marked: readonly Marked[];
  /** Why others were left alone. */
  readonly left: readonly string[];
}
export interface UnmarkReport {
  readonly restored: number;
  /** Painted over since, and left so. */
  readonly changed: number;
  readonly stuck: readonly Marked[];
  readonly left: readonly string[];
}

/** Lines for a sheet that grows. */
export interface LogLines {
  readonly sheet: string;
  readonly headings: readonly string[];
  readonly formats: readonly string[];
  /** Widths of the columns, in points. */
  readonly widths: readonly number[];
  readonly rows: readonly (readonly Cell[])[];
  /** The same log in other languages: one of them that stands already is gone on with. */
  readonly others?: readonly Omit<LogLines, 'others'>[];
}
/** What a log is found by. */
export type LogPlace = Pick<LogLines, 'sheet' | 'headings'> & { readonly others?: readonly LogPlace[] };

/** The selected cell, as it stands. */
export interface CellLook {
  readonly sheet: string;
  readonly address: string;
  /** '' when it holds none; of a cell that an answer spills into, the formula it comes from. */
  readonly formula: string;
  readonly value: Cell;
  /** Address of the cell whose answer spills into this one. */
  readonly spilledFrom?: string;
}

/** Cells of a person's own beside the tables of a book, which its model does not know. */
export interface OwnCells {
  readonly sheet: string;
  readonly cells: SheetModel['cells'];
}
export interface Overwritten {
  readonly suffix: string;
  readonly strays: readonly OwnCells[];
}
/** Sheets of a writing that broke off and are still there, by the names they bear now. */
export interface LeftBehind {
  readonly title: string;
  readonly sheets: readonly string[];
  readonly over?: Overwritten;
}

/** The book on the sheets is half written: what stood there must be put back before anything else. */
export class HalfWritten extends HostProblem {}

export interface WorkbookPort {
  /** The first cell of the selection, cheap enough to ask again and again. */
  readCell(): Promise<CellLook>;
  appendLines(log: LogLines): Promise<{ readonly sheet: string; readonly row: number }>;
  /** Headings and lines of the log as they stand in the workbook; nothing where there is none. */
  readLines(log: LogPlace): Promise<Grid>;
  /** Fills cells, all or none; false when one holds something else than `from` (null: nothing) by now. */
  writeCells(sheet: string, cells: readonly CellChange[]): Promise<boolean>;
  /** false when the row says something else by now; it is left alone then. */
  removeLine(log: LogLines, row: number): Promise<boolean>;
  /** What this pane kept in the workbook, and keeping it. */
  recallPane(): Promise<unknown>;
  rememberPane(text: string): Promise<void>;
  /** What stands in the sheet's selection now. */
  readSelection(): Promise<RangeReading>;
  readReference(reference: string): Promise<RangeReading>;
  insertFormula(insertion: Insertion): Promise<InsertOutcome>;
  /**
   * All or nothing; a sheet that exists is never touched. `suffix` is put behind every sheet, name and table
   * of the model.
   */
  writeWorkbook(model: WorkbookModel, suffix: string, tell: PortTell): Promise<WriteOutcome>;
  /** Sheets of a writing that broke off for good, in this session or an earlier one; undefined when there are none. */
  leftBehind(): Promise<LeftBehind | undefined>;
  /** Takes them away; answers their names. */
  takeLeftAway(): Promise<readonly string[]>;
  /** Leaves them and asks no more. */
  keepLeft(): Promise<void>;
  /**
   * Writes a book over its own sheets, which keep their places and names; all or nothing. `before` is the book
   * as it stands: it is written back when something fails half-way. Answers the names of the sheets.
   */
  rewriteWorkbook(
    model: WorkbookModel,
    before: WorkbookModel,
    suffix: string,
    tell: PortTell,
    /** What the next start needs to put `before` back, should even that fail here. */
    strays?: readonly OwnCells[],
  ): Promise<readonly string[]>;
  /** A text the workbook keeps under a name of ours, beyond closing the pane; undefined when there is none. */
  recallText(key: string): Promise<unknown>;
  rememberText(key: string, text: string | undefined): Promise<void>;
  /** How a blank cell reaches a function here: asked in a sheet that goes again. */
  askBlanks(): Promise<BlankHanding>;
  scanCalls(tell: PortTell): Promise<Scan>;
  mend(cells: readonly Mending[], tell: PortTell): Promise<MendReport>;
  goTo(sheet: string, address: string): Promise<void>;
  /** The workbook as it stands now, as .xlsx bytes; it is only read. */
  readFile(tell: PortTell): Promise<FileReading>;
  /** Names of the sheets, as they stand from left to right. */
  listSheets(): Promise<readonly string[]>;
  /** undefined when the user stopped it. */
  readCells(wanted: CellsWanted, tell: PortTell, isStopped: () => boolean): Promise<CellsReading | undefined>;
  /** Colours cells and puts notes where the host takes them; a note somebody wrote stays. */
  mark(marks: readonly CellMark[], tell: PortTell): Promise<MarkReport>;
  unmark(marked: readonly Marked[], tell: PortTell): Promise<UnmarkReport>;
  /** What the workbook keeps of what the user said about columns: anything at all, undefined for nothing. */
  recall(): Promise<unknown>;
  /** Keeps a text in its place; undefined takes it away. Throws when the workbook takes nothing. */
  remember(text: string | undefined): Promise<void>;
  /** The sheet of the hatchery's own rates; undefined when there is none. */
  readRates(): Promise<RangeCells | undefined>;
}

/** Where a finished file goes: a new window of the spreadsheet program, or the browser's downloads. */
export interface FilePort {
  /** Answers what the user has to do now, as a sentence. */
  saveWorkbook(fileName: string, bytes: Uint8Array): Promise<string>;
  /** For a copy whose bytes matter: a download wherever the host allows one. */
  saveCopy(fileName: string, bytes: Uint8Array): Promise<string>;
}

/**
 * The functions run in the same page as the pane and remember, cell by cell, the last error they gave. They
 * publish this memory; the pane only reads it.
 */
export type BlankHanding = 'unknown' | 'kept' | 'zero';
export interface ErrorMemory {
  /** How blank cells reach the functions here, once one was seen. */
  readonly blanks: BlankHanding;
  list(): readonly RememberedError[];
}
export interface RememberedError {
  /** As the host names it: 'Sheet 1'!B4. */
  readonly address: string;
  readonly code: ErrorCode;
  readonly message: string;
}
export const noMemory: ErrorMemory = { blanks: 'unknown', list: () => [] };

import type { RangeCells } from '../../../shared/records';
import type { Cell, Grid } from '../../../shared/base/values';
import type { WorkbookModel } from '../../../shared/sheet/workbook/model';
import type { Doors } from '../../../taskpane/pane/command';
import type {
  CallCell,
  CellLook,
  CellMark,
  CellsReading,
  BlankHanding,
  CellsWanted,
  ErrorMemory,
  FileReading,
  InsertOutcome,
  LeftBehind,
  Insertion,
  Mending,
  MendReport,
  RangeReading,
  Scan,
  WorkbookPort,
  WriteOutcome,
} from '../../../taskpane/host/port';
import { HostProblem, noMemory } from '../../../taskpane/host/port';
import { TODAY } from './seasonModel';

/** A workbook that answers as told and remembers what was asked of it. */
export interface FakeWorld {
  readonly doors: Doors;
  readonly inserted: Insertion[];
  readonly written: { readonly model: WorkbookModel; readonly suffix: string }[];
  readonly rewritten: {
    readonly model: WorkbookModel;
    readonly before: WorkbookModel;
    readonly suffix: string;
  }[];
  /** Texts the workbook keeps under names of ours. */
  readonly texts: Record<string, string | undefined>;
  readonly saved: { readonly name: string; readonly bytes: Uint8Array }[];
  readonly mended: Mending[];
  readonly visited: string[];
  selection: RangeReading;
  cells: Record<string, Grid>;
  calls: readonly CallCell[];
  insertOutcome: InsertOutcome;
  writeOutcome: (suffix: string) => WriteOutcome;
  mendReport: MendReport | undefined;
  file: FileReading;
  records: CellsReading;
  /** Left out, the sheets of `records`. */
  sheets?: readonly string[];
  readonly asked: CellsWanted[];
  marks: readonly CellMark[];
  /** What the workbook remembers of columns, and its sheet of own rates. */
  kept: unknown;
  rates: RangeCells | undefined;
  /** The selected cell, the lines of the log, and what the pane kept. */
  cell: CellLook;
  readonly logged: (readonly Cell[])[];
  readonly words: string[];
  pane: string | undefined;
  /** What a writing left that broke off. */
  left?: LeftBehind | undefined;
  /** The clock on the wall. */
  now: number;
  /** It takes nothing to remember. */
  isReadOnly: boolean;
  /** Said instead of marking. */
  refusal: string | undefined;
  /** How this host hands over a blank cell, and how often it was asked. */
  blanks: BlankHanding;
  blanksAsked: number;
  /** The next call of any kind fails with this. */
  failure: Error | undefined;
}

export const rangeOf = (reference: string, values: readonly (readonly Cell[])[]): RangeReading => ({
  reference,
  rows: values.length,
  columns: values[0]?.length ?? 1,
  values,
});

export function fakeWorld(errors: ErrorMemory = noMemory): FakeWorld {
  const guard = (): void => {
    const { failure } = world;
    world.failure = undefined;
    if (failure) throw failure;
  };
  const workbook: WorkbookPort = {
    readCell: async () => {
      guard();
      return world.cell;
    },
    appendLines: async ({ sheet, rows }) => {
      guard();
      world.logged.push(...rows);
      return { sheet, row: world.logged.length - rows.length + 2 };
    },
    readLines: async ({ headings }) => {
      guard();
      return world.logged.length > 0 ? [[...headings], ...world.logged] : [];
    },
    writeCells: async (sheet, cells) => {
      guard();
      for (const { address, to } of cells) world.words.push(`${sheet}!${address}=${String(to ?? '')}`);
      return true;
    },
    removeLine: async (_log, row) => {
      guard();
      world.logged.splice(row - 2, 1);
      return true;
    },
    recallPane: async () => world.pane,
    rememberPane: async (text) => {
      world.pane = text;
    },
    readSelection: async () => {
      guard();
      return world.selection;
    },
    readReference: async (reference) => {
      guard();
      const values = world.cells[reference];
      if (!values) throw new HostProblem(`${reference} is not in this workbook.`);
      return rangeOf(reference, values);
    },
    insertFormula: async (insertion) => {
      guard();
      world.inserted.push(insertion);
      return insertion.mayReplace ? { kind: 'inserted', address: 'A1' } : world.insertOutcome;
    },
    writeWorkbook: async (model, suffix, tell) => {
      tell({ label: 'Writing formulas', done: 3, total: 7 });
      guard();
      world.written.push({ model, suffix });
      return world.writeOutcome(suffix);
    },
    leftBehind: async () => world.left,
    takeLeftAway: async () => {
      const sheets = world.left?.sheets ?? [];
      world.left = undefined;
      return sheets;
    },
    keepLeft: async () => {
      world.left = undefined;
    },
    rewriteWorkbook: async (model, before, suffix) => {
      guard();
      world.rewritten.push({ model, before, suffix });
      return model.sheets.map(({ name }) => `${name}${suffix}`);
    },
    recallText: async (key) => world.texts[key],
    rememberText: async (key, text) => {
      world.texts[key] = text;
    },
    askBlanks: async () => {
      world.blanksAsked++;
      return world.blanks;
    },
    scanCalls: async (): Promise<Scan> => {
      guard();
      return { calls: world.calls, sheets: 1, lookUp: (reference) => world.cells[reference] };
    },
    mend: async (cells) => {
      guard();
      world.mended.push(...cells);
      return world.mendReport ?? { mended: cells.length, left: [] };
    },
    readFile: async (): Promise<FileReading> => {
      guard();
      return world.file;
    },
    listSheets: async () => {
      guard();
      return world.sheets ?? world.records.sheets.map(({ name }) => name);
    },
    readCells: async (wanted) => {
      guard();
      world.asked.push(wanted);
      return typeof wanted === 'object'
        ? { ...world.records, sheets: world.records.sheets.filter(({ name }) => name === wanted.sheet) }
        : world.records;
    },
    mark: async (marks) => {
      guard();
      if (world.refusal !== undefined) return { marked: [], left: [world.refusal] };
      world.marks = marks;
      return { marked: marks.map((one) => ({ ...one, was: '#FFFFFF' })), left: [] };
    },
    unmark: async (marked) => {
      guard();
      if (world.refusal !== undefined)
        return { restored: 0, changed: 0, stuck: marked, left: [world.refusal] };
      world.marks = [];
      return { restored: marked.length, changed: 0, stuck: [], left: [] };
    },
    recall: async () => {
      guard();
      return world.kept;
    },
    remember: async (text) => {
      guard();
      if (world.isReadOnly) throw new HostProblem('The workbook is read only.');
      world.kept = text;
    },
    readRates: async () => {
      guard();
      return world.rates;
    },
    goTo: async (sheet, address) => {
      guard();
      world.visited.push(`${sheet}!${address}`);
    },
  };
  const save = async (name: string, bytes: Uint8Array): Promise<string> => {
    guard();
    world.saved.push({ name, bytes });
    return `${name} is saved.`;
  };
  const files = { saveWorkbook: save, saveCopy: save };
  const world: FakeWorld = {
    doors: { workbook, files, errors, today: () => TODAY, now: () => world.now },
    cell: { sheet: 'Sheet1', address: 'B2', formula: '', value: 1 },
    logged: [],
    words: [],
    pane: undefined,
    now: TODAY + 18 / 24,
    inserted: [],
    written: [],
    rewritten: [],
    texts: {},
    saved: [],
    mended: [],
    visited: [],
    selection: rangeOf('Sheet1!B2:B4', [[1], [2], [3]]),
    cells: {},
    calls: [],
    insertOutcome: { kind: 'inserted', address: 'A1' },
    writeOutcome: () => ({ kind: 'written', sheets: ['Start'] }),
    mendReport: undefined,
    failure: undefined,
    records: { sheets: [], again: 'book' },
    asked: [],
    marks: [],
    refusal: undefined,
    blanks: 'unknown',
    blanksAsked: 0,
    kept: undefined,
    rates: undefined,
    isReadOnly: false,
    file: { kind: 'closed', sentence: 'This host keeps its file to itself.' },
  };
  return world;
}

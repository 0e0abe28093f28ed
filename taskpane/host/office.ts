import { appendLines, readLines, removeLine, writeCells } from './writing/log';
import { readRates, recall, recallPane, recallText, remember, rememberPane, rememberText } from './ownKept';
import type { ErrorMemory, WorkbookPort } from './port';
import { HostProblem, noMemory } from './port';
import { listSheets, readCells } from './reading/records';
import { goTo, readCell, readReference, readSelection } from './reading/ranges';

/** The open workbook, through Office.js. What is seldom needed, or long, is loaded when it is first asked for. */
export const officePort: WorkbookPort = {
  readSelection,
  readReference,
  insertFormula: async (insertion) => (await import('./writing/insert')).insertFormula(insertion),
  writeWorkbook: async (model, suffix, tell) =>
    (await import(/* webpackChunkName: "write" */ './writing/renderWorkbook')).writeWorkbook(
      model,
      suffix,
      tell,
    ),
  leftBehind: async () => (await import(/* webpackChunkName: "write" */ './writing/unfinished')).leftBehind(),
  takeLeftAway: async () =>
    (await import(/* webpackChunkName: "write" */ './writing/unfinished')).takeLeftAway(),
  keepLeft: async () => (await import(/* webpackChunkName: "write" */ './writing/unfinished')).keepLeft(),
  rewriteWorkbook: async (model, before, suffix, tell, strays) =>
    (await import(/* webpackChunkName: "write" */ './writing/rewriteWorkbook')).rewriteWorkbook(
      model,
      before,
      suffix,
      tell,
      strays,
    ),
  askBlanks: async () => (await import(/* webpackChunkName: "scan" */ './writing/askBlanks')).askBlanks(),
  scanCalls: async (tell) => (await import(/* webpackChunkName: "scan" */ './reading/scan')).scanCalls(tell),
  mend: async (cells, tell) =>
    (await import(/* webpackChunkName: "mend" */ './writing/mend')).mend(cells, tell),
  goTo,
  readFile: async (tell) =>
    (await import(/* webpackChunkName: "file" */ './reading/readFile')).readFile(tell),
  listSheets,
  readCells,
  mark: async (marks, tell) =>
    (await import(/* webpackChunkName: "marks" */ './writing/marks')).mark(marks, tell),
  unmark: async (marked, tell) =>
    (await import(/* webpackChunkName: "marks" */ './writing/marks')).unmark(marked, tell),
  recall,
  remember,
  readRates,
  readCell,
  appendLines,
  readLines,
  removeLine,
  writeCells,
  recallPane,
  rememberPane,
  recallText,
  rememberText,
};

const absent = (): Promise<never> =>
  Promise.reject(
    new HostProblem('There is no workbook here. Open Spawnbook inside Excel, or in the local sheet.'),
  );

/** Where the pane runs alone in a browser. */
export const closedPort: WorkbookPort = {
  readSelection: absent,
  readReference: absent,
  insertFormula: absent,
  writeWorkbook: absent,
  leftBehind: absent,
  takeLeftAway: absent,
  keepLeft: absent,
  askBlanks: absent,
  scanCalls: absent,
  mend: absent,
  goTo: absent,
  readFile: absent,
  listSheets: absent,
  readCells: absent,
  mark: absent,
  unmark: absent,
  recall: absent,
  remember: absent,
  readRates: absent,
  readCell: absent,
  appendLines: absent,
  readLines: absent,
  removeLine: absent,
  writeCells: absent,
  recallPane: absent,
  rememberPane: absent,
  rewriteWorkbook: absent,
  recallText: absent,
  rememberText: absent,
};

const MEMORY = Symbol.for('spawnbook.lastErrors');

/** The functions bundle of the same page publishes what its cells last complained about under this key. */
export const sharedMemory = (): ErrorMemory => {
  const found: unknown = Reflect.get(globalThis, MEMORY);
  const isMemory =
    typeof found === 'object' && found !== null && 'list' in found && typeof found.list === 'function';
  return isMemory ? (found as ErrorMemory) : noMemory;
};

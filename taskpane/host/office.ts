import { insertFormula } from './insert';
import { mark, unmark } from './marks';
import { mend } from './mend';
import { readRates, recall, remember } from './ownKept';
import type { ErrorMemory, WorkbookPort } from './port';
import { HostProblem, noMemory } from './port';
import { readFile } from './readFile';
import { listSheets, readCells } from './records';
import { goTo, readReference, readSelection } from './ranges';
import { writeWorkbook } from './renderWorkbook';
import { scanCalls } from './scan';

/** The open workbook, through Office.js. */
export const officePort: WorkbookPort = {
  readSelection,
  readReference,
  insertFormula,
  writeWorkbook,
  scanCalls,
  mend,
  goTo,
  readFile,
  listSheets,
  readCells,
  mark,
  unmark,
  recall,
  remember,
  readRates,
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
};

const MEMORY = Symbol.for('spawnbook.lastErrors');

/** The functions bundle of the same page publishes what its cells last complained about under this key. */
export const sharedMemory = (): ErrorMemory => {
  const found: unknown = Reflect.get(globalThis, MEMORY);
  const isMemory =
    typeof found === 'object' && found !== null && 'list' in found && typeof found.list === 'function';
  return isMemory ? (found as ErrorMemory) : noMemory;
};

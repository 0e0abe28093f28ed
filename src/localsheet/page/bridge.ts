import type { Executor } from '../../officeStandIn/executor';

/**
 * Where the pane's page (in its frame, with its stand-in for Excel) meets the sheet's page. Both are ours and
 * of one origin.
 */
export interface Bridge {
  /** Batches of the pane run against the open workbook. */
  executor?: Executor;
  /** The open workbook as a file. */
  fileBytes?(): Promise<Uint8Array>;
  fileName?(): string;
  /** Opens the browser's print dialog on a sheet, by its name; the open sheet when none is given. */
  print?(sheet?: string): Promise<void>;
  /** The pane's: another workbook has taken the place of the open one. */
  shown?(): void;
}

declare global {
  interface Window {
    spawnbookBridge?: Bridge;
  }
}

export const bridgeOf = (page: Window): Bridge => (page.spawnbookBridge ??= {});

/** Sentences behind the errors of cells: one memory for the sheet's page, where functions run, and the pane. */
export const MEMORY = Symbol.for('spawnbook.lastErrors');

import type { Executor } from '../../officeStandIn/executor';
import type { Associated } from '../univer/functions';

/**
 * Where the pane's page (in its frame, with its stand-in for Excel) meets the sheet's page. Both are ours and
 * of one origin.
 */
export interface PaneSide {
  readonly associated: ReadonlyMap<string, Associated>;
  readonly makeError: (code: string) => unknown;
}

export interface Bridge {
  /** The pane's page has loaded all its scripts. */
  connect?(pane: PaneSide): void;
  /** Batches of the pane run against the open workbook. */
  executor?: Executor;
  /** The open workbook as a file. */
  fileBytes?(): Promise<Uint8Array>;
  fileName?(): string;
}

declare global {
  interface Window {
    spawnbookBridge?: Bridge;
    /** On the pane's window; whichever page is ready last takes the other's hand. */
    spawnbookPane?: PaneSide;
  }
}

export const bridgeOf = (page: Window): Bridge => (page.spawnbookBridge ??= {});

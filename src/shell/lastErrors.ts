import type { ErrorCode } from '../../shared/base/values';

/**
 * The sentences behind the errors that cells show now. Excel shows them only on hover, on some platforms not
 * at all, and never for #NUM!; the pane lists them. Kept in memory, in the page that both the functions and
 * the pane live in.
 */
export interface LastError {
  /** As Excel names it: 'Sheet 1'!B4. */
  readonly address: string;
  readonly functionName: string;
  readonly code: ErrorCode;
  readonly message: string;
  /** How many cells of a spilled answer hold an error; 1 when the whole answer is one. */
  readonly cells: number;
}

/** How the host hands a blank cell to a function, as BLANK.CHECK saw it in this session. */
export type BlankHanding = 'unknown' | 'kept' | 'zero';

export interface LastErrors {
  readonly blanks: BlankHanding;
  sawBlank(handing: BlankHanding): void;
  /** Newest first. */
  list(): readonly LastError[];
  record(error: LastError): void;
  /** The cell calculated well. */
  forget(address: string): void;
  clear(): void;
  /** Called after each change; answers how to stop. */
  subscribe(listener: () => void): () => void;
}

const MOST = 200;

export function createLastErrors(most = MOST): LastErrors {
  const byAddress = new Map<string, LastError>();
  const listeners = new Set<() => void>();
  const tell = (): void => {
    for (const listener of listeners) listener();
  };
  let blanks: BlankHanding = 'unknown';
  return {
    get blanks() {
      return blanks;
    },
    sawBlank(handing) {
      if (handing === blanks) return;
      blanks = handing;
      tell();
    },
    list: () => [...byAddress.values()].reverse(),
    record(error) {
      byAddress.delete(error.address);
      byAddress.set(error.address, error);
      const [oldest] = byAddress.keys();
      if (byAddress.size > most && oldest !== undefined) byAddress.delete(oldest);
      tell();
    },
    forget(address) {
      if (byAddress.delete(address)) tell();
    },
    clear() {
      byAddress.clear();
      tell();
    },
    subscribe(listener) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
  };
}

/** Functions and pane are separate bundles of one page: they meet on the global object under this key. */
const KEY = Symbol.for('spawnbook.lastErrors');

export function lastErrors(): LastErrors {
  const home = globalThis as { [KEY]?: LastErrors };
  return (home[KEY] ??= createLastErrors());
}

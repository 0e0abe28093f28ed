import { openDB } from 'idb';
import type { WorkbookPort } from '../host/port';
import { keptOf, keptText, readKept } from './kept';
import type { KeptState } from './kept';
import type { PanePlace } from './places';
import { placeOf } from './places';
import type { PaneState } from './state';
import { hasWorkbook } from './state';

/** Keeps what was typed: in the browser at once, in the workbook too when there is one. */

const DATABASE = 'spawnbook-pane';
const STORE = 'kept';
const KEY = 'pane';

const database = () =>
  openDB(DATABASE, 1, {
    upgrade: (db) => {
      db.createObjectStore(STORE);
    },
  });

/** A browser may forbid its storage: then only the workbook keeps. */
export async function readBrowser(): Promise<{ readonly at: number; readonly kept: KeptState } | undefined> {
  try {
    const db = await database();
    const text: unknown = await db.get(STORE, KEY);
    db.close();
    return readKept(text);
  } catch {
    return undefined;
  }
}
async function writeBrowser(text: string | undefined): Promise<void> {
  try {
    const db = await database();
    await (text === undefined ? db.delete(STORE, KEY) : db.put(STORE, text, KEY));
    db.close();
  } catch {
    // No storage: nothing to be done, and nothing to say each time a key is pressed.
  }
}
export const forgetBrowser = (): Promise<void> => writeBrowser(undefined);

export async function readWorkbook(
  workbook: WorkbookPort,
): Promise<{ readonly at: number; readonly kept: KeptState } | undefined> {
  try {
    return readKept(await workbook.recallPane());
  } catch {
    return undefined;
  }
}

/** Keystrokes come faster than a workbook likes to be written to. */
const WORKBOOK_MS = 2000;

/** One writing at a time, the newest text last: a tab closed at once loses at most what is being written. */
function latest(write: (text: string) => Promise<void>): (text: string) => void {
  let next: string | undefined;
  let isBusy = false;
  const run = async (): Promise<void> => {
    isBusy = true;
    while (next !== undefined) {
      const text = next;
      next = undefined;
      await write(text);
    }
    isBusy = false;
  };
  return (text) => {
    next = text;
    if (!isBusy) void run();
  };
}

const openedPlaces = (state: PaneState): readonly PanePlace[] =>
  state.ready.map(placeOf).filter((place): place is PanePlace => place !== undefined);

/** Listens to the state and keeps it a moment after it rests. `clock` gives milliseconds. */
export function keeper(workbook: () => WorkbookPort, clock: () => number): (state: PaneState) => void {
  let last = '';
  const toBrowser = latest(writeBrowser);
  let toWorkbook: ReturnType<typeof setTimeout> | undefined;
  return (state) => {
    const kept = keptOf(state, openedPlaces(state));
    const text = keptText(kept, 0);
    if (text === last) return;
    const isFirst = last === '';
    last = text;
    if (isFirst) return;
    const dated = keptText(kept, clock());
    toBrowser(dated);
    if (!hasWorkbook(state)) return;
    clearTimeout(toWorkbook);
    toWorkbook = setTimeout(() => {
      workbook()
        .rememberPane(dated)
        .catch(() => undefined);
    }, WORKBOOK_MS);
  };
}

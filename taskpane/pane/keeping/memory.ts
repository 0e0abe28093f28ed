import { openDB } from 'idb';
import type { WorkbookPort } from '../../host/port';
import { keptOf, keptText, readKept } from './kept';
import type { KeptState } from './kept';
import type { PanePlace } from '../frame/places';
import { placeOf } from '../frame/places';
import type { PaneState } from './state';
import { hasWorkbook } from './state';

/** Keeps what was typed: in the browser at once, in the workbook too when there is one. */

const DATABASE = 'spawnbook-pane';
const STORE = 'kept';
/** What is typed where no workbook is. */
const ALONE = 'pane';
/** Choices of the person, whatever workbook is open. */
const CHOICES = 'settings';
const keyOf = (book: string | undefined): string => (book === undefined ? ALONE : `book ${book}`);

const database = () =>
  openDB(DATABASE, 1, {
    upgrade: (db) => {
      db.createObjectStore(STORE);
    },
  });

export interface KeptOnce {
  readonly at: number;
  readonly kept: KeptState;
}
async function readText(key: string): Promise<unknown> {
  try {
    const db = await database();
    const text: unknown = await db.get(STORE, key);
    db.close();
    return text;
  } catch {
    // A browser may forbid its storage: then only the workbook keeps.
    return undefined;
  }
}
/** false where the browser takes nothing: full, or forbidden. */
async function writeText(key: string, text: string | undefined): Promise<boolean> {
  try {
    const db = await database();
    await (text === undefined ? db.delete(STORE, key) : db.put(STORE, text, key));
    db.close();
    return true;
  } catch {
    return false;
  }
}

/** What the browser kept of a workbook; undefined: of the pane without one. */
export const readBrowser = async (book: string | undefined): Promise<KeptOnce | undefined> =>
  readKept(await readText(keyOf(book)));
export async function readChoices(): Promise<KeptState[string] | undefined> {
  return readKept(await readText(CHOICES))?.kept.settings;
}
export const forgetBrowser = async (book: string | undefined): Promise<void> => {
  await writeText(keyOf(book), undefined);
};

/** A workbook's own name among its settings, so that what was typed beside it is never shown beside another. */
const ID = 'book';
export async function idOf(workbook: WorkbookPort): Promise<string | undefined> {
  try {
    const id = await workbook.recallText(ID);
    return typeof id === 'string' && id !== '' ? id : undefined;
  } catch {
    return undefined;
  }
}
async function readWorkbook(workbook: WorkbookPort): Promise<KeptOnce | undefined> {
  try {
    return readKept(await workbook.recallPane());
  } catch {
    return undefined;
  }
}
/** Of a workbook, the newer of its own and what the browser kept of it: a tab may have been closed at once. */
export async function keptWith(
  workbook: WorkbookPort,
  book: string | undefined,
): Promise<KeptOnce | undefined> {
  if (book === undefined) return undefined;
  const [inBook, inBrowser] = await Promise.all([readWorkbook(workbook), readBrowser(book)]);
  // The browser keeps at once, the workbook a moment later: of one moment the browser's is the later.
  return inBrowser && inBrowser.at >= (inBook?.at ?? 0) ? inBrowser : inBook;
}

/** Keystrokes come faster than a workbook likes to be written to. */
const WORKBOOK_MS = 2000;

interface Writing {
  readonly key: string;
  readonly text: string;
}
/** One writing at a time, the newest text last: a tab closed at once loses at most what is being written. */
function latest(write: (writing: Writing) => Promise<void>): (writing: Writing) => void {
  let next: Writing | undefined;
  let isBusy = false;
  const run = async (): Promise<void> => {
    isBusy = true;
    while (next !== undefined) {
      const writing = next;
      next = undefined;
      await write(writing);
    }
    isBusy = false;
  };
  return (writing) => {
    next = writing;
    if (!isBusy) void run();
  };
}

const openedPlaces = (state: PaneState): readonly PanePlace[] =>
  state.ready.map(placeOf).filter((place): place is PanePlace => place !== undefined);

export interface Keeping {
  readonly workbook: () => WorkbookPort;
  /** Milliseconds. */
  readonly clock: () => number;
  /** Name of the workbook on show; undefined while it has none. */
  readonly book: () => string | undefined;
  /** Gives the workbook its first name. */
  readonly name: () => Promise<void>;
  /** The browser keeps nothing; said once. */
  readonly lost: () => void;
}
export interface Keeper {
  readonly keep: (state: PaneState) => void;
  /** Another workbook is on show: what is shown of it now is no change to be kept, unless something was typed. */
  readonly startAnew: (isTyped: boolean) => void;
}

/** Listens to the state and keeps it a moment after it rests. */
export function keeper({ workbook, clock, book, name, lost }: Keeping): Keeper {
  let last = '';
  let isSaid = false;
  const toBrowser = latest(async ({ key, text }) => {
    if ((await writeText(key, text)) || isSaid) return;
    isSaid = true;
    lost();
  });
  const choices = latest(async ({ key, text }) => {
    await writeText(key, text);
  });
  let toWorkbook: ReturnType<typeof setTimeout> | undefined;
  const inBook = async (text: string, id: string): Promise<void> => {
    // Another workbook came under the pane meanwhile: this text is not its.
    if ((await idOf(workbook())) === id) await workbook().rememberPane(text);
  };
  const beside = (id: string, text: string): void => {
    toBrowser({ key: keyOf(id), text });
    clearTimeout(toWorkbook);
    toWorkbook = setTimeout(() => {
      inBook(text, id).catch(() => undefined);
    }, WORKBOOK_MS);
  };
  return {
    startAnew: (isTyped) => {
      last = isTyped ? ' ' : '';
      clearTimeout(toWorkbook);
    },
    keep: (state) => {
      const kept = keptOf(state, openedPlaces(state));
      const text = keptText(kept, 0);
      if (text === last) return;
      const isFirst = last === '';
      last = text;
      if (isFirst) return;
      const dated = keptText(kept, clock());
      choices({ key: CHOICES, text: keptText({ settings: kept.settings ?? {} }, clock()) });
      if (!hasWorkbook(state)) return toBrowser({ key: keyOf(undefined), text: dated });
      const id = book();
      if (id !== undefined) return beside(id, dated);
      void name().then(() => {
        const named = book();
        if (named !== undefined) beside(named, dated);
      });
    },
  };
}

/** Writes a workbook's first name into it. */
export const nameBook = (workbook: WorkbookPort, id: string): Promise<void> => workbook.rememberText(ID, id);

import type { DBSchema, IDBPDatabase } from 'idb';
import { openDB } from 'idb';
import type { KeptBook, KeptSheet, KeptVersion } from './shapes';

/** The browser's own store: workbooks sheet by sheet, and earlier versions of them. */
interface Stores extends DBSchema {
  books: { key: string; value: KeptBook };
  sheets: { key: [string, string]; value: KeptSheet; indexes: { book: string } };
  versions: { key: [string, number]; value: KeptVersion; indexes: { book: string } };
}
export type BookStore = IDBPDatabase<Stores>;

const NAME = 'spawnbook';
const VERSION = 1;

export const openStore = (): Promise<BookStore> =>
  openDB<Stores>(NAME, VERSION, {
    upgrade(store) {
      store.createObjectStore('books', { keyPath: 'id' });
      store.createObjectStore('sheets', { keyPath: ['book', 'id'] }).createIndex('book', 'book');
      store.createObjectStore('versions', { keyPath: ['book', 'at'] }).createIndex('book', 'book');
    },
    // A newer page in another tab wants to change the store: do not stand in its way.
    blocking(_current, _wanted, event) {
      (event.target as IDBDatabase).close();
    },
  });

/** Everything of a workbook goes. */
export async function forgetBook(store: BookStore, id: string): Promise<void> {
  const change = store.transaction(['books', 'sheets', 'versions'], 'readwrite');
  await change.objectStore('books').delete(id);
  for (const name of ['sheets', 'versions'] as const) {
    const own = change.objectStore(name);
    for (const key of await own.index('book').getAllKeys(id)) await own.delete(key);
  }
  await change.done;
}

/** The browser says so when its disk or its share of it is used up. */
export const isFull = (fault: unknown): boolean =>
  fault instanceof DOMException && (fault.name === 'QuotaExceededError' || fault.code === 22);

// Long: what is kept of a workbook and when, in one state.
import { ICommandService, IResourceManagerService, UniverInstanceType } from '@univerjs/core';
import type { CommandInfo } from './changes';
import { changedBy } from './changes';
import type { IWorkbookData } from '@univerjs/core';
import type { UniverBook } from '../univer/book';
import type { BookStore } from './database';
import { forgetBook, isFull, openStore } from './database';
import { BookHold } from './hold';
import type { KeptBook, KeptVersion, KeptWhole } from './shapes';
import { addVersion, dropOldVersions, EVERY, pack, unpack } from './versions';

/** How soon after a change, and at the latest how long after the first one not kept yet, in milliseconds. */
const PAUSE = 700;
const LATEST = 2500;
/** Workbooks that stay. */
const MOST = 10;

export const NO_ROOM =
  'The browser has no room left to keep this workbook. Nothing is lost while this page is open: press Save ' +
  '.xlsx now, then remove older workbooks under Workbooks.';
const NOT_KEPT =
  'This browser does not let pages keep anything (a private window, perhaps). Press Save .xlsx before you leave.';

export interface KeptWorkbook {
  readonly id: string;
  readonly title: string;
  readonly at: number;
}

/**
 * Keeps the open workbook in the browser as it changes, sheet by sheet, so that a closed, reloaded or killed
 * page loses nothing but the last moment.
 */
export class Keeper {
  private readonly store: Promise<BookStore | undefined>;
  private readonly hold = new BookHold();
  private id: string = crypto.randomUUID();
  private saving = 0;
  private readonly dirty = new Set<string>();
  private isDirty = false;
  /** A workbook only looked at is not kept. */
  private isTouched = false;
  private timer: ReturnType<typeof setTimeout> | undefined;
  private since = 0;
  private running: Promise<void> = Promise.resolve();
  private versionAt = 0;
  private trouble = '';

  constructor(
    private readonly open: UniverBook,
    private readonly title: () => string,
    private readonly isLoading: () => boolean,
    private readonly tell: (sentence: string) => void,
  ) {
    this.store = openStore().catch(() => {
      this.trouble = NOT_KEPT;
      return undefined;
    });
    open.context.engine.injector.get(ICommandService).onCommandExecuted((info: CommandInfo, options) => {
      if (this.isLoading()) return;
      const change = changedBy(info, options?.onlyLocal === true || options?.fromFormula === true);
      if (!change) return;
      if (change.isTyped) this.isTouched = true;
      for (const sheet of change.sheets) this.dirty.add(sheet);
      this.expect();
    });
    open.beside.listen(() => {
      if (this.isLoading()) return;
      this.isTouched = true;
      this.expect();
    });
    const now = (): void => {
      void this.flush();
    };
    document.addEventListener('visibilitychange', () => {
      if (document.visibilityState === 'hidden') now();
    });
    window.addEventListener('pagehide', now);
  }

  /** True when everything typed is in the store, or a moment from it. */
  get isSafe(): boolean {
    return this.trouble === '';
  }
  get currentId(): string {
    return this.id;
  }

  private expect(): void {
    this.isDirty = true;
    if (!this.isTouched) return;
    const now = Date.now();
    if (this.timer === undefined) this.since = now;
    clearTimeout(this.timer);
    this.timer = setTimeout(
      () => {
        void this.flush();
      },
      Math.max(0, Math.min(PAUSE, this.since + LATEST - now)),
    );
  }

  /** Writes what changed; one saving after the other. */
  flush(): Promise<void> {
    clearTimeout(this.timer);
    this.timer = undefined;
    this.running = this.running.then(() => this.save());
    return this.running;
  }

  private async save(): Promise<void> {
    const store = await this.store;
    if (!store || !this.isDirty || !this.isTouched || this.isLoading()) {
      if (!store && this.isTouched) this.tell(NOT_KEPT);
      return;
    }
    const sheets = [...this.dirty];
    this.dirty.clear();
    this.isDirty = false;
    try {
      await this.write(store, sheets);
      this.trouble = '';
    } catch (fault) {
      for (const sheet of sheets) this.dirty.add(sheet);
      this.isDirty = true;
      await this.failed(store, fault);
    }
  }

  private async failed(store: BookStore, fault: unknown): Promise<void> {
    if (isFull(fault) && (await dropOldVersions(store)) > 0) {
      this.expect();
      return;
    }
    this.trouble = isFull(fault) ? NO_ROOM : `The workbook could not be kept: ${String(fault)}`;
    this.tell(this.trouble);
  }

  private async write(store: BookStore, sheets: readonly string[]): Promise<void> {
    const { workbook } = this.open.context;
    const { sheets: all, ...rest } = workbook.getSnapshot();
    const saving = ++this.saving;
    const known = new Set((await store.getAllKeysFromIndex('sheets', 'book', this.id)).map(([, id]) => id));
    for (const [id, data] of Object.entries(all))
      // Copied sheet by sheet: a large workbook does not hold up the page.
      if (sheets.includes(id) || !known.has(id))
        await store.put('sheets', { book: this.id, id, saving, data });
    for (const id of known) if (!(id in all)) await store.delete('sheets', [this.id, id]);
    await store.put('books', this.bookOf(rest, saving));
    this.showAddress();
    // Either way: a clock may be set back.
    if (Math.abs(Date.now() - this.versionAt) >= EVERY) await this.keepVersion(store);
    if (saving === 1) await this.forgetOldest(store);
  }

  /** A reloaded page goes on with the workbook its address names. */
  private showAddress(): void {
    if (location.hash !== `#${this.id}`) history.replaceState(null, '', `${location.pathname}#${this.id}`);
  }

  private bookOf(workbook: Omit<IWorkbookData, 'sheets'>, saving: number): KeptBook {
    const { beside, tableExtras, context } = this.open;
    const resources = context.engine.injector
      .get(IResourceManagerService)
      .getResources(context.unitId, UniverInstanceType.UNIVER_SHEET);
    return {
      id: this.id,
      title: this.title(),
      at: Date.now(),
      saving,
      workbook: { ...workbook, resources },
      beside: beside.all(),
      settings: beside.settings,
      tables: [...tableExtras],
    };
  }

  private async keepVersion(store: BookStore): Promise<void> {
    const whole = await load(store, this.id);
    if (!whole) return;
    this.versionAt = whole.book.at;
    const packed = await pack(whole);
    await addVersion(store, { book: this.id, at: whole.book.at, title: whole.book.title, packed });
  }

  private async forgetOldest(store: BookStore): Promise<void> {
    for (const { id } of (await this.list()).slice(MOST)) if (id !== this.id) await forgetBook(store, id);
    await navigator.storage?.persist?.().catch(() => false);
  }

  /** Newest first. */
  async list(): Promise<readonly KeptWorkbook[]> {
    const store = await this.store;
    const books = store ? await store.getAll('books') : [];
    return books.map(({ id, title, at }) => ({ id, title, at })).sort((a, b) => b.at - a.at);
  }

  async versions(): Promise<readonly KeptVersion[]> {
    const store = await this.store;
    const found = store ? await store.getAllFromIndex('versions', 'book', this.id) : [];
    return found.sort((a, b) => b.at - a.at);
  }

  async forget(id: string): Promise<void> {
    const store = await this.store;
    if (store) await forgetBook(store, id);
  }

  /** From now on another workbook is open, new to the store. */
  async isNew(): Promise<void> {
    this.reset(crypto.randomUUID(), 0);
    if (location.hash !== '') history.replaceState(null, '', location.pathname);
    await this.hold.take(this.id);
  }

  private reset(id: string, saving: number): void {
    clearTimeout(this.timer);
    this.timer = undefined;
    this.id = id;
    this.saving = saving;
    this.versionAt = 0;
    this.dirty.clear();
    this.isDirty = false;
    this.isTouched = false;
  }

  /**
   * A kept workbook, to be shown. When another tab has it open, this tab goes on with a copy under another
   * name, and neither writes over the other.
   */
  async take(id: string): Promise<{ readonly whole: KeptWhole; readonly isCopy: boolean } | undefined> {
    const store = await this.store;
    const whole = store && (await load(store, id));
    if (!whole) return undefined;
    const isOwn = await this.hold.take(id);
    if (!isOwn) await this.isNew();
    else {
      this.reset(id, whole.book.saving);
      this.showAddress();
    }
    return {
      isCopy: !isOwn,
      whole: isOwn ? whole : { ...whole, book: { ...whole.book, title: `${whole.book.title} (copy)` } },
    };
  }

  /** An earlier version takes the place of the present one, which becomes a version itself. */
  async takeVersion(version: KeptVersion): Promise<KeptWhole> {
    const store = await this.store;
    await this.flush();
    if (store) await this.keepVersion(store);
    this.dirty.clear();
    return unpack(version.packed);
  }

  /** What is open is kept as it stands, typed into or not. */
  touch(): void {
    this.isTouched = true;
    for (const id of this.open.context.workbook.getSnapshot().sheetOrder) this.dirty.add(id);
    this.expect();
  }
}

async function load(store: BookStore, id: string): Promise<KeptWhole | undefined> {
  const book = await store.get('books', id);
  return book && { book, sheets: await store.getAllFromIndex('sheets', 'book', id) };
}

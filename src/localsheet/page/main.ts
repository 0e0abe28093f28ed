import '@univerjs/design/lib/index.css';
import '@univerjs/ui/lib/index.css';
import '@univerjs/docs-ui/lib/index.css';
import '@univerjs/sheets-ui/lib/index.css';
import '@univerjs/sheets-formula-ui/lib/index.css';
import './style.css';
import type { PageBench } from '../bench/pageBench';
import { blank } from '../files/exampleList';
import { Calculator } from '../calculating/calculator';
import { Keeper } from '../keeping/keeper';
import { openBook } from '../univer/book';
import type { Engine } from '../univer/engine';
import { startEngine } from '../univer/engine';
import { showGeneralNumbers } from '../univer/generalNumbers';
import { guardProtected } from '../univer/guard';
import { leaveQuietly } from '../univer/leaving';
import { repairNames } from '../univer/names';
import { showSpilledFormats } from '../univer/spilledFormats';
import { cleanTyping } from '../univer/typing';
import type { PageApi } from './api';
import { pageApi } from './api';
import { goOnWith, wireBooks } from './workbooks/books';
import { loadPane } from './boot';
import { isNarrow } from './frame/narrow';
import { wireCellNote } from './frame/cellNote';
import { element, tell } from './frame/elements';
import { wireLayout } from './frame/layout';
import { keepOffline } from './offline';
import { handedOver } from './workbooks/otherWindow';
import { focusSheet, wireRegions } from './frame/regions';
import { Runtime } from './runtime';
import { Session } from './workbooks/session';
import { wireToolbar } from './frame/toolbar';

declare global {
  interface Window {
    spawnbook: PageApi;
    spawnbookBench: PageBench;
  }
}

const sentenceOf = (fault: unknown): string => (fault instanceof Error ? fault.message : String(fault));

const painted = (): Promise<void> =>
  new Promise((resolve) => {
    requestAnimationFrame(() => {
      setTimeout(resolve, 0);
    });
  });

const MOST_FRAMES = 200;
/** The engine builds the editor of its cells some frames after the sheet; a person may be quicker elsewhere. */
async function focusFirst(engine: Engine): Promise<void> {
  for (let i = 0; i < MOST_FRAMES; i++) {
    await painted();
    if (document.activeElement !== null && document.activeElement !== document.body) return;
    focusSheet(engine);
  }
}

/** Handed over by another window, or kept under the address of this one; otherwise the start list. */
async function firstWorkbook(session: Session, keeper: Keeper): Promise<void> {
  const handed = await handedOver();
  if (handed) {
    await session.read(handed, 'Workbook.xlsx');
    await keeper.isNew();
    keeper.touch();
    return;
  }
  const id = location.hash.slice(1);
  if (id !== '' && (await goOnWith(session, keeper, id))) return;
  // Not before the first screen: nobody needs the list until the page answers.
  const { showStart, wireStart } = await import('./frame/startList');
  wireStart(session);
  if (!session.hasUnsaved) await showStart(session, keeper);
}

/** The page of the sheet, from its first line to everything in place. */
export async function start(): Promise<void> {
  const container = element('sheet', HTMLElement);
  container.replaceChildren();
  const engine = startEngine(container);
  const open = openBook(engine);
  cleanTyping(engine);
  repairNames(engine);
  const runtime = new Runtime(engine);
  const session = new Session(open, () => runtime.register());
  wireLayout(() => undefined);
  wireRegions(() => {
    focusSheet(engine);
  });
  const keeper = new Keeper(
    open,
    () => session.title,
    () => session.isLayingOut,
    (sentence) => {
      tell(sentence, true);
    },
  );
  const usable = session.start(blank()).then(async () => {
    // The engine's services exist once a workbook does.
    leaveQuietly(engine);
    new Calculator(open);
    showGeneralNumbers(engine);
    showSpilledFormats(engine);
    guardProtected(open, (sentence) => {
      tell(sentence, true);
    });
    wireToolbar(open, session, keeper);
    wireCellNote(open);
    wireBooks(session, keeper);
    await open.book.select('sheet1', { row: 0, column: 0, rows: 1, columns: 1 });
    if (!isNarrow()) await focusFirst(engine);
  });
  const ready = usable.then(async () => {
    // Fetched while the menus start; a failure is told where they are bound.
    void runtime.load().catch(() => undefined);
    const { addLater } = await import('./later');
    await addLater(open, session, container);
    await session.bindFunctions();
    await firstWorkbook(session, keeper);
    await loadPane();
  });
  // Fetching everything once more waits until the page itself is done.
  void ready.then(() => keepOffline()).catch(() => undefined);
  window.spawnbook = pageApi(open, {
    usable,
    ready,
    functionNames: () => runtime.names(),
    newBook: async () => {
      await keeper.flush();
      await session.show(blank());
      await keeper.isNew();
    },
    openFile: async (bytes, name) => {
      await keeper.flush();
      await session.read(bytes, name);
      await keeper.isNew();
    },
    keepNow: () => keeper.flush(),
    kept: () => keeper.list(),
    saveFile: () => session.save(),
  });
  await ready.catch((fault: unknown) => {
    tell(sentenceOf(fault), true);
    throw fault;
  });
}

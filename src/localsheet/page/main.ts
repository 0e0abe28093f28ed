import '@univerjs/design/lib/index.css';
import '@univerjs/ui/lib/index.css';
import '@univerjs/docs-ui/lib/index.css';
import '@univerjs/sheets-ui/lib/index.css';
import '@univerjs/sheets-formula-ui/lib/index.css';
import './style.css';
import type { PageBench } from '../bench/pageBench';
import { blank } from '../files/exampleList';
import { openBook } from '../univer/book';
import type { Engine } from '../univer/engine';
import { startEngine } from '../univer/engine';
import { showGeneralNumbers } from '../univer/generalNumbers';
import { guardProtected } from '../univer/guard';
import { leaveQuietly } from '../univer/leaving';
import { repairNames } from '../univer/names';
import { cleanTyping } from '../univer/typing';
import type { PageApi } from './api';
import { pageApi } from './api';
import { element, tell } from './elements';
import { wireLayout } from './layout';
import { handedOver } from './otherWindow';
import { focusSheet, wireRegions } from './regions';
import { Runtime } from './runtime';
import { Session } from './session';
import { wireToolbar } from './toolbar';

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

/** The pane comes last: its page is a program of its own and takes the same processor. */
const loadPane = (): Promise<void> =>
  new Promise((resolve) => {
    const frame = element('pane-frame', HTMLIFrameElement);
    frame.addEventListener(
      'load',
      () => {
        resolve();
      },
      { once: true },
    );
    frame.src = 'taskpane.html';
  });

async function start(): Promise<void> {
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
  const usable = session.start(blank()).then(async () => {
    // The engine's services exist once a workbook does.
    leaveQuietly(engine);
    showGeneralNumbers(engine);
    guardProtected(open, (sentence) => {
      tell(sentence, true);
    });
    wireToolbar(session);
    await open.book.select('sheet1', { row: 0, column: 0, rows: 1, columns: 1 });
    await focusFirst(engine);
  });
  const ready = usable.then(async () => {
    const { addLater } = await import('./later');
    await addLater(open, session, container);
    await session.bindFunctions();
    const handed = await handedOver();
    if (handed) await session.read(handed, 'Workbook.xlsx');
    await loadPane();
  });
  window.spawnbook = pageApi(open, {
    usable,
    ready,
    functionNames: () => runtime.names(),
    newBook: () => session.show(blank()),
    openFile: async (bytes, name) => {
      await session.read(bytes, name);
    },
    saveFile: () => session.save(),
  });
  await ready;
}

start().catch((fault: unknown) => {
  tell(sentenceOf(fault), true);
});

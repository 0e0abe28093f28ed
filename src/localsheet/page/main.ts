import '@univerjs/design/lib/index.css';
import '@univerjs/ui/lib/index.css';
import '@univerjs/docs-ui/lib/index.css';
import '@univerjs/sheets-ui/lib/index.css';
import '@univerjs/sheets-formula-ui/lib/index.css';
import './style.css';
import type { PageBench } from '../bench/pageBench';
import { pageBench } from '../bench/pageBench';
import { ChartLayer } from '../charts/layer';
import { createExecutor } from '../../officeStandIn/executor';
import { blank, EXAMPLES } from '../files/examples';
import type { UniverBook } from '../univer/book';
import { openBook } from '../univer/book';
import { startEngine } from '../univer/engine';
import { explainErrors } from '../univer/errorText';
import { showGeneralNumbers } from '../univer/generalNumbers';
import { guardProtected } from '../univer/guard';
import { leaveQuietly } from '../univer/leaving';
import { repairNames } from '../univer/names';
import { cleanTyping } from '../univer/typing';
import type { PageApi } from './api';
import { pageApi } from './api';
import { bridgeOf } from './bridge';
import { element, tell } from './elements';
import { wireLayout } from './layout';
import { openElsewhere, handedOver } from './otherWindow';
import { focusSheet, wireRegions } from './regions';
import { Runtime } from './runtime';
import { Session } from './session';
import { fileName, today, wireToolbar } from './toolbar';

declare global {
  interface Window {
    spawnbook: PageApi;
    spawnbookBench: PageBench;
  }
}

const sentenceOf = (fault: unknown): string => (fault instanceof Error ? fault.message : String(fault));

/** What the page opens with: a workbook handed over by another window, otherwise the season plan. */
async function firstWorkbook(session: Session): Promise<void> {
  const handed = await handedOver();
  if (handed) {
    await session.read(handed, 'Workbook.xlsx');
    return;
  }
  const [season] = EXAMPLES;
  await session.show(season ? season.build(today()) : blank());
}

function connectPane(open: UniverBook, session: Session): void {
  const bridge = bridgeOf(window);
  bridge.executor = createExecutor(open.book, { openWorkbook: openElsewhere });
  bridge.fileBytes = async () => (await session.save()).bytes;
  bridge.fileName = () => fileName(session.title);
}

async function start(): Promise<void> {
  const container = element('sheet', HTMLElement);
  container.replaceChildren();
  const engine = startEngine(container);
  const open = openBook(engine);
  cleanTyping(engine);
  repairNames(engine);
  const runtime: Runtime = new Runtime(engine, () =>
    session.again().then(() => {
      tell('');
    }),
  );
  const session: Session = new Session(open, () => runtime.register());
  wireLayout(() => undefined);
  wireRegions(() => {
    focusSheet(engine);
  });
  const ready = (async () => {
    let problem = '';
    // A canvas does not wait for fonts.
    await Promise.allSettled(
      ['400 10px Calibri', '700 10px Calibri', 'italic 10px Calibri'].map((font) =>
        document.fonts.load(font),
      ),
    );
    await runtime.connected.catch((fault: unknown) => {
      problem = sentenceOf(fault);
    });
    await firstWorkbook(session);
    explainErrors(open);
    leaveQuietly(engine);
    showGeneralNumbers(engine);
    guardProtected(open, (sentence) => {
      tell(sentence, true);
    });
    new ChartLayer(open, container);
    wireToolbar(session);
    connectPane(open, session);
    tell(problem, problem !== '');
  })();
  window.spawnbook = pageApi(open, {
    ready,
    functionNames: () => runtime.names(),
    newBook: () => session.show(blank()),
    openFile: async (bytes, name) => {
      await session.read(bytes, name);
    },
    saveFile: () => session.save(),
  });
  window.spawnbookBench = pageBench(open);
  await ready;
}

start().catch((fault: unknown) => {
  tell(sentenceOf(fault), true);
});

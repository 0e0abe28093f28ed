import '@univerjs/design/lib/index.css';
import '@univerjs/ui/lib/index.css';
import '@univerjs/docs-ui/lib/index.css';
import '@univerjs/sheets-ui/lib/index.css';
import '@univerjs/sheets-formula-ui/lib/index.css';
import './style.css';
import { UniverInstanceType } from '@univerjs/core';
import type { PageBench } from '../bench/pageBench';
import { pageBench } from '../bench/pageBench';
import { openBook } from '../univer/book';
import { emptyWorkbook, startEngine } from '../univer/engine';
import { explainErrors } from '../univer/errorText';
import { showGeneralNumbers } from '../univer/generalNumbers';
import { guardProtected } from '../univer/guard';
import type { PageApi } from './api';
import { pageApi } from './api';
import { element, tell } from './elements';
import { wireLayout } from './layout';
import { Runtime } from './runtime';

declare global {
  interface Window { spawnbook?: PageApi; spawnbookBench?: PageBench }
}

async function start(): Promise<void> {
  const container = element('sheet', HTMLElement);
  container.replaceChildren();
  const engine = startEngine(container);
  const open = openBook(engine);
  const runtime = new Runtime(engine);
  wireLayout(() => undefined);
  const ready = runtime.connected.catch((fault: unknown) => { tell(String(fault), true); }).then(async () => {
    engine.univer.createUnit(UniverInstanceType.UNIVER_SHEET, emptyWorkbook());
    explainErrors(open);
    showGeneralNumbers(engine);
    guardProtected(open, (sentence) => { tell(sentence, true); });
    await runtime.register();
    await open.book.settle();
  });
  window.spawnbook = pageApi(open, {
    ready, functionNames: () => runtime.names(),
    newBook: () => Promise.reject(new Error('not yet')), openFile: () => Promise.reject(new Error('not yet')), saveFile: () => Promise.reject(new Error('not yet')),
  });
  window.spawnbookBench = pageBench(open);
  await ready;
}

start().catch((fault: unknown) => { tell(fault instanceof Error ? fault.message : String(fault), true); });

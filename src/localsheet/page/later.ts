import { createExecutor } from '../../officeStandIn/executor';
import { pageBench } from '../bench/pageBench';
import { ChartLayer } from '../charts/layer';
import type { UniverBook } from '../univer/book';
import { formatAnswers } from '../univer/answerFormats';
import type { AnswerFormats } from '../../build/sheet/formats';
import { explainErrors } from '../univer/errorText';
import { addLaterParts } from '../univer/later';
import { nameControls } from './frame/accessible';
import { bridgeOf } from './bridge';
import { openElsewhere } from './workbooks/otherWindow';
import type { Session } from './workbooks/session';
import { fileName } from './frame/toolbar';

async function sheetNamed({ book }: UniverBook, name: string | undefined): Promise<string> {
  if (name === undefined) return book.activeSheet();
  const found = (await book.sheets()).find((sheet) => sheet.name === name);
  if (!found) throw new Error(`There is no sheet named ${name}.`);
  return found.id;
}

/** Milliseconds of work after which the page may draw and take what is typed; a drawing costs a fifth of that. */
const AT_A_STRETCH = 500;
function breathing(): () => Promise<void> | undefined {
  let since = performance.now();
  return () => {
    if (performance.now() - since < AT_A_STRETCH) return undefined;
    return new Promise((resolve) => {
      setTimeout(() => {
        since = performance.now();
        resolve();
      }, 0);
    });
  };
}

/**
 * What the page adds once the sheet stands: menus and dialogs of the engine, charts, and the door through
 * which the pane works on the workbook.
 */
export async function addLater(open: UniverBook, session: Session, container: HTMLElement): Promise<void> {
  const bridge = bridgeOf(window);
  const executor = createExecutor(open.book, { openWorkbook: openElsewhere, breathe: breathing() });
  bridge.executor = { execute: (body) => open.oneUndo.during(() => executor.execute(body)) };
  bridge.fileBytes = async () => (await session.save()).bytes;
  bridge.fileName = () => fileName(session.title);
  bridge.print = async (name) => {
    const { printSheet } = await import('./workbooks/print');
    await printSheet(open, await sheetNamed(open, name));
  };
  session.onShown(() => bridge.shown?.());
  await addLaterParts(open.context.engine);
  nameControls(container);
  explainErrors(open);
  const formats = await fetch('localsheet/formats.json').then(
    (response) => response.json() as Promise<AnswerFormats>,
  );
  formatAnswers(open.context.engine, formats);
  new ChartLayer(open, container);
  window.spawnbookBench = pageBench(open);
}

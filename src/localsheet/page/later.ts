import { createExecutor } from '../../officeStandIn/executor';
import { pageBench } from '../bench/pageBench';
import { ChartLayer } from '../charts/layer';
import type { UniverBook } from '../univer/book';
import { explainErrors } from '../univer/errorText';
import { addLaterParts } from '../univer/later';
import { bridgeOf } from './bridge';
import { openElsewhere } from './otherWindow';
import type { Session } from './session';
import { fileName } from './toolbar';

/**
 * What the page adds once the sheet stands: menus and dialogs of the engine, charts, and the door through
 * which the pane works on the workbook.
 */
export async function addLater(open: UniverBook, session: Session, container: HTMLElement): Promise<void> {
  const bridge = bridgeOf(window);
  bridge.executor = createExecutor(open.book, { openWorkbook: openElsewhere });
  bridge.fileBytes = async () => (await session.save()).bytes;
  bridge.fileName = () => fileName(session.title);
  await addLaterParts(open.context.engine);
  explainErrors(open);
  new ChartLayer(open, container);
  window.spawnbookBench = pageBench(open);
}

import { element } from './frame/elements';
import { isNarrow } from './frame/narrow';

const PANE = 'taskpane.html';

/** The pane's page in its frame; asked for again it only answers when that is there. */
let pane: Promise<void> | undefined;
export const loadPane = (): Promise<void> =>
  (pane ??= new Promise((resolve) => {
    const frame = element('pane-frame', HTMLIFrameElement);
    frame.addEventListener(
      'load',
      () => {
        resolve();
      },
      { once: true },
    );
    frame.src = PANE;
  }));

/**
 * The first lines that run. On a narrow screen the pane is what is seen first and is loaded first; elsewhere
 * it comes after the sheet.
 */
async function boot(): Promise<void> {
  if (isNarrow()) await loadPane();
  const { start } = await import('./main');
  await start();
}

void boot();

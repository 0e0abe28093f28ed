import { createOffice, installOffice } from '../../officeStandIn/client/office';
import type { Executor } from '../../officeStandIn/executor';
import type { Bridge } from './bridge';
import { bridgeOf, MEMORY } from './bridge';

/**
 * The stand-in for Excel's own script, in the pane's page: the object model here, the workbook in the page
 * around it.
 */
const WAIT = 50;
const PATIENCE = 30_000;

/** The sheet's page may still be starting. */
async function whenThere<K extends keyof Bridge>(key: K): Promise<NonNullable<Bridge[K]>> {
  const limit = Date.now() + PATIENCE;
  for (;;) {
    const found = bridgeOf(window.parent)[key];
    if (found) return found;
    if (Date.now() > limit) throw new Error('The sheet did not start. Reload the page.');
    await new Promise((resolve) => {
      setTimeout(resolve, WAIT);
    });
  }
}

const executor: Executor = { execute: async (body) => (await whenThere('executor')).execute(body) };
/** Opened alone, without a sheet around it, the page has no workbook and says so. */
const isAlone = window.parent === window;
if (!isAlone) {
  installOffice(
    createOffice({
      executor,
      fileBytes: async () => (await whenThere('fileBytes'))(),
      fileName: () => bridgeOf(window.parent).fileName?.() ?? '',
      language: navigator.language,
    }),
    window,
  );
  // Before the bundle of functions, which would make a memory of its own.
  Reflect.set(window, MEMORY, Reflect.get(window.parent, MEMORY));
}

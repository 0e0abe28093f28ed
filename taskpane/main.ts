import { hostArrived } from './commands/host';
import type { Doors } from './command';
import { patch } from './draw';
import { browserFiles, excelFiles } from './host/files';
import { closedPort, officePort, sharedMemory } from './host/office';
import { watchHost } from './host/ready';
import type { State } from './state';
import { hasWorkbook, initialState } from './state';
import type { Store } from './store';
import { createStore } from './store';
import { appView } from './views/app';

/** The only clock of the pane: days since 30 December 1899, local date. */
const today = (): number => {
  const now = new Date();
  return Math.round(Date.UTC(now.getFullYear(), now.getMonth(), now.getDate()) / 86_400_000) + 25_569;
};

/** Moves the keyboard where a command asked for, once. */
function placeFocus(state: State, store: Store): void {
  if (state.focus === undefined) return;
  document.getElementById(state.focus)?.focus();
  store.change((now) => ({ ...now, focus: undefined }));
}

export function start(root: Element, doors: Doors, at: number): Store {
  let isDrawing = false;
  const store: Store = createStore(initialState(at), doors, (state) => {
    // A field that loses the keyboard while it is redrawn reports that at once: draw again, not inside.
    if (isDrawing) return;
    isDrawing = true;
    let drawn: State;
    do {
      drawn = store.state();
      patch(root, appView({ state: drawn, send: store.send }));
    } while (drawn !== store.state());
    isDrawing = false;
    placeFocus(state, store);
  });
  patch(root, appView({ state: store.state(), send: store.send }));
  return store;
}

const root = document.getElementById('spawnbook');
if (root) {
  let host: State['host'] = 'starting';
  const isOpen = (): boolean => host === 'ready';
  const doors: Doors = {
    get workbook() { return isOpen() ? officePort : closedPort; },
    get files() { return isOpen() ? excelFiles : browserFiles; },
    get errors() { return sharedMemory(); },
  };
  const store = start(root, doors, today());
  watchHost((next) => {
    host = next;
    store.send(hostArrived, next);
    document.documentElement.dataset['host'] = hasWorkbook(store.state()) ? 'ready' : next;
  });
}

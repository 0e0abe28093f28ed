import type { Doors } from './command';
import { patch } from './draw';
import type { State } from './state';
import { initialState } from './state';
import type { Store } from './store';
import { createStore } from './store';
import { appView } from './app';

/** Moves the keyboard where a command asked for, once. */
function placeFocus(state: State, store: Store): void {
  if (state.focus === undefined) return;
  document.getElementById(state.focus)?.focus();
  store.change((now) => ({ ...now, focus: undefined }));
}

export function start(root: Element, doors: Doors, at: number): Store {
  let isDrawing = false;
  let { screen } = initialState(at);
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
    // A screen begins at its top, however far down the last one was read.
    if (drawn.screen !== screen) document.documentElement.scrollTop = 0;
    ({ screen } = drawn);
    placeFocus(state, store);
  });
  patch(root, appView({ state: store.state(), send: store.send }));
  return store;
}

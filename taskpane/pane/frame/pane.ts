import type { Doors } from '../command';
import { patch } from './draw';
import { appView } from './app';
import type { PlaceId } from './places';
import { placeOf } from './places';
import type { PaneState } from '../keeping/state';
import { initialState } from '../keeping/state';
import type { PaneStore } from '../keeping/store';
import { createStore } from '../keeping/store';
import { languageOf, speak } from '../../words/words';

/** Moves the keyboard where a command asked for, once. */
function placeFocus(state: PaneState, store: PaneStore): void {
  if (state.focus === undefined) return;
  document.getElementById(state.focus)?.focus();
  store.change((now) => ({ ...now, focus: undefined }));
}

/** Does what a place was asked to, once it is open and no other work is under way. */
function runErrand(state: PaneState, store: PaneStore): void {
  const { errand } = state;
  if (!errand || state.task || !state.ready.includes(errand.place)) return;
  store.change((now) => ({ ...now, errand: undefined }));
  const command = placeOf(errand.place)?.acts?.[errand.act];
  if (command) store.send(command);
}

export interface Started extends PaneStore {
  /** Called after every change, once it is drawn. */
  readonly onChange: (listen: (state: PaneState) => void) => void;
}

export function start(root: Element, doors: Doors, at: number, first: PlaceId = 'today'): Started {
  let isDrawing = false;
  let screen = first;
  let fetching: Promise<void> | undefined;
  /** Sentences of another language than English come once, and everything is drawn again with them. */
  const inLanguage = (state: PaneState): void => {
    fetching ??= speak(state)?.then(
      () => {
        fetching = undefined;
        store.change((now) => ({ ...now }));
      },
      () => {
        // Without network the views stay in English; tried again with the next place.
        fetching = undefined;
      },
    );
  };
  const listeners: ((state: PaneState) => void)[] = [];
  const store: PaneStore = createStore({ ...initialState(at, first), now: doors.now() }, doors, (state) => {
    // A field that loses the keyboard while it is redrawn reports that at once: draw again, not inside.
    if (isDrawing) return;
    isDrawing = true;
    let drawn: PaneState;
    do {
      drawn = store.state();
      inLanguage(drawn);
      patch(root, appView({ state: drawn, send: store.send }));
    } while (drawn !== store.state());
    isDrawing = false;
    document.documentElement.lang = languageOf(drawn);
    // A screen begins at its top, however far down the last one was read.
    if (drawn.screen !== screen) document.documentElement.scrollTop = 0;
    ({ screen } = drawn);
    placeFocus(state, store);
    runErrand(state, store);
    for (const listen of listeners) listen(drawn);
  });
  root.replaceChildren();
  patch(root, appView({ state: store.state(), send: store.send }));
  return {
    ...store,
    onChange: (listen) => {
      listeners.push(listen);
    },
  };
}

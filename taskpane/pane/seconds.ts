import { tick } from './clock';
import { placeOf } from './frame/places';
import type { PaneState } from './keeping/state';
import type { PaneStore } from './keeping/store';

const SECOND = 1000;
/** Hours and minutes on the screen need no more than this. */
const SLOW = 15;

const runs = ({ ready, vat }: PaneState): boolean =>
  (ready.includes('vat') || ready.includes('today')) && vat.timer !== undefined && !vat.timer.hasRung;

/** Moves the clock on: each second while a wait runs, else now and then; nothing while nobody looks. */
export function everySecond(store: PaneStore, now: () => number): () => void {
  let count = 0;
  const id = setInterval(() => {
    const state = store.state();
    if (document.hidden && !runs(state)) return;
    count += 1;
    if (runs(state) || count % SLOW === 0) store.send(tick, now());
    for (const place of state.ready) {
      const command = placeOf(place)?.onTick;
      if (command) store.send(command);
    }
  }, SECOND);
  return () => {
    clearInterval(id);
  };
}

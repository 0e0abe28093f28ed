import type { WorkbookPort } from '../../host/port';
import type { KeptState } from '../keeping/kept';
import { conform, keptText, withTyped } from '../keeping/kept';
import type { Keeper } from '../keeping/memory';
import { forgetBrowser, idOf, keeper, keptWith, nameBook, readBrowser, readChoices } from '../keeping/memory';
import { enter, showPlace } from './navigate';
import type { PlaceId } from './places';
import { MENU, PLACES, placeOf } from './places';
import type { PaneSettings } from '../keeping/settings';
import { usualSettings } from '../keeping/settings';
import type { HostState, PaneState } from '../keeping/state';
import type { PaneStore } from '../keeping/store';
import { wordsFor } from '../../words/words';

/**
 * What was typed belongs to the workbook it was typed beside and is shown beside no other; choices of the
 * person (language, how numbers are written, rings, units) go from one to the next.
 */

const PERSONAL = ['language', 'numbers', 'rings', 'units'] as const satisfies (keyof PaneSettings)[];
const isPlace = (text: unknown): text is PlaceId => [...PLACES, ...MENU].some((id) => id === text);

const settingsOf = (
  kept: KeptState | undefined,
  choices: Readonly<Record<string, unknown>>,
): PaneSettings => ({
  ...(conform(usualSettings, kept?.settings) as PaneSettings),
  ...Object.fromEntries(
    PERSONAL.filter((key) => key in choices).map((key) => [key, conform(usualSettings[key], choices[key])]),
  ),
});

/** Every place begins anew, with what was kept of it. */
export const anew =
  (kept: KeptState | undefined, choices: Readonly<Record<string, unknown>>) =>
  (state: PaneState): PaneState => ({
    ...state,
    ...Object.fromEntries(SLICES.map((name) => [name, undefined])),
    kept: kept ?? {},
    settings: settingsOf(kept, choices),
    ready: [],
    question: undefined,
    notice: undefined,
  });
const SLICES = ['today', 'plan', 'season', 'dose', 'vat', 'why', 'functions', 'messages', 'check', 'share'];

export interface PaneMemory {
  /** Choices of the person, before anything is known of a workbook. */
  readonly begin: () => Promise<void>;
  /** The host is known: what belongs to its workbook is put back. */
  readonly arrive: (host: HostState, asked: PlaceId | undefined) => Promise<void>;
  /** Whether another workbook came under the pane. */
  readonly look: () => Promise<void>;
  readonly keep: (state: PaneState) => void;
  readonly forget: () => Promise<void>;
}

export function beside(store: PaneStore, workbook: () => WorkbookPort): PaneMemory {
  let book: string | undefined;
  let naming: Promise<void> | undefined;
  let isArrived = false;
  const name = (): Promise<void> =>
    (naming ??= (async () => {
      const id = crypto.randomUUID();
      try {
        // A book with a name of its own that came under the pane meanwhile keeps it: what is kept of it goes by it.
        if ((await idOf(workbook())) === undefined) {
          await nameBook(workbook(), id);
          book = id;
        }
      } catch {
        // It takes nothing: then the pane keeps nothing for it.
      }
      naming = undefined;
    })());
  const lost = (): void => {
    store.change((now) => ({ ...now, notice: { tone: 'warning', text: wordsFor(now).shell.notKept } }));
  };
  const keeping: Keeper = keeper({ workbook, clock: () => Date.now(), book: () => book, name, lost });
  const show = async (kept: KeptState | undefined, screen: PlaceId, isTyped = false): Promise<void> => {
    const choices = (await readChoices()) ?? {};
    const place = placeOf(screen);
    // In one step where the place is here: a field that is being typed into keeps the keyboard.
    store.change((now) => {
      const next = anew(kept, choices)(now);
      return place ? enter({ ...next, screen }, screen, place) : next;
    });
    keeping.startAnew(isTyped);
    store.send(showPlace, screen);
    await store.idle();
  };
  const screenOf = (kept: KeptState | undefined, asked: PlaceId | undefined): PlaceId => {
    const last = kept?.pane?.screen;
    return asked ?? (isPlace(last) ? last : store.state().screen);
  };
  return {
    begin: async () => {
      const choices = await readChoices();
      if (choices) store.change((state) => ({ ...state, settings: settingsOf(undefined, choices) }));
    },
    arrive: async (host, asked) => {
      book = host === 'ready' ? await idOf(workbook()) : undefined;
      const kept = (host === 'ready' ? await keptWith(workbook(), book) : await readBrowser(undefined))?.kept;
      isArrived = true;
      if (!kept) return;
      const state = store.state();
      const places = state.ready.flatMap((id) => placeOf(id) ?? []);
      const typed = withTyped(kept, state, places);
      // Who has begun to type stays where he is.
      const isTyped = keptText(typed, 0) !== keptText(kept, 0);
      await show(typed, isTyped ? state.screen : screenOf(kept, asked), isTyped);
    },
    look: async () => {
      if (naming || store.state().task) return;
      const id = await idOf(workbook());
      if (id === book || naming) return;
      book = id;
      await store.idle();
      const kept = (await keptWith(workbook(), id))?.kept;
      await show(kept, store.state().screen);
    },
    keep: (state) => {
      // Before the workbook is known nobody can say to which it belongs.
      if (isArrived) keeping.keep(state);
    },
    forget: () => forgetBrowser(book),
  };
}

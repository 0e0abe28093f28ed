import type { WorkbookPort } from '../../host/port';
import type { KeptState } from '../keeping/kept';
import { conform, keptText, withTyped } from '../keeping/kept';
import type { Keeper } from '../keeping/memory';
import { forgetBrowser, idOf, keeper, keptWith, nameBook, readBrowser, readChoices } from '../keeping/memory';
import type { Command } from '../command';
import { enter, opened, showPlace } from './navigate';
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
  });
const SLICES = ['today', 'plan', 'season', 'dose', 'vat', 'why', 'functions', 'messages', 'check', 'share'];

/** Opens the place on show for the workbook that is there now; what is asked or said stays. */
const openAgain: Command<PlaceId> = {
  name: 'openAgain',
  label: 'Open again',
  perform: (state, screen) => {
    const place = placeOf(screen);
    return place ? opened(enter(state, screen, place), place) : showPlace.perform(state, screen);
  },
};

export interface PaneMemory {
  /** Choices of the person, before anything is known of a workbook. */
  readonly begin: () => Promise<void>;
  /** The host is known: what belongs to its workbook is put back. */
  readonly arrive: (host: HostState, asked: PlaceId | undefined) => Promise<void>;
  /** Another workbook came under the pane: the host says so at once. */
  readonly changed: () => Promise<void>;
  readonly keep: (state: PaneState) => void;
  readonly forget: () => Promise<void>;
}

export function beside(store: PaneStore, workbook: () => WorkbookPort): PaneMemory {
  let book: string | undefined;
  let naming: Promise<void> | undefined;
  let isArrived = false;
  /** Where the pane opened and with which choices: what is another by now was chosen by a person. */
  const { screen: openedAt } = store.state();
  let begunWith = store.state().settings;
  /** Counts the workbooks that came under the pane: what began beside one says nothing of the next. */
  let turn = 0;
  const name = (): Promise<void> => {
    const mine = turn;
    const nameNow = async (): Promise<void> => {
      try {
        const had = await idOf(workbook());
        const id = had ?? crypto.randomUUID();
        if (mine !== turn) return;
        if (had === undefined) await nameBook(workbook(), id);
        if (mine === turn) book = id;
      } catch {
        // It takes nothing: then the pane keeps nothing for it.
      }
    };
    return (naming ??= nameNow().finally(() => {
      naming = undefined;
    }));
  };
  const lost = (): void => {
    store.change((now) => ({ ...now, notice: { tone: 'warning', text: wordsFor(now).shell.notKept } }));
  };
  const keeping: Keeper = keeper({ workbook, clock: () => Date.now(), book: () => book, name, lost });
  const lay = (
    kept: KeptState | undefined,
    screen: PlaceId,
    choices: Readonly<Record<string, unknown>>,
  ): void => {
    const place = placeOf(screen);
    // In one step where the place is here: a field that is being typed into keeps the keyboard.
    store.change((now) => {
      const next = anew(kept, choices)(now);
      return place ? enter({ ...next, screen }, screen, place) : next;
    });
  };
  /** What was kept of the workbook comes back, under what was typed beside it meanwhile. */
  const putBack = async (
    kept: KeptState,
    screenOf: (state: PaneState) => PlaceId,
    choices: Readonly<Record<string, unknown>>,
  ): Promise<void> => {
    const state = store.state();
    const typed = withTyped(
      kept,
      state,
      state.ready.flatMap((id) => placeOf(id) ?? []),
    );
    // Who has begun to type stays where he is, as does who has gone to another place.
    const isTyped = keptText(typed, 0) !== keptText(kept, 0);
    const screen = isTyped ? state.screen : screenOf(state);
    const chosen = PERSONAL.filter((key) => state.settings[key] !== begunWith[key]);
    lay(typed, screen, {
      ...choices,
      ...Object.fromEntries(chosen.map((key) => [key, state.settings[key]])),
    });
    keeping.startAnew(isTyped);
    store.send(openAgain, screen);
    await store.idle();
  };
  const screenOf = (kept: KeptState, asked: PlaceId | undefined) => (state: PaneState) => {
    const last = kept.pane?.screen;
    if (state.screen !== openedAt) return state.screen;
    return asked ?? (isPlace(last) ? last : state.screen);
  };
  return {
    begin: async () => {
      const choices = await readChoices();
      if (choices) store.change((state) => ({ ...state, settings: settingsOf(undefined, choices) }));
      begunWith = store.state().settings;
    },
    arrive: async (host, asked) => {
      const mine = turn;
      const id = host === 'ready' ? await idOf(workbook()) : undefined;
      const kept = (host === 'ready' ? await keptWith(workbook(), id) : await readBrowser(undefined))?.kept;
      const choices = (await readChoices()) ?? {};
      if (mine !== turn) return;
      book = id;
      isArrived = true;
      if (kept) await putBack(kept, screenOf(kept, asked), choices);
    },
    changed: async () => {
      const mine = ++turn;
      book = undefined;
      isArrived = false;
      // Work that is under way ends beside the workbook it began with.
      await store.idle();
      if (mine !== turn) return;
      // At once, so that nothing is typed into forms of the workbook before.
      store.change((now) => ({ ...now, notice: undefined, question: undefined }));
      lay(undefined, store.state().screen, { ...store.state().settings });
      keeping.startAnew(false);
      keeping.keep(store.state());
      const id = await idOf(workbook());
      const [kept, choices] = await Promise.all([keptWith(workbook(), id), readChoices()]);
      if (mine !== turn) return;
      book = id;
      isArrived = true;
      if (kept) return putBack(kept.kept, (state) => state.screen, choices ?? {});
      keeping.keep(store.state());
      store.send(openAgain, store.state().screen);
      await store.idle();
    },
    keep: (state) => {
      // Before the workbook is known nobody can say to which it belongs.
      if (isArrived) keeping.keep(state);
    },
    forget: () => forgetBrowser(book),
  };
}

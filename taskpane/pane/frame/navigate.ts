import type { Command, Working } from '../command';
import { working } from '../command';
import { withKept } from '../keeping/kept';
import type { PanePlace, PlaceId } from './places';
import { loadPlace, placeOf } from './places';
import type { PaneState } from '../keeping/state';

/** The place with its slices in the state, as kept or as at first; a slice two places share comes once. */
export function enter(state: PaneState, id: PlaceId, place: PanePlace): PaneState {
  if (state.ready.includes(id)) return state;
  const slices = Object.entries(withKept(place, state.openedOn, state.kept)).filter(
    ([name]) => (state as unknown as Record<string, unknown>)[name] === undefined,
  );
  return { ...state, ...(Object.fromEntries(slices) as Partial<PaneState>), ready: [...state.ready, id] };
}

/** What a place does when somebody turns to it: reading the workbook, say. */
export function opened(state: PaneState, place: PanePlace): PaneState | Working {
  return place.onOpen ? place.onOpen.perform(state, undefined) : state;
}

/** Turning to a place; what was said about the last one goes away, what was typed there stays. */
export const showPlace: Command<PlaceId> = {
  name: 'showPlace',
  label: 'Show',
  perform: (state, screen) => {
    const next: PaneState = {
      ...state,
      screen,
      isMenuOpen: false,
      notice: undefined,
      question: undefined,
      focus: undefined,
    };
    const place = placeOf(screen);
    if (place) return opened(enter(next, screen, place), place);
    return working(next, async (doors, tell, isStopped) => {
      const loaded = await loadPlace(screen);
      const begun = opened(enter(next, screen, loaded), loaded);
      if (!('work' in begun))
        return (now) => {
          const done = opened(enter(now, screen, loaded), loaded);
          // The workbook came meanwhile: hostArrived, which waits for this, opens the place once more.
          return 'work' in done ? done.next : done;
        };
      const change = await begun.work(doors, tell, isStopped);
      return (now) => change(enter(now, screen, loaded));
    });
  },
};

/** Opens a place and has it do one of its acts: planning again, asked for at home. */
export const goTo: Command<{ readonly place: PlaceId; readonly act: string }> = {
  name: 'goTo',
  label: 'Go on',
  perform: (state, errand) => {
    const shown = showPlace.perform(state, errand.place);
    return 'work' in shown ? working({ ...shown.next, errand }, shown.work) : { ...shown, errand };
  },
};

export const toggleMenu: Command = {
  name: 'toggleMenu',
  label: 'Menu',
  perform: (state) => ({ ...state, isMenuOpen: !state.isMenuOpen }),
};

/** The button a question came from gets the keyboard back; a closed message leaves it on the screen. */
const backTo = (state: PaneState): string => {
  if (!state.question) return 'screen';
  if (state.screen === 'share') return 'share-summary';
  if (state.screen === 'plan') return state.season.mode === 'season' ? 'season-write' : 'plan-write';
  return state.screen === 'why' && state.why.part === 'check' ? 'check-write' : 'function-insert';
};

export const dismiss: Command = {
  name: 'dismiss',
  label: 'Cancel',
  perform: (state) => ({ ...state, question: undefined, notice: undefined, focus: backTo(state) }),
};

export const changeWord: Command<string> = {
  name: 'changeWord',
  label: 'Change the word',
  perform: (state, value) => {
    const { question } = state;
    return question?.word
      ? { ...state, question: { ...question, word: { ...question.word, value } } }
      : state;
  },
};

/** Asks work under way to end; it ends at its next pause. */
export const stopTask: Command = {
  name: 'stopTask',
  label: 'Stop',
  perform: (state) => (state.task?.canStop ? { ...state, task: { ...state.task, isStopping: true } } : state),
};

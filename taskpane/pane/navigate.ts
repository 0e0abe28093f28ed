import type { Command } from './command';
import type { ScreenId, State } from './state';

/** Turning to a screen; what was said about the last one goes away, what was typed there stays. */
export const showScreen: Command<ScreenId> = {
  name: 'showScreen',
  label: 'Show',
  perform: (state, screen) => ({
    ...state,
    screen,
    notice: undefined,
    question: undefined,
    focus: undefined,
  }),
};

/** The button a question came from gets the keyboard back; a closed message leaves it on the screen. */
const backTo = (state: State): string => {
  if (!state.question) return 'screen';
  if (state.screen === 'dose') return 'dose-write';
  if (state.screen === 'check') return 'check-write';
  if (state.screen === 'share') return 'share-summary';
  if (state.screen === 'plan') return state.season.mode === 'season' ? 'season-write' : 'plan-write';
  return 'function-insert';
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

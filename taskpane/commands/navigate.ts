import type { Command } from '../command';
import type { ScreenId } from '../state';

/** Turning to a screen; what was said about the last one goes away, what was typed there stays. */
export const showScreen: Command<ScreenId> = {
  name: 'showScreen',
  label: 'Show',
  perform: (state, screen) => ({ ...state, screen, notice: undefined, question: undefined, focus: undefined }),
};

export const dismiss: Command = {
  name: 'dismiss',
  label: 'Cancel',
  perform: (state) => ({ ...state, question: undefined, notice: undefined }),
};

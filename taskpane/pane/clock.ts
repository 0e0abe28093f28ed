import type { Command } from './command';

/** The clock moved on: what stands on the screen with a time in it is drawn again. */
export const tick: Command<number> = {
  name: 'tick',
  label: 'The clock',
  perform: (state, now) => ({ ...state, now }),
};

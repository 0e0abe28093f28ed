import type { Command } from '../../../pane/command';
import { working } from '../../../pane/command';
import type { PaneSettings } from '../../../pane/keeping/settings';
import { wordsFor } from '../../../words/words';

export const changeSetting: Command<Partial<PaneSettings>> = {
  name: 'changeSetting',
  label: 'Change',
  perform: (state, change) => ({ ...state, settings: { ...state.settings, ...change } }),
};

/** Everything typed goes, but what stands in the workbook's sheets. */
export const forgetAll: Command = {
  name: 'forgetAll',
  label: 'Forget what was typed in this pane',
  perform: (state) =>
    working(state, async ({ forget }) => {
      await forget?.();
      return (now) => ({
        ...now,
        kept: {},
        ready: ['settings'],
        notice: { tone: 'good', text: wordsFor(now).settings.forgotten },
        // Their places begin anew when they are next turned to.
        ...Object.fromEntries(SLICES.map((name) => [name, undefined])),
      });
    }),
};
const SLICES = ['today', 'plan', 'season', 'dose', 'vat', 'why', 'functions', 'messages', 'check', 'share'];

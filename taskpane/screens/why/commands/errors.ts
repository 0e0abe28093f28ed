import type { Command, Working } from '../../../pane/command';
import { working } from '../../../pane/command';
import { showPlace } from '../../../pane/frame/navigate';
import type { PaneState } from '../../../pane/keeping/state';

const atErrors = (state: PaneState): PaneState => ({ ...state, why: { ...state.why, part: 'errors' } });

/** From anywhere to the list of errors in the workbook. */
export const showErrors: Command = {
  name: 'showErrors',
  label: 'Errors',
  perform: (state): PaneState | Working => {
    const shown = showPlace.perform(state, 'why');
    if (!('work' in shown)) return atErrors(shown);
    return working(shown.next.ready.includes('why') ? atErrors(shown.next) : shown.next, async (...doors) => {
      const change = await shown.work(...doors);
      return (now) => atErrors(change(now));
    });
  },
};

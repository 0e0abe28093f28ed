import type { Command, Working } from '../command';
import { working } from '../command';
import { opened } from './navigate';
import { placeOf } from './places';
import type { HostState, PaneState } from '../keeping/state';

/** The workbook is there, or is known not to be: the place on show looks at it. */
export const hostArrived: Command<HostState> = {
  name: 'hostArrived',
  label: 'The host answered',
  perform: (state, host): PaneState | Working => {
    const next: PaneState = { ...state, host };
    const place = placeOf(state.screen);
    if (!place || !state.ready.includes(state.screen)) return next;
    const done = opened(next, place);
    return 'work' in done ? working(done.next, done.work) : done;
  },
};

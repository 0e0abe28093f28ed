import { dosingOf } from '../../../../shared/dosing/events';
import type { PaneState } from '../../../pane/keeping/state';
import { adviceFor, eventsIn } from './dose';

const MINUTES_A_DAY = 1440;

/** Moment the wait at a vat ends, by its last line and what was told after it; undefined where none runs. */
export function waitOver(
  state: Pick<PaneState, 'dose' | 'vat' | 'settings'>,
  name: string,
): number | undefined {
  const last = dosingOf(eventsIn(state.vat.lines), name).at(-1);
  const minutes = adviceFor(state, name)?.waitMinutes ?? null;
  if (!last || last.at === null || minutes === null || last.what === 'filled') return undefined;
  // A dose that is due has not been given: its wait begins with its own line.
  if (adviceFor(state, name)?.action === 'dose') return undefined;
  return last.at + minutes / MINUTES_A_DAY;
}

import type { Place } from '../../pane/places';
import { writeSummaryWithSuffix } from './commands/summary';
import { initialShare } from './state/share';
import { shareView } from './view/share';

export const place: Place = {
  initial: () => ({ share: initialShare }),
  view: shareView,
  answers: { writeSummaryWithSuffix },
};

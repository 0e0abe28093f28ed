import type { PanePlace } from '../../pane/frame/places';
import { writeSummaryWithSuffix } from './commands/summary';
import { initialShare } from './state/share';
import { shareView } from './view/share';

export const place: PanePlace = {
  initial: () => ({ share: initialShare }),
  view: shareView,
  answers: { writeSummaryWithSuffix },
};

import type { PanePlace } from '../../pane/frame/places';
import { openVats, ringTimer } from '../vat/commands/notebook';
import { initialVat, VAT_KEEPS } from '../vat/state/notebook';
import { initialToday } from './state/today';
import { todayView } from './view/today';

export const place: PanePlace = {
  initial: () => ({ today: initialToday, vat: initialVat }),
  view: todayView,
  keeps: { ...VAT_KEEPS },
  onOpen: openVats,
  onTick: ringTimer,
};

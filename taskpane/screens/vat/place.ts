import type { PanePlace } from '../../pane/places';
import { writeDoseWithSuffix } from '../dose/commands/dose';
import { initialDose } from '../dose/state/dose';
import { initialToday } from '../today/state/today';
import { openVats, ringTimer } from './commands/notebook';
import { initialVat, VAT_KEEPS } from './state/notebook';
import { vatView } from './view/vat';

export const place: PanePlace = {
  initial: () => ({ dose: initialDose, vat: initialVat, today: initialToday }),
  view: vatView,
  answers: { writeDoseWithSuffix },
  keeps: { ...VAT_KEEPS, dose: ['texts', 'readings', 'draft', 'past', 'isVatOpen'] },
  onOpen: openVats,
  onTick: ringTimer,
};

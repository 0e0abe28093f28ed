import type { PanePlace } from '../../pane/frame/places';
import { tickVats } from '../dose/commands/dose';
import { initialDose } from '../dose/state/dose';
import { initialToday } from '../today/state/today';
import { openVats } from './commands/notebook';
import { initialVat, VAT_KEEPS } from './state/notebook';
import { vatView } from './view/vat';

export const place: PanePlace = {
  initial: () => ({ dose: initialDose, vat: initialVat, today: initialToday }),
  view: vatView,
  keeps: { ...VAT_KEEPS, dose: ['setups', 'drafts', 'ready', 'isSetupOpen', 'field'] },
  onOpen: openVats,
  onTick: tickVats,
};

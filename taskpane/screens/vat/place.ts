import type { PanePlace } from '../../pane/places';
import { tickVats } from '../dose/commands/dose';
import { initialDose } from '../dose/state/dose';
import { openNotebook } from './commands/notebook';
import { initialVat, VAT_KEEPS } from './state/notebook';
import { vatView } from './view/vat';

export const place: PanePlace = {
  initial: () => ({ dose: initialDose, vat: initialVat }),
  view: vatView,
  keeps: { ...VAT_KEEPS, dose: ['setups', 'drafts', 'ready', 'isSetupOpen', 'field'] },
  onOpen: openNotebook,
  onTick: tickVats,
};

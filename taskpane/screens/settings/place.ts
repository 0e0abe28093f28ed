import type { Place } from '../../pane/places';
import { settingsView } from './view/settings';

export const place: Place = { initial: () => ({}), view: settingsView };

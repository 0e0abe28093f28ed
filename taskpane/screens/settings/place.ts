import type { PanePlace } from '../../pane/places';
import { settingsView } from './view/settings';

export const place: PanePlace = { initial: () => ({}), view: settingsView };

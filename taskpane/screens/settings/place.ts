import type { PanePlace } from '../../pane/frame/places';
import { settingsView } from './view/settings';

export const place: PanePlace = { initial: () => ({}), view: settingsView };

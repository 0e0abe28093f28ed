import type { PanePlace } from '../../pane/places';
import { aboutView } from './view/about';

export const place: PanePlace = { initial: () => ({}), view: aboutView };

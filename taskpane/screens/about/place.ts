import type { PanePlace } from '../../pane/frame/places';
import { aboutView } from './view/about';

export const place: PanePlace = { initial: () => ({}), view: aboutView };

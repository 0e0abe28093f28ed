import type { Place } from '../../pane/places';
import { aboutView } from './view/about';

export const place: Place = { initial: () => ({}), view: aboutView };

import type { Child } from './draw';
import type { Command } from '../command';
import type { Scene } from './parts';
import type { ShownAnswer, PaneState } from '../keeping/state';

/** A place of the pane: its part of the state, its view, and what its questions lead to. */
export interface PanePlace {
  /** The slices it brings, as they are before anything was typed. */
  readonly initial: (today: number) => Partial<PaneState>;
  readonly view: (scene: Scene) => readonly Child[];
  readonly answers?: Readonly<Partial<Record<ShownAnswer['act'], Command>>>;
  /** What of each slice outlives the pane. */
  readonly keeps?: Readonly<Record<string, readonly string[]>>;
  /** Done each time somebody turns to the place. */
  readonly onOpen?: Command;
  /** Done each second while the place is open: a clock that runs, a cell that is followed. */
  readonly onTick?: Command;
  /** What other places and the ribbon may ask of it, by name. */
  readonly acts?: Readonly<Record<string, Command>>;
  /** Stays at the foot of the page. */
  readonly foot?: (scene: Scene) => Child;
}

/** The order in which a day goes. */
export const PLACES = ['today', 'plan', 'vat', 'why'] as const;
export const MENU = ['share', 'settings', 'about'] as const;
export type PlaceId = (typeof PLACES)[number] | (typeof MENU)[number];

/** Each place is loaded when it is first turned to. */
const LOADERS: Readonly<Record<PlaceId, () => Promise<{ readonly place: PanePlace }>>> = {
  today: () => import(/* webpackChunkName: "today" */ '../../screens/today/place'),
  plan: () => import(/* webpackChunkName: "plan" */ '../../screens/plan/place'),
  vat: () => import(/* webpackChunkName: "vat" */ '../../screens/vat/place'),
  why: () => import(/* webpackChunkName: "why" */ '../../screens/why/place'),
  share: () => import(/* webpackChunkName: "share" */ '../../screens/share/place'),
  settings: () => import(/* webpackChunkName: "settings" */ '../../screens/settings/place'),
  about: () => import(/* webpackChunkName: "about" */ '../../screens/about/place'),
};

const opened = new Map<PlaceId, PanePlace>();
/** The place, once it is loaded. */
export const placeOf = (id: PlaceId): PanePlace | undefined => opened.get(id);
export const registerPlace = (id: PlaceId, place: PanePlace): void => {
  opened.set(id, place);
};
export async function loadPlace(id: PlaceId): Promise<PanePlace> {
  const known = opened.get(id);
  if (known) return known;
  const { place } = await LOADERS[id]();
  opened.set(id, place);
  return place;
}

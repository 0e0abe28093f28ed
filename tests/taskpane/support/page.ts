import { hostArrived } from '../../../taskpane/pane/frame/hostArrived';
import type { HostState } from '../../../taskpane/pane/keeping/state';
import { showPlace } from '../../../taskpane/pane/frame/navigate';
import { start } from '../../../taskpane/pane/frame/pane';
import type { PlaceId } from '../../../taskpane/pane/frame/places';
import { registerPlace } from '../../../taskpane/pane/frame/places';
import type { PaneStore } from '../../../taskpane/pane/keeping/store';
import type { FakeWorld } from './fakePort';
import { fakeWorld } from './fakePort';
import { place as about } from '../../../taskpane/screens/about/place';
import { place as plan } from '../../../taskpane/screens/plan/place';
import { place as settings } from '../../../taskpane/screens/settings/place';
import { place as share } from '../../../taskpane/screens/share/place';
import { place as today } from '../../../taskpane/screens/today/place';
import { openCard } from '../../../taskpane/screens/vat/commands/vat';
import { place as vat } from '../../../taskpane/screens/vat/place';
import { showPart } from '../../../taskpane/screens/why/commands/why';
import type { WhyPart } from '../../../taskpane/screens/why/state/why';
import { place as why } from '../../../taskpane/screens/why/place';
import { watch } from './keptScreens';
import { TODAY } from './seasonModel';

/** Every place of the pane, as `go` names it. */
export const EVERY_PLACE = [
  'today',
  'plan',
  'vat',
  'dose',
  'cell',
  'find',
  'check',
  'errors',
  'share',
  'settings',
  'about',
] as const;

// Loaded beforehand, so that a page is there at once.
for (const [id, place] of Object.entries({ about, plan, settings, share, today, vat, why }))
  registerPlace(id as PlaceId, place);

/** The pane on a page, driven as a user drives it: by what is on the screen. */
export interface Page {
  readonly store: PaneStore;
  readonly world: FakeWorld;
  readonly text: () => string;
  readonly one: (selector: string) => HTMLElement;
  readonly all: (selector: string) => HTMLElement[];
  /** Presses the button with this face and waits for its work. */
  readonly press: (face: string) => Promise<void>;
  readonly type: (selector: string, text: string) => Promise<void>;
  readonly key: (key: string) => void;
  /** Turns to a place, to a part of Why, or to the dose at the vat. */
  readonly go: (to: PlaceId | WhyPart | 'dose') => Promise<void>;
}

/** As a person reads it: a space that does not break is a space. */
const textOf = (element: HTMLElement): string => (element.textContent ?? '').replaceAll('\u00a0', ' ');
const faceOf = (element: HTMLElement): string => textOf(element).trim();

export function openPage(host: HostState = 'ready', world = fakeWorld(), first: PlaceId = 'plan'): Page {
  document.body.innerHTML = '<div id="root" class="pane"></div>';
  const root = document.getElementById('root');
  if (!root) throw new Error('no root');
  const store = start(root, world.doors, TODAY, first);
  store.send(showPlace, first);
  store.send(hostArrived, host);
  watch(world);
  const all = (selector: string): HTMLElement[] => [...root.querySelectorAll<HTMLElement>(selector)];
  const one = (selector: string): HTMLElement => {
    const [found] = all(selector);
    if (!found) throw new Error(`nothing fits ${selector}`);
    return found;
  };
  return {
    store,
    world,
    one,
    all,
    text: () => textOf(root),
    press: async (face) => {
      const button = all('button').find(
        (element) => faceOf(element) === face || element.getAttribute('aria-label') === face,
      );
      if (!button)
        throw new Error(`no button “${face}”; there are: ${all('button').map(faceOf).join(' | ')}`);
      button.click();
      await store.idle();
    },
    type: async (selector, text) => {
      const field = one(selector) as HTMLInputElement;
      field.focus();
      field.value = text;
      field.dispatchEvent(new Event(field.tagName === 'SELECT' ? 'change' : 'input', { bubbles: true }));
      await store.idle();
    },
    go: async (to) => {
      if (to === 'dose') {
        store.send(showPlace, 'vat');
        store.send(openCard, 'dose');
      } else if (to === 'cell' || to === 'find' || to === 'check' || to === 'errors') {
        store.send(showPlace, 'why');
        store.send(showPart, to);
      } else store.send(showPlace, to);
      await store.idle();
    },
    key: (key) => {
      document.activeElement?.dispatchEvent(
        new KeyboardEvent('keydown', { key, bubbles: true, cancelable: true }),
      );
    },
  };
}

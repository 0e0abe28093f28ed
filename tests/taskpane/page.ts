import { hostArrived } from '../../taskpane/pane/hostArrived';
import type { HostState } from '../../taskpane/pane/state';
import { start } from '../../taskpane/pane/pane';
import type { Store } from '../../taskpane/pane/store';
import type { FakeWorld } from './fakePort';
import { fakeWorld } from './fakePort';
import { TODAY } from './seasonModel';

/** The pane on a page, driven as a user drives it: by what is on the screen. */
export interface Page {
  readonly store: Store;
  readonly world: FakeWorld;
  readonly text: () => string;
  readonly one: (selector: string) => HTMLElement;
  readonly all: (selector: string) => HTMLElement[];
  /** Presses the button with this face and waits for its work. */
  readonly press: (face: string) => Promise<void>;
  readonly type: (selector: string, text: string) => Promise<void>;
  readonly key: (key: string) => void;
}

const faceOf = (element: HTMLElement): string => (element.textContent ?? '').trim();

export function openPage(host: HostState = 'ready', world = fakeWorld()): Page {
  document.body.innerHTML = '<div id="root" class="pane"></div>';
  const root = document.getElementById('root');
  if (!root) throw new Error('no root');
  const store = start(root, world.doors, TODAY);
  store.send(hostArrived, host);
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
    text: () => root.textContent ?? '',
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
    key: (key) => {
      document.activeElement?.dispatchEvent(
        new KeyboardEvent('keydown', { key, bubbles: true, cancelable: true }),
      );
    },
  };
}

import { serialOfDate, serialOfLocalDay } from '../../shared/units/dates';
import { hostArrived } from './frame/hostArrived';
import { lookForLeft } from './keeping/unfinished';
import type { Doors } from './command';
import { browserFiles, excelFiles } from '../host/files';
import { closedPort, officePort, sharedMemory } from '../host/office';
import { followTheme, hostLanguageTag } from '../host/theme';
import { watchHost } from '../host/ready';
import { beside } from './frame/beside';
import { showPlace } from './frame/navigate';
import { listenToRibbon } from './frame/ribbon';
import type { PlaceId } from './frame/places';
import { MENU, PLACES } from './frame/places';
import { start } from './frame/pane';
import { ring } from './ring';
import type { PaneState } from './keeping/state';
import { setHostLanguage } from '../words/words';
import { everySecond } from './seconds';

/** The only clock of the pane: days since 30 December 1899, local date. */
const today = (): number => serialOfLocalDay(new Date());
const MINUTES_A_DAY = 1440;
/** The moment on the wall, whatever the zone. */
const now = (): number => {
  const date = new Date();
  return serialOfDate(date) - date.getTimezoneOffset() / MINUTES_A_DAY;
};

const isPlace = (text: unknown): text is PlaceId => [...PLACES, ...MENU].some((id) => id === text);

/** A ribbon command or a link may name the place: taskpane.html?place=vat. */
const asked = (): PlaceId | undefined => {
  const place = new URLSearchParams(location.search).get('place');
  return isPlace(place) ? place : undefined;
};

async function begin(root: Element): Promise<void> {
  let host: PaneState['host'] = 'starting';
  const isOpen = (): boolean => host === 'ready';
  const doors: Doors = {
    get workbook() {
      return isOpen() ? officePort : closedPort;
    },
    get files() {
      return isOpen() ? excelFiles : browserFiles;
    },
    get errors() {
      return sharedMemory();
    },
    today,
    now,
    ring,
    forget: () => memory.forget(),
  };
  setHostLanguage(hostLanguageTag());
  const first = asked() ?? 'today';
  const store = start(root, doors, today(), first);
  const memory = beside(store, () => doors.workbook);
  await memory.begin();
  store.send(showPlace, first);
  store.onChange(memory.keep);
  listenToRibbon(({ place, part }) => {
    store.send(showPlace, place);
    if (part) void import('../screens/why/commands/why').then(({ showPart }) => store.send(showPart, part));
  });
  everySecond(store, now);
  whenBookChanges(() => void memory.changed());
  watchHost((next) => {
    host = next;
    setHostLanguage(hostLanguageTag());
    followTheme(root);
    void arrive(next);
  });
  async function arrive(next: PaneState['host']): Promise<void> {
    // A place still being fetched is opened first; it could not look at the workbook then.
    await store.idle();
    await memory.arrive(next, asked());
    await store.idle();
    store.send(hostArrived, next);
    if (next === 'ready') {
      await store.idle();
      store.send(lookForLeft);
    }
  }
}
/** In the local sheet another workbook may come under the pane; in Excel each has its own pane. */
function whenBookChanges(act: () => void): void {
  try {
    if (window.parent !== window) (window.parent.spawnbookBridge ??= {}).shown = act;
  } catch {
    // A page of somebody else around the pane: it changes no workbook.
  }
}

const root = document.getElementById('spawnbook');
if (root) void begin(root);

import { serialOfDate, serialOfLocalDay } from '../../shared/units/dates';
import { hostArrived } from './hostArrived';
import { lookForLeft } from './unfinished';
import type { Doors } from './command';
import { browserFiles, excelFiles } from '../host/files';
import { closedPort, officePort, sharedMemory } from '../host/office';
import { followTheme, hostLanguageTag } from '../host/theme';
import { watchHost } from '../host/ready';
import { forgetBrowser, keeper, readBrowser, readWorkbook } from './memory';
import { showPlace } from './navigate';
import { listenToRibbon } from './ribbon';
import type { PlaceId } from './places';
import { MENU, PLACES } from './places';
import type { KeptState } from './kept';
import { conform } from './kept';
import { start } from './pane';
import { ring } from './ring';
import type { PaneSettings } from './settings';
import { usualSettings } from './settings';
import type { PaneState } from './state';
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

/** What was kept goes under what was opened since; a place already used is left as it is. */
const putBack =
  (kept: KeptState) =>
  (state: PaneState): PaneState => ({
    ...state,
    kept,
    settings: conform(usualSettings, kept.settings) as PaneSettings,
  });

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
    forget: forgetBrowser,
  };
  setHostLanguage(hostLanguageTag());
  const first = asked() ?? 'today';
  const store = start(root, doors, today(), first);
  const inBrowser = await readBrowser();
  if (inBrowser) store.change(putBack(inBrowser.kept));
  const last = inBrowser?.kept.pane?.screen;
  store.send(showPlace, asked() ?? (isPlace(last) ? last : 'today'));
  store.onChange(keeper(() => doors.workbook, Date.now));
  listenToRibbon(({ place, part }) => {
    store.send(showPlace, place);
    if (part) void import('../screens/why/commands/why').then(({ showPart }) => store.send(showPart, part));
  });
  everySecond(store, now);
  watchHost((next) => {
    host = next;
    setHostLanguage(hostLanguageTag());
    followTheme(root);
    void arrive(next);
  });
  async function arrive(next: PaneState['host']): Promise<void> {
    const inBook = next === 'ready' ? await readWorkbook(officePort) : undefined;
    // The newer of the two: another workbook has its own forms.
    if (inBook && inBook.at > (inBrowser?.at ?? 0)) {
      store.change(putBack(inBook.kept));
    }
    // A place still being fetched is opened first; it could not look at the workbook then.
    await store.idle();
    store.send(hostArrived, next);
    if (next === 'ready') {
      await store.idle();
      store.send(lookForLeft);
    }
  }
}

const root = document.getElementById('spawnbook');
if (root) void begin(root);

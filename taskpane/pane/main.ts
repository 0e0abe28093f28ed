import { serialOfLocalDay } from '../../shared/units/dates';
import { hostArrived } from './hostArrived';
import type { Doors } from './command';
import { browserFiles, excelFiles } from '../host/files';
import { closedPort, officePort, sharedMemory } from '../host/office';
import { watchHost } from '../host/ready';
import { start } from './pane';
import type { State } from './state';

/** The only clock of the pane: days since 30 December 1899, local date. */
const today = (): number => serialOfLocalDay(new Date());

const root = document.getElementById('spawnbook');
if (root) {
  let host: State['host'] = 'starting';
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
  };
  const store = start(root, doors, today());
  watchHost((next) => {
    host = next;
    store.send(hostArrived, next);
  });
}

import type { PlaceId } from './places';

/** Commands of the ribbon and of a cell's menu: what the manifest calls them, and where they lead. */
export interface RibbonCommand {
  readonly place: PlaceId;
  /** Part of Why, where there is one. */
  readonly part?: 'cell' | 'find';
}
export const RIBBON: Readonly<Record<string, RibbonCommand>> = {
  showToday: { place: 'today' },
  showPlan: { place: 'plan' },
  showVat: { place: 'vat' },
  showWhy: { place: 'why', part: 'cell' },
  showFind: { place: 'why', part: 'find' },
};

interface Event {
  completed(): void;
}
interface OfficeDoor {
  readonly actions?: { associate(name: string, act: (event: Event) => void): void };
  readonly addin?: { showAsTaskpane(): Promise<void> };
}

/** Ties the commands to the pane; a program without commands has none to tie. */
export function listenToRibbon(go: (command: RibbonCommand) => void): void {
  const office = Reflect.get(globalThis, 'Office') as OfficeDoor | undefined;
  for (const [name, command] of Object.entries(RIBBON))
    office?.actions?.associate(name, (event) => {
      void office.addin?.showAsTaskpane();
      go(command);
      event.completed();
    });
}

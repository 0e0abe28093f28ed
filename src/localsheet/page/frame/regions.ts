import { DOCS_NORMAL_EDITOR_UNIT_ID_KEY, IUniverInstanceService } from '@univerjs/core';
import { ILayoutService } from '@univerjs/ui';
import type { Engine } from '../../univer/engine';
import { element } from './elements';

/** Keys to the sheet; Tab inside it moves between cells, so F6 leads out again, as in office programs. */
export const focusSheet = ({ injector, api }: Engine): void => {
  const units = injector.get(IUniverInstanceService);
  const book = api.getActiveWorkbook()?.getId();
  // The engine hands keys to the unit in focus and, for typing, to the document of its cell editor; before
  // the first click neither is set.
  if (book !== undefined) units.focusUnit(book);
  if (units.getUnit(DOCS_NORMAL_EDITOR_UNIT_ID_KEY))
    units.setCurrentUnitForType(DOCS_NORMAL_EDITOR_UNIT_ID_KEY);
  injector.get(ILayoutService).focus();
};

/** F6 and Shift+F6 go round: buttons on top, sheet, pane. */
export function wireRegions(toSheet: () => void): void {
  const frame = element('pane-frame', HTMLIFrameElement);
  const sheet = element('sheet', HTMLElement);
  const regions = [
    {
      has: (at: Element | null) => at?.closest('.bar') !== null && at !== null,
      enter: () => {
        element('new', HTMLButtonElement).focus();
      },
    },
    { has: (at: Element | null) => at !== null && sheet.contains(at), enter: toSheet },
    {
      has: (at: Element | null) => at === frame,
      enter: () => {
        frame.focus();
        frame.contentWindow?.focus();
      },
    },
  ] as const;
  const go = (event: KeyboardEvent): void => {
    if (event.key !== 'F6') return;
    event.preventDefault();
    const isHidden = element('work', HTMLElement).classList.contains('no-pane');
    const count = isHidden ? regions.length - 1 : regions.length;
    const at = regions.findIndex((region) => region.has(document.activeElement));
    // From nowhere the first press leads to the sheet.
    regions[at < 0 ? 1 : (at + (event.shiftKey ? -1 : 1) + count) % count]?.enter();
  };
  // Before the sheet takes the key for itself.
  window.addEventListener('keydown', go, true);
  const inPane = (): void => {
    frame.contentWindow?.addEventListener('keydown', go, true);
  };
  frame.addEventListener('load', inPane);
  inPane();
}

import { LocaleService, LocaleType, mergeLocales } from '@univerjs/core';
import formula from '@univerjs/sheets-formula/locale/en-US';
import { UniverSheetsConditionalFormattingUIPlugin } from '@univerjs/sheets-conditional-formatting-ui';
import { UniverSheetsDataValidationUIPlugin } from '@univerjs/sheets-data-validation-ui';
import { UniverSheetsFilterUIPlugin } from '@univerjs/sheets-filter-ui';
import { UniverSheetsNoteUIPlugin } from '@univerjs/sheets-note-ui';
import { UniverSheetsNumfmtUIPlugin } from '@univerjs/sheets-numfmt-ui';
import { UniverSheetsSortUIPlugin } from '@univerjs/sheets-sort-ui';
import { UniverSheetsTableUIPlugin } from '@univerjs/sheets-table-ui';
import type { Engine } from './engine';

/**
 * Menus, dialogs and lists of the engine's features: none is needed to show a sheet and type into it, so they
 * are fetched and started once it stands.
 */
const PARTS = [
  [UniverSheetsDataValidationUIPlugin],
  [UniverSheetsConditionalFormattingUIPlugin],
  [UniverSheetsNoteUIPlugin],
  [UniverSheetsNumfmtUIPlugin],
  [UniverSheetsTableUIPlugin, { hideAnchor: true }],
  [UniverSheetsFilterUIPlugin],
  [UniverSheetsSortUIPlugin],
] as const;

const nextTask = (): Promise<void> =>
  new Promise((resolve) => {
    setTimeout(resolve, 0);
  });

/** One after the other, with room for a key or a click in between. */
export async function addLaterParts({ univer, injector }: Engine): Promise<void> {
  injector.get(LocaleService).load({ [LocaleType.EN_US]: mergeLocales(formula) });
  for (const [plugin, options] of PARTS) {
    univer.registerPlugin(plugin as never, options as never);
    await nextTask();
  }
}

import type { FUniver } from '@univerjs/core/facade';
import type { Injector, IWorkbookData } from '@univerjs/core';
import { FUniver as FUniverClass } from '@univerjs/core/facade';
import { LocaleType, LogLevel, mergeLocales, Univer } from '@univerjs/core';
import { UniverDocsPlugin } from '@univerjs/docs';
import { UniverDocsUIPlugin } from '@univerjs/docs-ui';
import { UniverFormulaEnginePlugin } from '@univerjs/engine-formula';
import { UniverRenderEnginePlugin } from '@univerjs/engine-render';
import { UniverSheetsPlugin } from '@univerjs/sheets';
import { UniverSheetsConditionalFormattingPlugin } from '@univerjs/sheets-conditional-formatting';
import { UniverSheetsDataValidationPlugin } from '@univerjs/sheets-data-validation';
import { UniverSheetsFilterPlugin } from '@univerjs/sheets-filter';
import { CalculationMode, UniverSheetsFormulaPlugin } from '@univerjs/sheets-formula';
import { UniverSheetsFormulaUIPlugin } from '@univerjs/sheets-formula-ui';
import { UniverSheetsNotePlugin } from '@univerjs/sheets-note';
import { UniverSheetsNumfmtPlugin } from '@univerjs/sheets-numfmt';
import { UniverSheetsSortPlugin } from '@univerjs/sheets-sort';
import { UniverSheetsTablePlugin } from '@univerjs/sheets-table';
import { UniverSheetsUIPlugin } from '@univerjs/sheets-ui';
import { UniverUIPlugin } from '@univerjs/ui';
import { LOCALES } from './locales';
import { THEME } from './theme';

import '@univerjs/engine-formula/facade';
import '@univerjs/ui/facade';
import '@univerjs/docs-ui/facade';
import '@univerjs/sheets/facade';
import '@univerjs/sheets-ui/facade';
import '@univerjs/sheets-formula/facade';
import '@univerjs/sheets-numfmt/facade';
import '@univerjs/sheets-note/facade';
import '@univerjs/sheets-data-validation/facade';
import '@univerjs/sheets-conditional-formatting/facade';

/** The embedded spreadsheet: the engine, its facade and the door to its services. */
export interface Engine {
  readonly univer: Univer;
  readonly api: FUniver;
  readonly injector: Injector;
}

const registerCore = (univer: Univer): void => {
  univer.registerPlugin(UniverRenderEnginePlugin);
  univer.registerPlugin(UniverFormulaEnginePlugin);
};

const registerSheets = (univer: Univer): void => {
  univer.registerPlugin(UniverSheetsPlugin);
  univer.registerPlugin(UniverSheetsUIPlugin, {
    formulaBar: true,
    disableForceStringAlert: true,
    disableForceStringMark: true,
    protectedRangeShadow: false,
    footer: { sheetBar: true, statisticBar: true, menus: false, zoomSlider: true },
  });
  univer.registerPlugin(UniverSheetsNumfmtPlugin);
  univer.registerPlugin(UniverSheetsFormulaPlugin, {
    initialFormulaComputing: CalculationMode.NO_CALCULATION,
  });
  // It brings the editor of the cells: without it nothing can be typed.
  univer.registerPlugin(UniverSheetsFormulaUIPlugin);
  univer.registerPlugin(UniverSheetsTablePlugin);
  univer.registerPlugin(UniverSheetsFilterPlugin);
  univer.registerPlugin(UniverSheetsSortPlugin);
  univer.registerPlugin(UniverSheetsDataValidationPlugin);
  univer.registerPlugin(UniverSheetsConditionalFormattingPlugin);
  univer.registerPlugin(UniverSheetsNotePlugin);
};

export function startEngine(container: HTMLElement): Engine {
  const univer = new Univer({
    theme: THEME,
    locale: LocaleType.EN_US,
    locales: { [LocaleType.EN_US]: mergeLocales(...LOCALES) },
    logLevel: LogLevel.ERROR,
  });
  registerCore(univer);
  univer.registerPlugin(UniverUIPlugin, {
    container,
    header: true,
    toolbar: true,
    ribbonType: 'simple',
    footer: true,
    contextMenu: true,
    disableAutoFocus: true,
  });
  univer.registerPlugin(UniverDocsPlugin);
  univer.registerPlugin(UniverDocsUIPlugin);
  registerSheets(univer);
  return { univer, api: FUniverClass.newAPI(univer), injector: univer.__getInjector() };
}

export const emptyWorkbook = (): Partial<IWorkbookData> => ({
  id: `book-${Date.now().toString(36)}`,
  name: 'Spawnbook',
  appVersion: '0.25.1',
  sheetOrder: ['sheet1'],
  sheets: { sheet1: { id: 'sheet1', name: 'Sheet1', rowCount: 1000, columnCount: 26 } },
});

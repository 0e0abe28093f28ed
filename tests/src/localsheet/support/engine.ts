import { LocaleType, LogLevel, Univer, UniverInstanceType } from '@univerjs/core';
import type { IWorkbookData, Workbook } from '@univerjs/core';
import { FUniver } from '@univerjs/core/facade';
import { UniverFormulaEnginePlugin } from '@univerjs/engine-formula';
import { UniverSheetsPlugin } from '@univerjs/sheets';
import { UniverSheetsFormulaPlugin } from '@univerjs/sheets-formula';
import '@univerjs/engine-formula/facade';
import '@univerjs/sheets/facade';
import '@univerjs/sheets-formula/facade';
import type { Cell } from '../../../../shared/base/values';
import { parseAddress } from '../../../../shared/sheet/formula/address';
import { cleanFormula } from '../../../../src/localsheet/formulaText';
import { cellOf, UniverCells } from '../../../../src/localsheet/univer/book/cells';
import { Context } from '../../../../src/localsheet/univer/book/context';
import { Settling } from '../../../../src/localsheet/univer/book/settle';
import type { Engine } from '../../../../src/localsheet/univer/engine';
import type { FunctionSource } from '../../../../src/localsheet/univer/functions';
import { recalculateAll, registerFunctions } from '../../../../src/localsheet/univer/functions';
import { repairNames } from '../../../../src/localsheet/univer/names';

/** The embedded spreadsheet's calculation without its screen. */
export interface Sheet {
  readonly univer: Univer;
  readonly engine: Engine;
  set(address: string, content: number | string | boolean | null): Promise<Cell>;
  /** Many formulas, one calculation. */
  setAll(formulas: Readonly<Record<string, string>>): Promise<void>;
  /** Functions that arrive later. */
  register(source: FunctionSource): Promise<void>;
  get(address: string): Cell;
  close(): void;
}

const place = (address: string): { row: number; column: number } => {
  const found = parseAddress(address);
  if (!found) throw new Error(address);
  return found;
};

export function startSheet(source?: FunctionSource, data: Partial<IWorkbookData> = {}): Sheet {
  const univer = new Univer({
    locale: LocaleType.EN_US,
    locales: { [LocaleType.EN_US]: {} },
    logLevel: LogLevel.SILENT,
  });
  univer.registerPlugin(UniverFormulaEnginePlugin);
  univer.registerPlugin(UniverSheetsPlugin);
  univer.registerPlugin(UniverSheetsFormulaPlugin);
  const engine = { univer, api: FUniver.newAPI(univer), injector: univer.__getInjector() };
  univer.createUnit<IWorkbookData, Workbook>(UniverInstanceType.UNIVER_SHEET, {
    id: 'book',
    sheetOrder: ['one'],
    sheets: { one: { id: 'one', name: 'My sheet', rowCount: 600, columnCount: 20 } },
    ...data,
  });
  repairNames(engine);
  if (source) registerFunctions(engine.injector, source);
  const context = new Context(engine);
  const cells = new UniverCells(context);
  const settling = new Settling(engine);
  const get = (address: string): Cell => {
    const { row, column } = place(address);
    return cellOf(cells.stored('one', row, column));
  };
  return {
    univer,
    engine,
    get,
    async set(address, content) {
      const { row, column } = place(address);
      const cell =
        typeof content === 'string' && content.startsWith('=')
          ? { f: cleanFormula(content), v: null, t: null }
          : {
              v: typeof content === 'boolean' ? Number(content) : content,
              f: null,
              t:
                content === null
                  ? null
                  : typeof content === 'number'
                    ? 2
                    : typeof content === 'boolean'
                      ? 3
                      : 1,
            };
      context.change('one', { [row]: { [column]: cell } }, false);
      await settling.settled();
      return get(address);
    },
    async setAll(formulas) {
      const cells: Record<number, Record<number, object>> = {};
      for (const [address, formula] of Object.entries(formulas)) {
        const { row, column } = place(address);
        (cells[row] ??= {})[column] = { f: formula };
      }
      context.change('one', cells, false);
      await settling.settled();
    },
    async register(later) {
      registerFunctions(engine.injector, later);
      recalculateAll(engine.injector);
      await settling.settled();
    },
    close: () => {
      univer.dispose();
    },
  };
}

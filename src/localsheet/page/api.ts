import type { Cell } from '../../../shared/base/values';
import { areaOf, referenceOf } from '../areas';
import type { StandInArea, ChartState } from '../../officeStandIn/book';
import type { KeptWorkbook } from '../keeping/keeper';
import type { UniverBook } from '../univer/book';
import { errorAt } from '../univer/errorText';
import { focusSheet } from './frame/regions';

/**
 * window.spawnbook: what tests and curious people may call from the browser's console. Addresses are A1 text,
 * on the open sheet unless a sheet is named ('Season plan'!B4). Nothing in the page itself depends on it.
 */
export interface PageApi {
  /** Resolves when the sheet is drawn and takes what is typed. */
  readonly usable: Promise<void>;
  /** Resolves when the functions are bound and menus, charts and the pane are there too. */
  readonly ready: Promise<void>;
  /** As if typed: a formula when it begins with =, a number when it is one, otherwise text. */
  setFormula(address: string, text: string): Promise<void>;
  setValue(address: string, value: number | string | boolean | null): Promise<void>;
  /** The raw value; an error is { error, message }; a blank cell is null. Waits for the calculation. */
  getValue(address: string): Promise<Cell>;
  /** Rows of raw values of an area. */
  getValues(address: string): Promise<Cell[][]>;
  getFormula(address: string): Promise<string | null>;
  /** As the cell shows it. */
  getText(address: string): Promise<string>;
  /** Why the cell shows an error, as the page says it on hover. */
  getErrorText(address: string): Promise<string | null>;
  getSheetNames(): Promise<string[]>;
  getCharts(sheet?: string): Promise<readonly ChartState[]>;
  activate(sheet: string): Promise<void>;
  /** Puts empty rows above an area, as many as it has. */
  insertRows(address: string): Promise<void>;
  select(address: string): Promise<void>;
  waitForCalculation(): Promise<void>;
  /** The functions the sheet knows. */
  getFunctionNames(): readonly string[];
  newBook(): Promise<void>;
  openFile(bytes: Uint8Array, name: string): Promise<void>;
  /** Writes what changed to the browser's store now. */
  keepNow(): Promise<void>;
  /** Workbooks in the store, newest first. */
  kept(): Promise<readonly KeptWorkbook[]>;
  /** The open workbook as an .xlsx file. */
  saveFile(): Promise<{ readonly bytes: Uint8Array; readonly lost: readonly string[] }>;
}

export interface PageActions {
  readonly usable: Promise<void>;
  readonly ready: Promise<void>;
  readonly functionNames: () => readonly string[];
  readonly newBook: () => Promise<void>;
  readonly openFile: PageApi['openFile'];
  readonly saveFile: PageApi['saveFile'];
  readonly keepNow: PageApi['keepNow'];
  readonly kept: PageApi['kept'];
}

const NUMBER = /^[+-]?(\d+\.?\d*|\.\d+)(e[+-]?\d+)?$/i;

const typed = (text: string): { formula: string } | { value: number | string | boolean } | null => {
  if (text === '') return null;
  if (text.startsWith('=') && text.length > 1) return { formula: text };
  if (NUMBER.test(text.trim())) return { value: Number(text) };
  return /^(true|false)$/i.test(text) ? { value: /^true$/i.test(text) } : { value: text };
};

export function pageApi(open: UniverBook, actions: PageActions): PageApi {
  const { book } = open;
  const idOf = async (name: string): Promise<string> => {
    const found = (await book.sheets()).find((s) => s.name.toLowerCase() === name.toLowerCase());
    if (!found) throw new Error(`There is no sheet named ${name}.`);
    return found.id;
  };
  const place = async (address: string): Promise<{ sheet: string; area: StandInArea }> => {
    const reference = referenceOf(address);
    const area = reference?.area ?? areaOf(address);
    if (!area) throw new Error(`${address} is not an address.`);
    return {
      sheet: reference?.sheet === undefined ? await book.activeSheet() : await idOf(reference.sheet),
      area,
    };
  };
  const read = async <K extends 'values' | 'formulas' | 'text'>(address: string, what: K) => {
    await book.settle();
    const { sheet, area } = await place(address);
    return book.read(sheet, area, what);
  };
  const write = async (address: string, input: ReturnType<typeof typed>): Promise<void> => {
    const { sheet, area } = await place(address);
    await book.write(
      sheet,
      area,
      Array.from({ length: area.rows }, () => Array.from({ length: area.columns }, () => input)),
    );
    await book.settle();
  };
  return {
    usable: actions.usable,
    ready: actions.ready,
    setFormula: (address, text) => write(address, typed(text)),
    setValue: (address, value) => write(address, value === null ? null : { value }),
    getValue: async (address) => (await read(address, 'values'))[0]?.[0] ?? null,
    getValues: (address) => read(address, 'values'),
    async getFormula(address) {
      const formula = (await read(address, 'formulas'))[0]?.[0];
      return typeof formula === 'string' && formula.startsWith('=') ? formula : null;
    },
    getText: async (address) => (await read(address, 'text'))[0]?.[0] ?? '',
    async getErrorText(address) {
      await book.settle();
      const { sheet, area } = await place(address);
      return errorAt(open, sheet, area.row, area.column)?.sentence ?? null;
    },
    getSheetNames: async () => (await book.sheets()).map((s) => s.name),
    getCharts: async (sheet) =>
      book.charts(sheet === undefined ? await book.activeSheet() : await idOf(sheet)),
    activate: async (sheet) => {
      await book.activate(await idOf(sheet));
    },
    async insertRows(address) {
      const { sheet, area } = await place(address);
      open.context.facade(sheet).insertRows(area.row, area.rows);
      await book.settle();
    },
    async select(address) {
      const { sheet, area } = await place(address);
      await book.select(sheet, area);
      focusSheet(open.context.engine);
    },
    async waitForCalculation() {
      // A key pressed just now reaches the cell a moment later.
      await new Promise((resolve) => {
        setTimeout(resolve, 60);
      });
      await book.settle();
    },
    getFunctionNames: actions.functionNames,
    newBook: actions.newBook,
    openFile: actions.openFile,
    saveFile: actions.saveFile,
    keepNow: actions.keepNow,
    kept: actions.kept,
  };
}

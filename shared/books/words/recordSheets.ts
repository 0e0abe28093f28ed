import type { RangeCells } from '../../records/read/sheetCells';
import { parseAddress } from '../../sheet/formula/address';
import type { SheetModel, WorkbookModel } from '../../sheet/workbook/model';
import { inLanguage } from './inLanguage';
import { RECORD_LANGUAGES } from './records';
import { englishOf } from './words';

/** Sheets about records in another language, and a sheet of rates led back to English. */

const QUOTED = /("[^"]*")/;
/** English parts thousands by commas, which other languages read as a decimal mark; what is quoted from a cell stays. */
export const threesApart = (text: string): string =>
  text
    .split(QUOTED)
    .map((part, i) => (i % 2 === 1 ? part : part.replace(/(\d),(?=\d{3}(?!\d))/g, '$1\u202f')))
    .join('');

const spaced = (sheet: SheetModel): SheetModel => ({
  ...sheet,
  cells: Object.fromEntries(
    Object.entries(sheet.cells).map(([address, cell]) => [
      address,
      typeof cell.value === 'string' ? { ...cell, value: threesApart(cell.value) } : cell,
    ]),
  ),
});

/** Columns that repeat what stands in the records: names of sheets, places, headings, runs. */
const COPIED: Readonly<Record<string, string>> = {
  'Check findings': 'BCI',
  'Check reading': 'ABC',
  Trends: 'B',
};
/** The row of headings on every one of them, from 0. */
const LAST_HEAD = 4;
const isCopied = (sheet: string, address: string): boolean => {
  const row = parseAddress(address)?.row ?? 0;
  return row >= LAST_HEAD && (COPIED[sheet] ?? '').includes(address.replace(/\d/g, ''));
};

/** As it is where the language has no words for it. */
export const recordSheetsIn = (model: WorkbookModel, language: string): WorkbookModel => {
  const words = RECORD_LANGUAGES[language];
  if (!words) return model;
  return inLanguage({ ...model, sheets: model.sheets.map(spaced) }, words, isCopied);
};

/** A sheet of rates in whatever language it was written in, with the words of its headings and kinds in English. */
export function ratesInEnglish(cells: RangeCells): RangeCells {
  const all = Object.values(RECORD_LANGUAGES);
  const said = (text: string): string =>
    all.map((words) => englishOf(words, text)).find((english) => english !== text) ?? text;
  return {
    ...cells,
    values: cells.values.map((row) => row.map((cell) => (typeof cell === 'string' ? said(cell) : cell))),
  };
}

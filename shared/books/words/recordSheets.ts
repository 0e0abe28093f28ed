import type { RangeCells } from '../../records/read/sheetCells';
import { parseAddress } from '../../sheet/formula/address';
import type { SheetModel, WorkbookModel } from '../../sheet/workbook/model';
import type { IsTyped } from './inLanguage';
import { threesApart } from '../../units/phrases';
import { inLanguage } from './inLanguage';
import { RECORD_LANGUAGES } from './records';
import { englishOf } from './words';

/** Sheets about records in another language, and a sheet of rates led back to English. */

const spaced = (sheet: SheetModel): SheetModel => ({
  ...sheet,
  cells: Object.fromEntries(
    Object.entries(sheet.cells).map(([address, cell]) => [
      address,
      typeof cell.value === 'string' ? { ...cell, value: threesApart(cell.value) } : cell,
    ]),
  ),
});

/** Columns that repeat what stands in the records (names of sheets, places, headings, runs), from which row on. */
const COPIED: Readonly<Record<string, { readonly columns: string; readonly from: number }>> = {
  'Check findings': { columns: 'BCI', from: 5 },
  'Check reading': { columns: 'ABC', from: 5 },
  Trends: { columns: 'B', from: 6 },
};
const rowOf = (address: string): number => (parseAddress(address)?.row ?? 0) + 1;
/** Below them the sheet speaks of rules. */
const END = 'Not checked';
function isCopiedIn(model: WorkbookModel): IsTyped {
  const ends = new Map(
    model.sheets.map(({ name, cells }) => {
      const end = Object.keys(cells).find((address) => cells[address]?.value === END);
      return [name, end === undefined ? Infinity : rowOf(end)];
    }),
  );
  return (sheet, address) => {
    const copied = COPIED[sheet];
    const row = rowOf(address);
    return (
      copied !== undefined &&
      row >= copied.from &&
      row < (ends.get(sheet) ?? Infinity) &&
      copied.columns.includes(address.replace(/\d/g, ''))
    );
  };
}

/** As it is where the language has no words for it. */
export const recordSheetsIn = (model: WorkbookModel, language: string): WorkbookModel => {
  const words = RECORD_LANGUAGES[language];
  if (!words) return model;
  return inLanguage({ ...model, sheets: model.sheets.map(spaced) }, words, isCopiedIn(model));
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

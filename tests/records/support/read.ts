import { strToU8 } from 'fflate';
import { isError } from '../../../shared/base/values';
import type { SheetCells } from '../../../shared/records/read';
import { readFileCells } from '../../../shared/records/read';
import type { Made } from './file';
import { madeXlsx, partsOf } from './file';
import { finish } from './grid';
import type { Book, Layout } from './layouts';

const two = (n: number): string => String(n).padStart(2, '0');
/** 14.03.2026 21:05, as a German or French sheet writes it. */
const dotted = (serial: number): string => {
  const date = new Date(Math.round((serial - 25_569) * 1440) * 60_000);
  const day = `${two(date.getUTCDate())}.${two(date.getUTCMonth() + 1)}.${date.getUTCFullYear()}`;
  return Number.isInteger(serial) ? day : `${day} ${two(date.getUTCHours())}:${two(date.getUTCMinutes())}`;
};

const csvCell = (made: Made): string => {
  const { value, isDate } = partsOf(made);
  if (value === null) return '';
  if (typeof value === 'number') return isDate ? dotted(value) : String(value).replace('.', ',');
  return isError(value) ? value.error : `"${String(value).replaceAll('"', '""')}"`;
};

export const csvOf = (cells: readonly (readonly Made[])[]): Uint8Array =>
  strToU8(`sep=;\r\n${cells.map((row) => row.map(csvCell).join(';')).join('\r\n')}`);

/** The sheets of a written book, through real files. */
export function sheetsOf(book: Book, layout: Layout): readonly SheetCells[] {
  const files =
    layout === 'text table'
      ? book.sheets.map(({ name, cells }) => finish(readFileCells(csvOf(cells), `${name}.csv`)))
      : [finish(readFileCells(madeXlsx(book.sheets), 'book.xlsx'))];
  return files.flatMap((file) => {
    if ('fault' in file) throw new Error(file.fault);
    return file.sheets;
  });
}

import { readCsvCells } from './csv';
import type { SheetCells } from './sheetCells';
import { BadFile, readXlsxCells } from './xlsxCells';

export { sheetFromRange } from './sheetCells';
export type { RangeCells, SheetCells } from './sheetCells';

/** The sheets of a file, or the sentence that says why it cannot be read. */
export type FileCells =
  { readonly sheets: readonly SheetCells[]; readonly notes: readonly string[] } | { readonly fault: string };

const isZipOrOffice = (bytes: Uint8Array): boolean =>
  (bytes[0] === 0x50 && bytes[1] === 0x4b) || (bytes[0] === 0xd0 && bytes[1] === 0xcf);
const isTextName = (name: string): boolean => /\.(csv|tsv|txt|tab)$/i.test(name);

const sheetName = (fileName: string): string =>
  fileName
    .replace(/^.*[\\/]/, '')
    .replace(/\.[^.]*$/, '')
    .replace(/[[\]:*?/\\]/g, ' ')
    .slice(0, 31) || 'Records';

/**
 * Reads the bytes of an .xlsx or .csv file, yielding the share done. Never throws for a bad file: the fault
 * is a sentence.
 */
export function* readFileCells(bytes: Uint8Array, fileName: string): Generator<number, FileCells> {
  try {
    if (isTextName(fileName) && !isZipOrOffice(bytes)) {
      const { sheet, notes } = readCsvCells(bytes, sheetName(fileName));
      return sheet.rows.length === 0 ? { fault: 'The file holds no text.' } : { sheets: [sheet], notes };
    }
    const sheets = yield* readXlsxCells(bytes);
    return { sheets, notes: sheets.flatMap((sheet) => sheet.lost.map((what) => `${sheet.name}: ${what}`)) };
  } catch (error) {
    if (error instanceof BadFile) return { fault: error.message };
    throw error;
  }
}

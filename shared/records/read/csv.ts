import Papa from 'papaparse';
import { decode } from './codePage';
import type { SheetCells } from './sheetCells';
import { SheetReader } from './sheetCells';
import { BadFile } from './xlsxCells';

export interface CsvSheet {
  readonly sheet: SheetCells;
  readonly notes: readonly string[];
}

const DELIMITERS = [';', '\t', ',', '|'] as const;
const NAMES: Readonly<Record<string, string>> = { ';': 'semicolon', '\t': 'tab', ',': 'comma', '|': 'bar' };
const LINES_TO_JUDGE = 20;

/** Fields of one line, quotes respected. */
const widthOf = (line: string, delimiter: string): number => {
  let width = 1;
  let isQuoted = false;
  for (const c of line) {
    if (c === '"') isQuoted = !isQuoted;
    else if (c === delimiter && !isQuoted) width++;
  }
  return width;
};

/** The character that cuts most lines into the same number of fields; a decimal comma cuts them unevenly. */
function delimiterOf(text: string): string {
  const lines = text
    .slice(0, 20_000)
    .split(/\r\n|\n|\r/)
    .filter((line) => line.trim() !== '')
    .slice(0, LINES_TO_JUDGE);
  const score = (delimiter: string): number => {
    const widths = lines.map((line) => widthOf(line, delimiter)).filter((width) => width > 1);
    const counts = new Map<number, number>();
    for (const width of widths) counts.set(width, (counts.get(width) ?? 0) + 1);
    return widths.length === 0
      ? 0
      : Math.max(...counts.values()) / lines.length + widths.length / lines.length / 10;
  };
  return DELIMITERS.reduce((best, one) => (score(one) > score(best) + 1e-9 ? one : best));
}

/**
 * A text table as a sheet. Every cell stays text here: numbers and dates are read column by column, with one
 * stated way for the whole column.
 */
export function readCsvCells(bytes: Uint8Array, name: string): CsvSheet {
  if (bytes.length === 0) throw new BadFile('The file is empty.');
  const { text, coding } = decode(bytes);
  if (/\0/.test(text.slice(0, 4000)))
    throw new BadFile('This is not a text file. Pick a .csv or an .xlsx file.');
  // Excel does not show the line that names the separator, so rows are counted without it.
  const said = /^sep=(.)\r?\n/i.exec(text);
  const delimiter = said?.[1] ?? delimiterOf(text);
  const builder = new SheetReader(name);
  const { data } = Papa.parse<string[]>(said ? text.slice(said[0].length) : text, {
    delimiter,
    skipEmptyLines: false,
  });
  for (const [row, line] of data.entries())
    for (const [column, field] of line.entries()) {
      const cell = field.trim();
      if (cell !== '') builder.put(row, column, cell, false, undefined);
    }
  const notes = [`Read as ${coding} with ${NAMES[delimiter] ?? `"${delimiter}"`} between the fields.`];
  return { sheet: builder.build(), notes };
}

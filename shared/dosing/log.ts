// Long: one table of columns, its writer and its reader, which must agree line by line.
import type { Cell } from '../base/values';
import { isError } from '../base/values';
import { serialOfCalendarDay } from '../units/dates';
import { readTypedNumber } from '../units/typedNumber';
import type { LogWords } from './logWords';
import { englishIn, lineIn, otherHeadings } from './logWords';

/**
 * The log of everything noted at the vat: one line a thing, the same columns whoever writes it. The pane
 * appends and reads back, the dosing sheet holds the same columns, the check of records reads them by their
 * headings, and a formula reads them column by column.
 */
export const LOG_SHEET = 'Vat log';

export interface LogLine {
  /** Serial with its hour; null where nobody wrote it down. */
  readonly at: number | null;
  readonly vat: string;
  /** "reading", "dose", "aired", … or the name of any other thing noted. */
  readonly what: string;
  readonly product: string;
  /** Grams of this dose alone. */
  readonly grams: number | null;
  readonly ph: number | null;
  /** The second reading some minutes later. */
  readonly again: number | null;
  readonly celsius: number | null;
  /** Litres that came in, or that stand in the vat when it was filled. */
  readonly litres: number | null;
  /** What has no column of its own. */
  readonly number: number | null;
  readonly unit: string;
  readonly who: string;
  readonly note: string;
}

export interface LogColumn {
  readonly key: keyof LogLine;
  readonly heading: string;
  readonly format: string;
  /** Points. */
  readonly width: number;
  /** Other headings a person may have written over it. */
  readonly also: readonly string[];
}

export const LOG_COLUMNS: readonly LogColumn[] = [
  {
    key: 'at',
    heading: 'When',
    format: 'yyyy-mm-dd hh:mm',
    width: 110,
    also: ['date', 'date and time', 'time'],
  },
  { key: 'vat', heading: 'Vat', format: '@', width: 50, also: ['tank', 'vat no.'] },
  { key: 'what', heading: 'What', format: 'General', width: 110, also: ['event', 'events'] },
  { key: 'product', heading: 'Product', format: 'General', width: 80, also: ['material'] },
  { key: 'grams', heading: 'Dose, g', format: '0.0##', width: 60, also: ['g', 'grams', 'dose'] },
  { key: 'ph', heading: 'pH', format: '0.00', width: 45, also: ['ph read'] },
  { key: 'again', heading: 'pH again', format: '0.00', width: 60, also: ['second ph'] },
  { key: 'celsius', heading: 'Water, °C', format: '0.0', width: 60, also: ['°c', 'temperature'] },
  { key: 'litres', heading: 'Water, L', format: '#,##0', width: 60, also: ['l', 'litres'] },
  { key: 'number', heading: 'Number', format: 'General', width: 60, also: [] },
  { key: 'unit', heading: 'Unit', format: 'General', width: 60, also: [] },
  { key: 'who', heading: 'Who', format: 'General', width: 70, also: ['by', 'person'] },
  { key: 'note', heading: 'Note', format: 'General', width: 160, also: ['notes', 'remark'] },
];

export const EMPTY_LINE: LogLine = {
  at: null,
  vat: '',
  what: '',
  product: '',
  grams: null,
  ph: null,
  again: null,
  celsius: null,
  litres: null,
  number: null,
  unit: '',
  who: '',
  note: '',
};

/** A line as the cells of its row, in the words of its log; texts that are empty leave the cell empty. */
export function logRow(line: LogLine, words?: LogWords): Cell[] {
  const said = words ? lineIn(words, line) : line;
  return LOG_COLUMNS.map(({ key }) => said[key] || zeroOf(said[key]));
}
const zeroOf = (value: string | number | null): Cell => (value === 0 ? 0 : null);

export interface LogFault {
  /** Row of the grid, from 1. */
  readonly row: number;
  readonly sentence: string;
}
export interface ReadLog {
  readonly lines: readonly (LogLine & { readonly row: number })[];
  readonly faults: readonly LogFault[];
}

const folded = (cell: Cell | undefined): string =>
  typeof cell === 'string' ? cell.trim().toLowerCase().replace(/\s+/g, ' ') : '';

const columnOf = (cell: Cell | undefined): keyof LogLine | undefined => {
  const word = folded(cell);
  return word === ''
    ? undefined
    : (LOG_COLUMNS.find(({ heading, also }) => heading.toLowerCase() === word || also.includes(word))?.key ??
        LOG_COLUMNS.find(({ key }) => otherHeadings(key).includes(word))?.key);
};

/** Headings found in a row, by place; a row is the heading when it names the vat's pH or what was done. */
const headingsOf = (row: readonly Cell[]): readonly (keyof LogLine | undefined)[] | undefined => {
  const keys = row.map(columnOf);
  const found = new Set(keys);
  return found.has('ph') && (found.has('what') || found.has('grams')) ? keys : undefined;
};

/** 2026-11-28 14:05 or 28.11.2026 14:05: the two orders that cannot be misread. */
const MOMENT =
  /^(?:(\d{4})-(\d{1,2})-(\d{1,2})|(\d{1,2})\.(\d{1,2})\.(\d{4}))(?:[ T]+(\d{1,2})[:h](\d{2}))?$/i;
const momentOf = (text: string): number | undefined => {
  const [, year, month, day, dayFirst, month2, year2, hour = '0', minute = '0'] =
    MOMENT.exec(text.trim()) ?? [];
  const serial = serialOfCalendarDay(Number(year ?? year2), Number(month ?? month2), Number(day ?? dayFirst));
  return serial === undefined ? undefined : serial + (Number(hour) + Number(minute) / 60) / 24;
};

const NUMBERS = ['grams', 'ph', 'again', 'celsius', 'litres', 'number'] as const;
type NumberKey = (typeof NUMBERS)[number];
const isNumberKey = (key: keyof LogLine): key is NumberKey => (NUMBERS as readonly string[]).includes(key);

const numberOf = (cell: Cell): number | undefined => {
  if (typeof cell !== 'string') return typeof cell === 'number' ? cell : undefined;
  const read = readTypedNumber(cell, {});
  return read.kind === 'number' ? read.value : undefined;
};

const isEmpty = (cell: Cell | undefined): boolean => cell === null || cell === undefined || cell === '';

/** What stands in one cell, or the sentence about it. */
const valueOf = (key: keyof LogLine, cell: Cell): string | number | { readonly sentence: string } => {
  const { heading } = LOG_COLUMNS.find((one) => one.key === key) ?? { heading: key };
  if (isError(cell)) return { sentence: `${heading}: the cell holds the error ${cell.error}.` };
  const shown = typeof cell === 'string' || typeof cell === 'number' ? String(cell) : '';
  if (key === 'at') {
    const at = typeof cell === 'number' ? cell : momentOf(shown);
    return at ?? { sentence: `${heading}: expected a date and time, got “${shown}”.` };
  }
  if (!isNumberKey(key)) return englishIn(key, shown.trim());
  return numberOf(cell) ?? { sentence: `${heading}: expected a number, got “${shown}”.` };
};

const lineOf = (
  cells: readonly Cell[],
  headings: readonly (keyof LogLine | undefined)[],
): LogLine | string => {
  const line: Record<string, string | number | null> = { ...EMPTY_LINE };
  for (const [i, key] of headings.entries()) {
    const cell = cells[i];
    if (key === undefined || isEmpty(cell)) continue;
    const value = valueOf(key, cell ?? null);
    if (typeof value === 'object') return value.sentence;
    line[key] = value;
  }
  return line as unknown as LogLine;
};

/**
 * The lines of a sheet whose headings are those of the log, in any order and with other columns between them.
 * A cell that cannot be read leaves its line out and says so; nothing else is lost by it.
 */
export function readLog(grid: readonly (readonly Cell[])[]): ReadLog {
  const top = grid.findIndex((row) => headingsOf(row) !== undefined);
  const headings = headingsOf(grid[top] ?? []);
  if (!headings) return { lines: [], faults: [] };
  const lines: (LogLine & { readonly row: number })[] = [];
  const faults: LogFault[] = [];
  for (let i = top + 1; i < grid.length; i++) {
    const cells = grid[i] ?? [];
    // A row with nothing in it, or with words of its own under the table, is no line.
    if (headings.every((key, at) => key === undefined || key === 'at' || isEmpty(cells[at]))) continue;
    const line = lineOf(cells, headings);
    if (typeof line === 'string') faults.push({ row: i + 1, sentence: line });
    else lines.push({ ...line, row: i + 1 });
  }
  return { lines, faults };
}

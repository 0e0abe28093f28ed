import type { Cell } from '../../base/values';
import { readOrderBook } from '../../season/orderBook';
import { addressOf, parseAddress } from '../../sheet/formula/address';
import type { SheetModel, WorkbookModel } from '../../sheet/workbook/model';
import { LivingPages, booksIn, readBook } from '../living';
import { summarySheet } from './sheet';

export type Summary = { readonly model: WorkbookModel } | { readonly fault: string };

const NO_PLAN =
  'There is no season plan in this workbook. Write one on the screen Plan, then add the summary.';

/** The cells of a sheet as rows. */
function gridOf({ name, cells }: SheetModel): { readonly name: string; readonly values: Cell[][] } {
  const places = Object.keys(cells).flatMap((address) => parseAddress(address) ?? []);
  const rows = places.reduce((most, { row }) => Math.max(most, row + 1), 0);
  const columns = places.reduce((most, { column }) => Math.max(most, column + 1), 0);
  const row = (r: number): Cell[] =>
    Array.from({ length: columns }, (_, c): Cell => cells[addressOf(r, c)]?.value ?? null);
  return { name, values: Array.from({ length: rows }, (_, r) => row(r)) };
}

function pageOf(book: WorkbookModel, suffix: string): SheetModel | string {
  const read = readBook(book.sheets.map(gridOf), suffix);
  if (read.kind === 'unreadable')
    return `${read.faults.join(' ')} Write the plan anew, then add the summary.`;
  const checked = readOrderBook(read.input);
  if ('faults' in checked)
    return `The season in this workbook cannot be read: ${checked.faults[0]?.message ?? ''} Mend it, then add the summary.`;
  return summarySheet(new LivingPages(checked.book, read.plan, read.typed), suffix);
}

/**
 * One page for each season of a workbook, as sheets to be written into that workbook: native formulas over
 * the book's own cells.
 */
export function summaryOf(book: WorkbookModel): Summary {
  const suffixes = booksIn(book.sheets.map(({ name }) => name));
  if (suffixes.length === 0) return { fault: NO_PLAN };
  const made = suffixes.map((suffix) => pageOf(book, suffix));
  const fault = made.find((one) => typeof one === 'string');
  if (fault !== undefined) return { fault };
  return {
    model: {
      title: 'The season on one page',
      sheets: made.filter((one): one is SheetModel => typeof one !== 'string'),
      names: [],
    },
  };
}

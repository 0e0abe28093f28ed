import { gridOf } from '../../sheet/workbook/grid';
import { readOrderBook } from '../../season/book/orderBook';
import type { SheetModel, WorkbookModel } from '../../sheet/workbook/model';
import { inLanguage } from '../words/inLanguage';
import { sayIn } from '../words/words';
import { LivingPages, booksIn, readBook, wordsOfBook } from '../living';
import { summarySheet } from './sheet';

const TITLE = 'The season on one page';
export type Summary = { readonly model: WorkbookModel } | { readonly fault: string };

const NO_PLAN =
  'There is no season plan in this workbook. Write one on the screen Plan, then add the summary.';

function pageOf(book: WorkbookModel, suffix: string): SheetModel | string {
  const read = readBook(book.sheets.map(gridOf), suffix);
  if (read.kind === 'unreadable')
    return `${read.faults.join(' ')} Write the plan anew, then add the summary.`;
  const checked = readOrderBook(read.input);
  if ('faults' in checked)
    return `The season in this workbook cannot be read: ${checked.faults[0]?.message ?? ''} Mend it, then add the summary.`;
  const sheet = summarySheet(new LivingPages(checked.book, read.plan, read.typed), suffix);
  const words = wordsOfBook(
    book.sheets.map(({ name }) => name),
    suffix,
  );
  return words ? (inLanguage({ title: '', sheets: [sheet], names: [] }, words).sheets[0] ?? sheet) : sheet;
}

/**
 * One page for each season of a workbook, as sheets to be written into that workbook: native formulas over
 * the book's own cells.
 */
export function summaryOf(book: WorkbookModel): Summary {
  const suffixes = booksIn(book.sheets.map(({ name }) => name));
  if (suffixes.length === 0) return { fault: NO_PLAN };
  const first = wordsOfBook(
    book.sheets.map(({ name }) => name),
    suffixes[0] ?? '',
  );
  const made = suffixes.map((suffix) => pageOf(book, suffix));
  const fault = made.find((one) => typeof one === 'string');
  if (fault !== undefined) return { fault };
  return {
    model: {
      title: first ? sayIn(first, TITLE) : TITLE,
      sheets: made.filter((one): one is SheetModel => typeof one !== 'string'),
      names: [],
    },
  };
}

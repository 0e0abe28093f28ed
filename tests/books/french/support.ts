import { fr } from '../../../shared/books/words/fr';
import { livingBook } from '../../../shared/books/living';
import type { BookInput } from '../../../shared/books/living';
import { planBatches } from '../../../shared/season/batches';
import { readOrderBook } from '../../../shared/season/book/orderBook';
import type { WorkbookModel } from '../../../shared/sheet/workbook/model';

/** The same season as a book in both languages. */
export function bothOf(input: BookInput): { readonly en: WorkbookModel; readonly fr: WorkbookModel } {
  const read = readOrderBook(input);
  if ('faults' in read) throw new Error(read.faults.map(({ message }) => message).join(' '));
  const plan = planBatches(read.book);
  return { en: livingBook(read.book, plan), fr: livingBook(read.book, plan, undefined, fr) };
}

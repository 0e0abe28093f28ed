import { livingBook } from '../../shared/books/living';
import { planBatches } from '../../shared/season/batches';
import type { PlanForm } from '../../shared/season/one';
import { readOneOrder } from '../../shared/season/one';
import type { OrderBook } from '../../shared/season/book/orderBook';
import type { SeasonPlan } from '../../shared/season/types';
import type { WorkbookModel } from '../../shared/sheet/workbook/model';

/** An order of an invented hatchery; every test changes what it is about. */
export const ORDER = {
  hatchery: 'Willow Ford Hatchery',
  buyer: 'Lower Weir ponds',
  product: 'fingerlings',
  wanted: 24_000,
  wantedOn: '2027-04-24',
  plannedOn: '2027-02-15',
  females: 6,
  femaleWeight: 1.2,
  males: 6,
  vats: 8,
  vatLitres: 1000,
  temperature: 26.5,
  ph: 5.8,
  phWanted: 7,
  alkalinity: 0.2,
  material: 'soda ash',
  preparation: 'ready-made solution',
  stripHour: '7:00',
} as const;

export interface OneRun {
  readonly form: PlanForm;
  readonly book: OrderBook;
  readonly plan: SeasonPlan;
}
export const bookOf = (changes: object = {}): { readonly form: PlanForm; readonly book: OrderBook } => {
  const read = readOneOrder({ ...ORDER, ...changes });
  if ('faults' in read) throw new Error(read.faults.map(({ message }) => message).join(' '));
  return read;
};
/** The order planned; few seasons are drawn, as no test of it is about odds. */
export const runOf = (changes: object = {}): OneRun => {
  const { form, book } = bookOf(changes);
  return { form, book, plan: planBatches(book, { draws: 300, explains: false }) };
};
/** Its workbook, calculated. */
export const modelOf = (changes: object = {}): WorkbookModel => {
  const { book, plan } = runOf(changes);
  return livingBook(book, plan);
};

import type { OrderBook } from '../book/orderBook';
import { readOrderBook } from '../book/orderBook';
import type { FieldFault, PlanForm } from './form';
import { readPlanForm } from './form';

export { FIVE_GROUPS, PLAN_FIELDS, firstFields, otherFields, planFieldList } from './fields';
export type { FieldKey, PlanField } from './fields';
export { planFormSchema, readPlanForm } from './form';
export type { FieldFault, PlanForm } from './form';
export { femalesForNineSteps } from './females';

const numbered = <T>(count: number, of: (i: number) => T): T[] =>
  Array.from({ length: count }, (_, i) => of(i + 1));
const MONTHS = 12;
const HALF_HOUR = 0.5;

/** A run planned alone is a season with one order: the same book, the same planner, the same workbook. */
export const bookInputOf = (form: PlanForm): Readonly<Record<string, unknown>> => ({
  hatchery: form.hatchery,
  plannedOn: form.plannedOn,
  orders: [
    {
      name: form.buyer,
      product: form.product,
      number: form.wanted,
      due: form.wantedOn,
      grams: form.grams,
      price: form.price,
    },
  ],
  vats: numbered(form.vats, (i) => ({ name: `Vat ${i}`, litres: form.vatLitres })),
  females: numbered(form.females, (i) => ({ tag: `F${i}`, kilograms: form.femaleWeight })),
  males: numbered(form.males, (i) => ({ tag: `M${i}` })),
  temperatures: numbered(MONTHS, () => form.temperature),
  staff: { stripFrom: form.stripHour, stripTo: Math.min(24, form.stripHour + HALF_HOUR) },
  certainty: form.certainty / 100,
  preparation: form.preparation,
  leadDays: { hormone: form.leadHormone, cysts: form.leadHormone, feed: form.leadFeed },
  water: { ph: form.ph, phWanted: form.phWanted, alkalinity: form.alkalinity, material: form.material },
  assumptions: form.assumptions,
});

/** Which question an entry of the order book came from. */
const ASKED_BY: readonly (readonly [start: string, field: string])[] = [
  ['orders.0.due', 'wantedOn'],
  ['orders.0.number', 'wanted'],
  ['orders.0.grams', 'grams'],
  ['orders.0.price', 'price'],
  ['orders', 'wanted'],
  ['vats', 'vats'],
  ['females', 'females'],
  ['males', 'males'],
  ['temperatures', 'temperature'],
  ['staff', 'stripHour'],
];
const fieldOf = (path: string): string => ASKED_BY.find(([start]) => path.startsWith(start))?.[1] ?? path;

/** The book of one order, or a sentence for each question whose answer cannot be used. */
export function readOneOrder(
  input: unknown,
): { readonly form: PlanForm; readonly book: OrderBook } | { readonly faults: readonly FieldFault[] } {
  const read = readPlanForm(input);
  if ('faults' in read) return read;
  const result = readOrderBook(bookInputOf(read.form));
  return 'book' in result
    ? { form: read.form, book: result.book }
    : { faults: result.faults.map(({ field, message }) => ({ field: fieldOf(field), message })) };
}

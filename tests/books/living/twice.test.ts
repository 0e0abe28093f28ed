import { asOf, changesOf, livingBook, LivingPages } from '../../../shared/books/living';
import { dayOfBook } from '../../../shared/books/living/reading/day';
import { planBatches } from '../../../shared/season/batches';
import type { SeasonPlan } from '../../../shared/season/types';
import type { WorkbookModel } from '../../../shared/sheet/workbook/model';
import { bookOf, checked, gridOf } from '../../season/support/support';
import type { Values } from './support';
import { readBack, typeInto } from './support';

/** A buyer comes twice, in the book: sold to the first, the second typed in, one cancelled, planned again. */
const QUICK = { draws: 200, explains: false, effort: { looks: 15_000, mostTries: 15, seed: 3 } } as const;
const book = bookOf({
  orders: [
    { name: 'Hill ponds', product: 'fry', number: 4000, due: '2027-02-25', price: 0.05 },
    { name: 'Lake farms', product: 'fingerlings', number: 6000, due: '2027-03-31', price: 0.12 },
  ],
});
const plan = planBatches(book, QUICK);
const written = livingBook(book, plan);
const { orders, log, booked } = new LivingPages(book, plan).tables;

const cellsOf = (letters: Readonly<Record<string, string>>, row: number, values: Values): Values =>
  Object.fromEntries(Object.entries(values).map(([key, value]) => [`${letters[key] ?? ''}${row}`, value]));
const again = (from: WorkbookModel, today: number) => {
  const before = readBack(from);
  const next = checked(asOf(before, today));
  const after: SeasonPlan = planBatches(next, QUICK);
  return {
    before,
    book: next,
    plan: after,
    changes: changesOf(before.plan, after),
    model: livingBook(next, after, before.typed),
  };
};
const delivered = ({ orders: all }: Pick<SeasonPlan, 'orders'>): string[] =>
  all.map((o) => `${o.order.name}: ${o.delivered}`);
const TODAY = 46_440;
const sold = typeInto(
  written,
  'Counts',
  cellsOf(log.letters, log.first, {
    at: TODAY - 0.5,
    batch: 'B1',
    what: 'sold',
    number: 500,
    order: 'O1',
    paid: 25,
  }),
);
const second = typeInto(
  typeInto(
    sold,
    'Orders',
    cellsOf(orders.letters, orders.first + 2, {
      buyer: 'Hill ponds',
      product: 'fingerlings',
      number: 2500,
      due: 46_520,
      price: 0.1,
    }),
  ),
  booked.title,
  cellsOf(booked.letters, booked.first, { date: TODAY - 1, what: 'deposit', amount: 40, order: 'O1' }),
);
const once = again(second, TODAY);

test('a second order of a buyer comes beside the first: what was sold and booked stays with the first', () => {
  expect(once.before.missing).toEqual([]);
  expect(once.book.orders.map(({ key, name, buyer }) => [key, name, buyer])).toEqual([
    ['O1', 'O1 Hill ponds', 'Hill ponds'],
    ['O2', 'Lake farms', undefined],
    ['O3', 'O3 Hill ponds', 'Hill ponds'],
  ]);
  expect(delivered(once.plan)).toEqual(['O1 Hill ponds: 500', 'Lake farms: 0', 'O3 Hill ponds: 0']);
  expect(once.book.booked.map(({ order }) => order)).toEqual(['O1 Hill ponds']);
  // The order that was there is compared with itself; the other is new.
  expect(
    once.changes.filter(({ kind }) => kind === 'order').map(({ about, before }) => [about, before]),
  ).toContainEqual(['O3 Hill ponds', 'not planned']);
  expect(once.changes.find(({ about }) => about === 'O1 Hill ponds')?.before).not.toBe('not planned');
});

test('on the sheets the name stands in the column of buyers and nowhere else; other sheets say the key', () => {
  const typed = once.model.sheets.flatMap((s) =>
    Object.entries(s.cells).flatMap(([at, { value, formula }]) =>
      formula === undefined && typeof value === 'string' && value.includes('Hill ponds')
        ? [`${s.name}!${at}`]
        : [],
    ),
  );
  expect(typed).toEqual([0, 2].map((i) => `Orders!${orders.letters.buyer}${orders.first + i}`));
  const day = dayOfBook(once.model.sheets.map(gridOf), '');
  expect(day.orders.map(({ key, name }) => `${key} ${name}`)).toEqual([
    'O1 Hill ponds',
    'O2 Lake farms',
    'O3 Hill ponds',
  ]);
  expect(day.orders.map(({ delivered: fish }) => fish)).toEqual([500, 0, 0]);
});

test('one of the two is cancelled and the book planned again: the other stays, fish sold stay sold', () => {
  const cancelled = typeInto(
    once.model,
    'Orders',
    cellsOf(orders.letters, orders.first, { cancelled: 'yes' }),
  );
  const twice = again(cancelled, TODAY + 1);
  const [first, , third] = twice.plan.orders;
  expect(first).toMatchObject({ delivered: 500, batches: [], why: 'cancelled' });
  expect(third?.order).toMatchObject({ key: 'O3', name: 'O3 Hill ponds', number: 2500, cancelled: false });
  expect(third?.batches.length).toBeGreaterThan(0);
  const fish = (of: SeasonPlan, name: string): number =>
    of.allocations.reduce((sum, a) => sum + (a.order === name ? a.fish : 0), 0);
  expect([fish(twice.plan, 'O1 Hill ponds'), fish(twice.plan, 'O3 Hill ponds')]).toEqual([0, 2500]);
  // Written, read and planned once more: nothing moves.
  const thrice = again(twice.model, TODAY + 1);
  expect(delivered(thrice.plan)).toEqual(delivered(twice.plan));
  expect(thrice.before.typed.log).toMatchObject([{ order: 'O1', number: 500, paid: 25 }]);
});

test('a sale under the name of a buyer with two orders counts for none until it is said which', () => {
  const pages = new LivingPages(once.book, once.plan, once.before.typed);
  const own = pages.tables.log;
  const row = own.first + 1;
  const named = (order: string) =>
    again(
      typeInto(
        once.model,
        own.title,
        cellsOf(own.letters, row, { at: TODAY + 0.5, batch: 'B1', what: 'sold', number: 30, order }),
      ),
      TODAY + 1,
    );
  const open = named('Hill ponds');
  expect(open.before.missing).toEqual([
    '“Counts”: Hill ponds: has more than one order (O1, O3). Write the key of the one that is meant. Until then it counts for none of them.',
  ]);
  expect(delivered(open.plan)).toEqual(delivered(once.plan));
  // The fish left the batch all the same, and the line stays as it was written.
  expect(open.plan.batches.find(({ name }) => name === 'B1')?.events.map(({ number }) => number)).toEqual([
    500, 30,
  ]);
  expect(open.before.typed.log[1]).toMatchObject({ order: 'Hill ponds', number: 30 });
  const told = named('O1');
  expect(told.before.missing).toEqual([]);
  expect(delivered(told.plan)[0]).toBe('O1 Hill ponds: 530');
});

test('the same line twice on the sheet is planned, and said on the first page under keys alone', () => {
  const copy = typeInto(
    written,
    'Orders',
    cellsOf(orders.letters, orders.first + 2, {
      buyer: 'Hill ponds',
      product: 'fry',
      number: 4000,
      due: 46_443,
    }),
  );
  expect(book.orders[0]?.due).toBe(46_443);
  const both = again(copy, 46_397);
  expect(both.plan.orders).toHaveLength(3);
  const said = both.model.sheets.find(({ name }) => name === 'Today')?.cells;
  const texts = Object.values(said ?? {}).flatMap(({ value }) => (typeof value === 'string' ? [value] : []));
  expect(texts.filter((text) => text.includes('says the same'))).toEqual([
    'O3: says the same as O1, 4\u202f000 fry for 2027-02-25. If it was typed twice, cancel one.',
  ]);
});

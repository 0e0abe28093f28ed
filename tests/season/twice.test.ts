import { planBatches } from '../../shared/season/batches';
import { calledOf } from '../../shared/season/book/orderKeys';
import { lastingNames, meaningIn, planNames, sameLines } from '../../shared/season/book/orderNames';
import type { OrderBook } from '../../shared/season/book/orderBook';
import { bookOf, checked, clockOf, faultsOf } from './support/support';

/** A buyer who comes twice has two orders; one line that stands twice word for word is asked about. */
const QUICK = { draws: 200, explains: false, effort: { looks: 15_000, mostTries: 15, seed: 3 } } as const;
const POND = { name: 'Hill ponds', product: 'fry', number: 3000, due: '2027-03-10', price: 0.05 } as const;
const LATER = { ...POND, number: 2000, due: '2027-04-20' } as const;
const OTHER = { name: 'Lake farms', product: 'fry', number: 1000, due: '2027-03-12', price: 0.05 } as const;

const namesOf = ({ orders }: OrderBook): string[] => orders.map(({ name }) => name);
const same = (book: OrderBook): string[] =>
  planBatches(book, QUICK).findings.flatMap(({ message }) =>
    message.includes('the same as') ? [message] : [],
  );

test('two orders of one buyer: each has its line, its batches and its odds', () => {
  const book = bookOf({ orders: [POND, OTHER, LATER] });
  expect(namesOf(book)).toEqual(['O1 Hill ponds', 'Lake farms', 'O3 Hill ponds']);
  expect(book.orders.map(({ buyer }) => buyer)).toEqual(['Hill ponds', undefined, 'Hill ponds']);
  expect(book.orders.map(calledOf)).toEqual(['O1 Hill ponds', 'O2 Lake farms', 'O3 Hill ponds']);
  const plan = planBatches(book, QUICK);
  const fish = (name: string): number =>
    plan.allocations.reduce((sum, a) => sum + (a.order === name ? a.fish : 0), 0);
  expect(plan.orders.map(({ order }) => order.name)).toEqual(namesOf(book));
  expect(book.orders.map(({ name }) => fish(name))).toEqual([3000, 1000, 2000]);
  expect(same(book)).toEqual([]);
});

test('a book that was read is read again the same', () => {
  const book = bookOf({ orders: [POND, OTHER, LATER] });
  expect(checked(book)).toEqual(book);
});

test.each([
  ['another day', { due: '2027-03-11' }],
  ['one fish more', { number: 3001 }],
  ['fingerlings', { product: 'fingerlings' }],
  ['another buyer', { name: 'Hill pond' }],
  ['cancelled', { cancelled: true }],
])('a line that differs in one thing is no repeat: %s', (_, change) => {
  expect(same(bookOf({ orders: [POND, { ...POND, ...change }] }))).toEqual([]);
});

test('the same line twice is planned twice and said once; of five the rest is counted', () => {
  expect(same(bookOf({ orders: [POND, OTHER, { ...POND, name: 'hill Ponds ', price: 0.06 }] }))).toEqual([
    'O3 hill Ponds: says the same as O1, 3\u202f000 fry for 2027-03-10. If it was typed twice, cancel one.',
  ]);
  const five = bookOf({ orders: Array.from({ length: 5 }, () => ({ ...POND, number: 300 })) });
  expect(same(five)).toHaveLength(4);
  expect(same(five).at(-1)).toMatch(/^1 more order says the same as another\./);
  const six = bookOf({ orders: Array.from({ length: 6 }, () => ({ ...POND, number: 300 })) });
  expect(same(six).at(-1)).toMatch(/^2 more orders say the same as another\./);
});

describe('what was sold before', () => {
  const batch = (order: string) => {
    const plan = planBatches(bookOf({ orders: [POND, LATER] }), QUICK);
    const [first] = plan.batches;
    if (!first) throw new Error('no batch');
    return {
      name: 'B1',
      clock: clockOf(first),
      eggs: first.eggs,
      events: [{ at: first.stripAt + 20, kind: 'sold', number: 700, order }],
    };
  };
  test.each([
    ['O2', 'O2 Hill ponds'],
    ['o1', 'O1 Hill ponds'],
    ['O1 Hill ponds', 'O1 Hill ponds'],
    ['somebody else', 'somebody else'],
  ])('under “%s” it counts for %s', (typed, name) => {
    const book = bookOf({
      orders: [
        { ...POND, key: 'O1' },
        { ...LATER, key: 'O2' },
      ],
      batches: [batch(typed)],
      booked: [{ date: '2027-01-05', what: 'sale', amount: 10, order: typed }],
    });
    expect(book.batches[0]?.events[0]?.order).toBe(name);
    expect(book.booked[0]?.order).toBe(name);
    const delivered = planBatches(book, QUICK).orders.map((o) => o.delivered);
    expect(delivered).toEqual(book.orders.map((order) => (order.name === name ? 700 : 0)));
  });
  test('under the buyer alone it is asked whose it is', () => {
    expect(
      faultsOf({
        orders: [POND, OTHER, LATER],
        batches: [batch('hill ponds')],
        booked: [{ date: '2027-01-05', what: 'sale', amount: 10, order: 'Hill ponds' }],
      }),
    ).toEqual([
      'batches.0.events.0.order | hill ponds: has more than one order (O1, O3). Write the key of the one that is meant.',
      'booked.0.order | Hill ponds: has more than one order (O1, O3). Write the key of the one that is meant.',
    ]);
    expect(faultsOf({ orders: [POND, OTHER], batches: [batch('Hill ponds')] })).toEqual([]);
  });
});

describe('names', () => {
  const orders = [
    { key: 'O1', name: 'Hill' },
    { key: 'O2', name: 'hill' },
    { key: 'O3', name: 'O2' },
    { key: 'O4', name: 'O1 Hill' },
    { key: 'O5', name: 'O5' },
  ];
  test('are told apart whatever buyers are called, and never two alike', () => {
    // "O1 Hill" would mean the first and is a buyer too: both go by their keys.
    expect(planNames(orders)).toEqual(['O1', 'O2 hill', 'O2', 'O4', 'O5']);
    const place = (text: string) => meaningIn(orders)(text);
    expect(place('O2')).toEqual({ kind: 'one', place: 2 });
    expect(place('o2 HILL')).toEqual({ kind: 'one', place: 1 });
    expect(place('HILL')).toEqual({ kind: 'several', places: [0, 1] });
    expect(place('nobody')).toBeUndefined();
  });
  test('that last mean the same when a second order of the buyer comes', () => {
    const one = [{ key: 'O1', name: 'Hill' }];
    const two = [...one, { key: 'O2', name: 'Hill' }];
    const [text = ''] = lastingNames(one);
    expect(meaningIn(two)(text)).toEqual({ kind: 'one', place: 0 });
  });
  test('a line without a buyer is no repeat of another', () => {
    const line = { name: ' ', product: 'fry', number: 1, due: 1 };
    expect(sameLines([line, line]).size).toBe(0);
  });
});

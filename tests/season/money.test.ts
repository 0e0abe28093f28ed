import { bookedEntries, entriesFor, moneyOf } from '../../shared/season/batches/answer/money';
import type { OrderBook } from '../../shared/season/book/orderBook';
import { serialOfDay } from '../../shared/units/dates';
import { bookOf } from './support/support';

/** What a season pays and receives, by hand: a day on each side of every limit. */
const PLANNED = serialOfDay(2027, 1, 10);
const APRIL = serialOfDay(2027, 4, 5);
const RENT = 'rent, wages and wear';
type Parts = Parameters<typeof entriesFor>[1];
const parts = (more: object = {}): Parts =>
  ({ batches: [], stays: [], purchases: [], orders: [], ...more }) as Parts;
const entries = (book: OrderBook, more: object = {}) => entriesFor(book, parts(more));
const order = (due: number, more: object = {}, of: object = {}) => ({
  order: { name: 'A', due, price: 0.1, cancelled: false, ...of },
  expected: 1000,
  delivered: 0,
  ...more,
});
const batch = (state: string, stripAt: number) => ({ name: 'B1', state, stripAt, males: ['M1', 'M2'] });

describe('rent of a month', () => {
  const days = (booked: readonly object[]): number[] =>
    entries(bookOf({ booked }), { orders: [order(APRIL, { expected: 0 })] })
      .filter(({ what, isBooked }) => what === RENT && !isBooked)
      .map(({ date }) => date);
  const firsts = [2, 3, 4].map((month) => serialOfDay(2027, month, 1));
  test('on the day of planning, and on the first of each month up to the last order', () => {
    expect(days([])).toEqual([PLANNED, ...firsts]);
  });
  test.each<readonly [string, object, boolean]>([
    ['paid in the month', { date: '2027-01-02', what: RENT, amount: -300 }, true],
    ['paid on its last day', { date: '2027-01-31', what: RENT, amount: -300 }, true],
    ['paid the month before', { date: '2026-12-31', what: RENT, amount: -300 }, false],
    ['paid in January of another year', { date: '2026-01-10', what: RENT, amount: -300 }, false],
    ['something else paid in the month', { date: '2027-01-02', what: 'salt', amount: -300 }, false],
    ['paid under a shorter name', { date: '2027-01-02', what: 'Rent', amount: -300 }, true],
    ['paid under its French name', { date: '2027-01-02', what: 'loyer', amount: -300 }, true],
    ['a word that ends in it', { date: '2027-01-02', what: 'current', amount: -300 }, false],
  ])('%s', (_, one, isPaid) => {
    expect(days([one])).toEqual(isPaid ? firsts : [PLANNED, ...firsts]);
  });
  test('a season that ends on the first of a month pays that month', () => {
    const to = (due: number): number =>
      entries(bookOf(), { orders: [order(due, { expected: 0 })] }).filter(({ what }) => what === RENT).length;
    expect([to(serialOfDay(2027, 1, 31)), to(serialOfDay(2027, 2, 1)), to(PLANNED - 5)]).toEqual([1, 2, 1]);
  });
});

test('vats cost from today on, and only while something stands in them', () => {
  const water = (from: number, to: number) =>
    entries(bookOf(), { stays: [{ batch: 'B1', from, to }] })
      .filter(({ what }) => what === 'water and power of vats')
      .map(({ amount, date }) => [amount, date]);
  expect(water(PLANNED + 1, PLANNED + 5)).toEqual([[-2, PLANNED + 5]]);
  expect(water(PLANNED - 10, PLANNED + 4)).toEqual([[-2, PLANNED + 4]]);
  expect(water(PLANNED - 10, PLANNED)).toEqual([]);
});

test.each<readonly [string, string, number, boolean]>([
  ['a planned batch', 'planned', PLANNED - 1, true],
  ['a batch stripped today', 'fixed', PLANNED, true],
  ['a batch stripped yesterday: its wages are paid', 'fixed', PLANNED - 1, false],
  ['a batch that is over', 'over', PLANNED + 3, false],
])('%s', (_, state, stripAt, pays) => {
  const what = (malesSurvive: boolean) =>
    entries(bookOf({ malesSurvive }), { batches: [batch(state, stripAt)] })
      .filter((entry) => entry.batch === 'B1')
      .map((entry) => [entry.what, entry.amount, entry.date]);
  const at = Math.max(PLANNED, stripAt);
  expect(what(true)).toEqual(pays ? [['wages and other costs of runs', -40, at]] : []);
  // Two males of 8 each.
  expect(what(false)).toEqual(
    pays
      ? [
          ['wages and other costs of runs', -40, at],
          ['males used up', -16, at],
        ]
      : [],
  );
});

test.each<readonly [string, ReturnType<typeof order>, number]>([
  ['all of it is to come', order(APRIL), 100],
  ['part was delivered', order(APRIL, { delivered: 400 }), 60],
  ['all was delivered', order(APRIL, { delivered: 1000 }), 0],
  ['more was delivered than expected', order(APRIL, { delivered: 1200 }), 0],
  ['due today', order(PLANNED), 100],
  ['due yesterday', order(PLANNED - 1), 0],
  ['cancelled', order(APRIL, {}, { cancelled: true }), 0],
  ['without a price', order(APRIL, {}, { price: undefined }), 0],
])('sales: %s', (_, one, amount) => {
  const sales = entries(bookOf(), { orders: [one] }).filter(({ what }) => what === 'sales');
  expect(sales.reduce((sum, entry) => sum + entry.amount, 0)).toBeCloseTo(amount, 9);
  expect(sales.length).toBe(amount > 0 ? 1 : 0);
});

test('what is bought is paid in its week, never before today', () => {
  const of = (week: number) =>
    entries(bookOf(), { purchases: [{ item: 'feed', week, cost: 12 }] }).find(({ what }) => what === 'feed');
  expect(of(PLANNED + 7)).toMatchObject({ date: PLANNED + 7, amount: -12, isBooked: false, isFixed: false });
  expect(of(PLANNED - 7)?.date).toBe(PLANNED);
});

test('money that was typed stays as it is; only fish sold and paid for are sales of a batch', () => {
  const book = {
    booked: [
      { date: 1, what: RENT, amount: -300 },
      { date: 2, what: 'salt', amount: -5 },
    ],
    batches: [
      {
        name: 'B1',
        events: [
          { at: 5.4, kind: 'sold', order: 'A', paid: 20, number: 100 },
          { at: 6, kind: 'sold', order: 'A', paid: 0, number: 100 },
          { at: 7, kind: 'sold', order: 'A', number: 100 },
          { at: 8, kind: 'died', paid: 9, number: 100 },
        ],
      },
    ],
  } as unknown as OrderBook;
  expect(
    bookedEntries(book).map(({ date, what, amount, isBooked, isFixed }) => [
      date,
      what,
      amount,
      isBooked,
      isFixed,
    ]),
  ).toEqual([
    [1, RENT, -300, true, true],
    [2, 'salt', -5, true, false],
    [5, 'sales', 20, true, false],
  ]);
});

test('what a season earns: sales, cost, profit and where it breaks even', () => {
  const entry = (what: string, amount: number, isFixed = false) => ({
    date: PLANNED,
    what,
    amount,
    isBooked: false,
    isFixed,
  });
  const { money } = moneyOf(
    bookOf(),
    [
      entry('sales', 1000),
      entry('sales', -50),
      entry('a grant', 50),
      entry('feed', -200),
      entry('salt', -300),
      entry('feed', -100),
      entry(RENT, -100, true),
    ],
    [{ expected: 6000 }, { expected: 4000 }] as never,
  );
  expect(money).toMatchObject({ sales: 1000, cost: 700, profit: 300, margin: 0.3, costPerFish: 0.07 });
  // What was paid back stands among the costs by its name, the dearest first.
  expect(money.costs.map(({ what, amount }) => [what, amount])).toEqual([
    ['feed', 300],
    ['salt', 300],
    [RENT, 100],
    ['sales', 50],
  ]);
  // 600 of 700 go with the fish: 0.06 each; 100 are fixed, sold at 0.1.
  expect(money.breakEvenPrice).toBeCloseTo(0.07, 12);
  expect(money.breakEvenNumber).toBeCloseTo(2500, 9);
});

import { planBatches } from '../../shared/season/batches';
import { breachesOf } from './support/batchRules';
import { randomBook } from './support/randomBooks';
import { bookOf } from './support/support';

const QUICK = { draws: 0, explains: false, effort: { looks: 40_000, mostTries: 40, seed: 3 } };

test('a hundred random order books, planned at their certainty and on the mean: no rule is broken', () => {
  const breaches: string[] = [];
  let [batches, fish] = [0, 0];
  for (let seed = 0; seed < 100; seed++) {
    const book = randomBook(seed);
    const plan = planBatches(book, { ...QUICK, planOn: seed % 2 === 0 ? 'certainty' : 'mean' });
    batches += plan.batches.length;
    fish += plan.allocations.reduce((sum, x) => sum + x.fish, 0);
    for (const breach of breachesOf(book, plan)) breaches.push(`book ${seed}: ${breach}`);
  }
  expect(breaches).toEqual([]);
  expect(batches).toBeGreaterThan(100);
  expect(fish).toBeGreaterThan(100_000);
});

test('the checker sees what is wrong: the same plan judged by a stricter book', () => {
  const book = randomBook(1);
  const stricter = {
    ...book,
    cleaningDays: 30,
    holdDays: 0,
    restDays: 400,
    malesSurvive: false,
    plannedOn: book.plannedOn + 400,
    staff: { ...book.staff, femalesPerDay: 0, weekdays: [] },
  };
  const said = breachesOf(stricter, planBatches(book, QUICK)).join(' ');
  expect(said).toMatch(/in the past/);
  expect(said).toMatch(/day off/);
  expect(said).toMatch(/too few hands/);
});

test('a small order beside a big one costs no female of its own', () => {
  const orders = [
    { name: 'Big', product: 'fry', number: 8000, due: '2027-04-10', price: 0.1 },
    { name: 'Small', product: 'fry', number: 2000, due: '2027-04-12', price: 0.1 },
    { name: 'Nursed', product: 'fingerlings', number: 1500, due: '2027-05-09', price: 0.2 },
  ];
  const plan = planBatches(bookOf({ orders, certainty: 0.7 }), { ...QUICK, draws: 300 });
  expect(plan.batches).toHaveLength(1);
  expect(plan.allocations.map(({ order }) => order).sort()).toEqual(['Big', 'Nursed', 'Small']);
  expect(plan.canBeMet).toBe(true);
});

test.each([
  ['no vats that hold eggs', { vats: [{ name: 'v', litres: 500, holds: ['nursing'] }] }],
  ['no females', { females: [] }],
  ['no males', { males: [] }],
  [
    'a thousand orders on one day',
    {
      orders: Array.from({ length: 1000 }, (_, i) => ({
        name: `o${i}`,
        product: 'fry',
        number: 100,
        due: '2027-04-10',
      })),
    },
  ],
  ['an order of one fish', { orders: [{ name: 'one', product: 'fry', number: 1, due: '2027-04-10' }] }],
  ['five million fish', { orders: [{ name: 'all', product: 'fry', number: 5_000_000, due: '2027-04-10' }] }],
])('%s: a plan that keeps the rules', (_, changes) => {
  const book = bookOf(changes);
  const plan = planBatches(book, { ...QUICK, draws: 100 });
  expect(breachesOf(book, plan)).toEqual([]);
  expect(plan.orders).toHaveLength(book.orders.length);
  if (!plan.canBeMet) expect(plan.findings.length).toBeGreaterThan(0);
});

test('the same book gives the same plan', () => {
  const book = randomBook(4);
  expect(planBatches(book, { ...QUICK, draws: 50 })).toEqual(planBatches(book, { ...QUICK, draws: 50 }));
});

import { planBatchesSteps } from '../../shared/season/batches';
import { bookOf } from './support/support';

/** A bar that shows how far planning is never goes back: it is read as how long is left to wait. */
const one = (number: number): object => ({
  orders: [{ name: 'Pond club', product: 'fry', number, due: '2027-03-31' }],
});
const EFFORT = { looks: 20_000, mostTries: 60, seed: 1 };

test.each<readonly [string, object]>([
  ['a small season', {}],
  ['an order far too large', one(4_000_000)],
  ['an order whose ways out must be joined', { ...one(4_000_000), females: [], males: [] }],
  ['an order that chance alone makes unsure', { ...one(10_000), lost: 0.3 }],
  [
    'twelve orders',
    { orders: Array.from({ length: 12 }, (_, i) => ({ ...order(i), number: 4000 * (i + 1) })) },
  ],
])('%s: the share done only grows', (_, changes) => {
  const shares = [...planBatchesSteps(bookOf(changes), { draws: 100, effort: EFFORT })];
  expect(shares.filter((share, i) => share < (shares[i - 1] ?? 0) - 1e-9)).toEqual([]);
  expect(Math.max(...shares)).toBeLessThanOrEqual(1 + 1e-9);
});

function order(i: number): object {
  return { name: `order ${i}`, product: 'fry', due: `2027-04-${10 + i}` };
}

import { planBatches } from '../../shared/season/batches';
import { givenBy, giftsOf } from '../../shared/season/batches/search/reserve';
import type { Batch, BatchSchedule } from '../../shared/season/batches/search/schedule';
import { breachesOf } from './support/batchRules';
import { randomBook } from './support/randomBooks';

/** A batch that stands in against bad luck is for the order it stands in for. */
const batch = (id: number, ...shares: readonly (readonly [task: number, fish: number])[]): Batch =>
  ({ id, fixed: undefined, shares: shares.map(([task, fish]) => ({ task, fish })) }) as unknown as Batch;
const schedule = (...numbers: readonly number[]): BatchSchedule =>
  ({
    problem: { tasks: numbers.map((number) => ({ order: { number } })), delivered: numbers.map(() => 0) },
  }) as unknown as BatchSchedule;
const gifts = (of: BatchSchedule, batches: readonly Batch[]): number[][] =>
  [...giftsOf(of, batches).values()].map((given) => given.map(({ fish }) => fish));

test.each([
  ['enough for each: the first gives what it has', [10], [[[0, 6]], [[0, 4]]], [[6], [4]]],
  ['fish on top of the order are nobody’s', [10], [[[0, 6]], [[0, 9]]], [[6], [4]]],
  ['the second stands in wholly: it has its part', [100], [[[0, 110]], [[0, 10]]], [[92], [8]]],
  [
    'it stands in for one and feeds another',
    [100, 5],
    [
      [[0, 110]],
      [
        [0, 10],
        [1, 5],
      ],
    ],
    [[100], [0, 5]],
  ],
  ['two stand in', [100], [[[0, 100]], [[0, 60]], [[0, 40]]], [[50], [30], [20]]],
  ['it stands in with one fish', [10], [[[0, 10]], [[0, 1]]], [[9], [1]]],
  [
    'it stands in for one fish, the first has another buyer',
    [1, 5],
    [
      [
        [0, 1],
        [1, 5],
      ],
      [[0, 1]],
    ],
    [[0, 5], [1]],
  ],
  ['one fish is not shared', [1], [[[0, 1]], [[0, 1]]], [[1], [0]]],
] as const)('%s', (_, numbers, shares, given) => {
  const batches = shares.map((own, i) => batch(i, ...own));
  expect(gifts(schedule(...numbers), batches)).toEqual(given);
});

test('nothing is given twice, whatever is kept', () => {
  const batches = [batch(1, [0, 50]), batch(2, [0, 50]), batch(3, [0, 50])];
  const kept = new Map([[3, new Map([[0, 70]])]]);
  expect([...givenBy(batches, [60], kept).values()].flat().map(({ fish }) => fish)).toEqual([0, 0, 50]);
});

test('a book whose order is sure enough only with a batch more: that batch has a buyer', () => {
  const book = randomBook(1011);
  const plan = planBatches(book, { draws: 200, explains: false });
  expect(breachesOf(book, plan)).toEqual([]);
  const third = plan.allocations.filter(({ order }) => order === 'order 3');
  expect(third.map(({ batch: name }) => name)).toEqual(['B1', 'B2']);
  expect(third.reduce((sum, { fish }) => sum + fish, 0)).toBe(22_571);
  for (const { promised } of plan.batches) expect(promised).toBeGreaterThan(0);
}, 60_000);

import { runNow } from '../../shared/base/steps';
import { batchProblemOf } from '../../shared/season/batches/problem';
import { searchSteps } from '../../shared/season/batches/search/search';
import type { BatchSchedule } from '../../shared/season/batches/search/schedule';
import { isMetTask } from '../../shared/season/batches/search/serve';
import { unsureSteps } from '../../shared/season/batches/chance/unsure';
import type { OrderBook } from '../../shared/season/book/orderBook';
import { BOOK, bookOf } from './support/support';

/** Orders that are planned whole and less sure than wanted: what is said, and that it is true. */

const EFFORT = { looks: 30_000, mostTries: 30, seed: 3, sequences: 1 } as const;
const bookAt = (certainty: number, females: number): OrderBook =>
  bookOf({
    certainty,
    orders: [{ name: 'Lake farms', product: 'fingerlings', number: 4000, due: '2027-03-31', price: 0.12 }],
    females: BOOK.females.slice(0, females),
  });
const wholeAt = (certainty: number, females: number): BatchSchedule => {
  const schedule = runNow(searchSteps(batchProblemOf(bookAt(certainty, females)).problem, EFFORT));
  expect(schedule.problem.tasks.every((_, t) => isMetTask(schedule, t))).toBe(true);
  return schedule;
};
const said = (wanted: number, plannedAt: number, females: number): string[] =>
  runNow(unsureSteps(bookAt(wanted, females), wholeAt(plannedAt, females), EFFORT)).map(
    ({ message }) => message,
  );

test('it names the odds, how far short they are, and a change that truly makes the order surer', () => {
  const [odds = '', help = ''] = said(0.95, 0.8, 2);
  const [, share = NaN, lack = NaN] = (
    /in (\d+) % of seasons: (\d+) points? short of the 95 %/.exec(odds) ?? []
  ).map(Number);
  // Each is rounded by itself.
  expect(Math.abs(share + lack - 95)).toBeLessThanOrEqual(1);
  expect(help).toContain('one more female');
  expect(help).not.toContain('several things');
  for (const [, then] of help.matchAll(/\((\d+) % of seasons\)/g))
    expect(Number(then)).toBeGreaterThan(share);
});

test('without a change that helps only the odds are said, and what may be asked for', () => {
  const one = { ...bookAt(0.99, 2).staff, femalesPerDay: 1 };
  const none = runNow(
    unsureSteps({ ...bookAt(0.99, 2), staff: one }, wholeAt(0.8, 2), { ...EFFORT, looks: 10 }),
  ).map(({ message }) => message);
  expect(none).toEqual([
    expect.stringMatching(/^Lake farms is planned whole and comes whole in \d+ % of seasons: /),
    expect.stringMatching(/^Ask for \d+ %, or promise the smaller number\.$/),
  ]);
});

test('an order that is as sure as wanted is left in peace', () => {
  expect(said(0.8, 0.8, 2)).toEqual([]);
});

import { planBatches } from '../../../shared/season/batches';
import { batchProblemOf } from '../../../shared/season/batches/problem';
import { search } from '../../../shared/season/batches/search/search';
import { isMetTask } from '../../../shared/season/batches/search/serve';
import { breachesOf } from '../../season/support/batchRules';
import MERGED from '../../data/season/mergedByHand.json';
import { hatcheryOf } from '../../season/support/hatcheries';
import { randomBook } from '../../season/support/randomBooks';

/** LONG=full looks at all of them; a part of them is enough from day to day. */
const isFull = process.env['LONG'] === 'full';
const BOOKS = isFull ? 300 : 24;
const SHORT = isFull ? 40 : 8;

test(`${BOOKS} random order books: no rule is broken`, () => {
  const breaches: string[] = [];
  for (let seed = 1000; seed < 1000 + BOOKS; seed++) {
    const book = randomBook(seed);
    const plan = planBatches(book, { draws: 200, explains: false });
    for (const breach of breachesOf(book, plan)) breaches.push(`book ${seed}: ${breach}`);
  }
  expect(breaches).toEqual([]);
}, 900_000);

test('every short book says what binds, and a change that helps or that none of a named set does', () => {
  const silent: string[] = [];
  let short = 0;
  let helped = 0;
  for (let seed = 2000; seed < 2000 + SHORT; seed++) {
    const plan = planBatches(randomBook(seed), { draws: 0 });
    if (!plan.short) continue;
    short++;
    if (plan.short.changes.length > 0) helped++;
    if (plan.short.binding === undefined || (plan.short.changes.length === 0 && plan.short.tried.length < 12))
      silent.push(`book ${seed}`);
  }
  console.log(`${short} short books, ${helped} with a change that helps`);
  expect(short).toBeGreaterThan(SHORT / 2);
  expect(silent).toEqual([]);
}, 900_000);

/**
 * What a planner that gives every order runs of its own makes of the same hatcheries after small orders of one
 * product, due within three days of each other, were brought together by hand (their fish then wait that much
 * less): orders met, fish, females. Worked out once by that planner before it was given up; hatcheries 500 to
 * 519 were never looked at while the search was made. That planner expected eggs of a tenth of a female's
 * weight, so the other does too.
 */
const THEN = { assumptions: { eggShare: 0.1 } };
test.each([
  ['the twenty first', 0, 20] as const,
  ...(isFull ? [['twenty fresh ones', 20, 40] as const] : []),
])(
  'hatcheries with small orders, %s: at least 95 %% of what the same orders give brought together by hand, and no more females',
  (_, from, to) => {
    const sum = { orders: 0, merged: 0, met: 0, fish: 0, batchFish: 0, females: 0, batchFemales: 0 };
    for (const row of MERGED.slice(from, to)) {
      const { problem } = batchProblemOf(hatcheryOf(row.hatchery, THEN), 'mean');
      const found = search(problem);
      sum.orders += row.orders;
      sum.merged += row.met;
      sum.fish += row.fish;
      sum.females += row.females;
      problem.tasks.forEach(({ wanted }, t) => {
        sum.batchFish += wanted - (found.need[t] ?? 0);
        if (isMetTask(found, t)) sum.met++;
      });
      for (const { pairs } of found.batches.values()) sum.batchFemales += pairs.length;
    }
    console.log(JSON.stringify(sum));
    expect(sum.met).toBeGreaterThanOrEqual(0.95 * sum.merged);
    expect(sum.batchFish).toBeGreaterThanOrEqual(0.95 * sum.fish);
    expect(sum.batchFemales).toBeLessThanOrEqual(sum.females);
  },
  900_000,
);

import { planBatches } from '../../../shared/season/batches';
import { batchProblemOf } from '../../../shared/season/batches/problem';
import { search } from '../../../shared/season/batches/search';
import { isMetTask } from '../../../shared/season/batches/serve';
import { problemOf } from '../../../shared/season/problem';
import { deliveredOf, solve } from '../../../shared/season/solve';
import { breachesOf } from '../../season/batchRules';
import { hatcheryOf, mergedByHand } from '../../season/hatcheries';
import { randomBook } from '../../season/randomBooks';

test('three hundred random order books: no rule is broken', () => {
  const breaches: string[] = [];
  for (let seed = 1000; seed < 1300; seed++) {
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
  for (let seed = 2000; seed < 2040; seed++) {
    const plan = planBatches(randomBook(seed), { draws: 0 });
    if (!plan.short) continue;
    short++;
    if (plan.short.changes.length > 0) helped++;
    if (plan.short.binding === undefined || (plan.short.changes.length === 0 && plan.short.tried.length < 12))
      silent.push(`book ${seed}`);
  }
  console.log(`${short} short books, ${helped} with a change that helps`);
  expect(short).toBeGreaterThan(20);
  expect(silent).toEqual([]);
}, 900_000);

test('twenty hatcheries with small orders: at least 95 % of what the same orders give brought together by hand, and no more females', () => {
  const sum = { orders: 0, typed: 0, merged: 0, fish: 0, females: 0, met: 0, batchFish: 0, batchFemales: 0 };
  for (let h = 0; h < 20; h++) {
    const book = hatcheryOf(h);
    sum.orders += book.orders.length;
    const typed = problemOf(book).problem;
    sum.typed += deliveredOf(solve(typed)).filter((n, t) => n >= (typed.tasks[t]?.wanted ?? 0) - 0.5).length;
    const merged = mergedByHand(book);
    const { problem } = problemOf(merged.book);
    const schedule = solve(problem);
    deliveredOf(schedule).forEach((fish, t) => {
      sum.fish += fish;
      let left = fish + 0.5;
      for (const { number } of merged.parts.get(problem.tasks[t]?.order.name ?? '') ?? [])
        if (left >= number) {
          sum.merged++;
          left -= number;
        }
    });
    sum.females += schedule.runs.reduce((n, run) => n + run.pairs.length, 0);
    const batches = batchProblemOf(book, 'mean').problem;
    const found = search(batches);
    batches.tasks.forEach(({ wanted }, t) => {
      sum.batchFish += wanted - (found.need[t] ?? 0);
      if (isMetTask(found, t)) sum.met++;
    });
    for (const { pairs } of found.batches.values()) sum.batchFemales += pairs.length;
  }
  console.log(JSON.stringify(sum));
  expect(sum.met).toBeGreaterThanOrEqual(0.95 * sum.merged);
  expect(sum.batchFish).toBeGreaterThanOrEqual(0.95 * sum.fish);
  expect(sum.batchFemales).toBeLessThanOrEqual(sum.females);
}, 900_000);

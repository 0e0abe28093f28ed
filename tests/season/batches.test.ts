import { planBatches } from '../../shared/season/batches';
import { breachesOf } from './batchRules';
import { randomBook } from './randomBooks';

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

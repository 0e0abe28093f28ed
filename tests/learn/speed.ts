/** Run by speed.test.ts in a plain Node process, as the shipped bundle runs: best time of learning from 400 runs, in ms. */
import { learnRates, trendsOf } from '../../shared/learn';
import { demoFarm } from './demoFarm';

const records = demoFarm(400);
const best = (work: () => unknown): number => Math.min(...Array.from({ length: 4 }, () => {
  const from = performance.now();
  work();
  return performance.now() - from;
}));
console.log(JSON.stringify({ rates: best(() => learnRates(records)), trends: best(() => trendsOf(records)) }));

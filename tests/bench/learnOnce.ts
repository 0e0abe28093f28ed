/**
 * Run by learn.ts in a plain Node process, as the shipped bundle runs: processor time of learning from
 * 400 runs, best of a few, in ms.
 */
import { learnRates, trendsOf } from '../../shared/learn';
import { demoFarm } from '../learn/support/demoFarm';

const records = demoFarm(400);
const best = (work: () => unknown): number =>
  Math.min(
    ...Array.from({ length: 4 }, () => {
      const from = process.cpuUsage();
      work();
      const { user, system } = process.cpuUsage(from);
      return (user + system) / 1000;
    }),
  );
console.log(
  JSON.stringify({ rates: best(() => learnRates(records)), trends: best(() => trendsOf(records)) }),
);

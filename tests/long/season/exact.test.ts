import { batchProblemOf } from '../../../shared/season/batches/problem';
import { search } from '../../../shared/season/batches/search/search';
import { isMetTask } from '../../../shared/season/batches/search/serve';
import { bestWorth } from '../../season/support/exactBatches';
import { tinyBook } from '../../season/support/tinyBooks';
import { percent, quote } from '../../support/figures';

const WHOLE_ORDERS = 0.004;

/** LONG=full solves all sixty; some are enough from day to day. */
const SEASONS = process.env['LONG'] === 'full' ? 60 : 20;

test(`${SEASONS} tiny seasons: none more than 2 % below the optimum of HiGHS, none above it`, async () => {
  const gaps: number[] = [];
  for (let seed = 0; seed < SEASONS; seed++) {
    const { problem } = batchProblemOf(tinyBook(seed), 'mean');
    const { worth: best, isProven } = await bestWorth(problem);
    if (!isProven) continue;
    const schedule = search(problem);
    const whole = problem.tasks.reduce((sum, { value, wanted }) => sum + value * wanted, 0);
    const worth = problem.tasks.reduce(
      (sum, { value, wanted }, t) =>
        sum +
        value * (wanted - (schedule.need[t] ?? 0)) +
        (isMetTask(schedule, t) ? (whole * WHOLE_ORDERS) / problem.tasks.length : 0),
      0,
    );
    gaps.push(best > 0 ? 1 - worth / best : 0);
  }
  console.log(`${gaps.length} proven; worst ${(100 * Math.max(...gaps)).toFixed(2)} %`);
  quote(
    'season.worstGap',
    percent(Math.max(...gaps)),
    'Furthest below the best possible plan, of small seasons solved exactly',
  );
  expect(gaps.length).toBeGreaterThanOrEqual(0.9 * SEASONS);
  expect(Math.max(...gaps)).toBeLessThanOrEqual(0.02);
  expect(Math.min(...gaps)).toBeGreaterThan(-0.001);
}, 900_000);

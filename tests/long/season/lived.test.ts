import { liveSeason } from '../../season/support/livedSeason';

/** LONG=full lives all twenty; some are enough from day to day. */
const SEASONS = process.env['LONG'] === 'full' ? 20 : 6;

test(`${SEASONS} seasons, planned again every week and every three, keep every fish, coin and tick`, () => {
  const wrong: string[] = [];
  let sold = 0;
  for (let seed = 0; seed < SEASONS; seed++)
    for (const days of [7, 21]) {
      const lived = liveSeason(seed, days);
      sold += lived.sold;
      wrong.push(...lived.wrong.map((sentence) => `season ${seed}, every ${days}: ${sentence}`));
    }
  console.log(`${sold} fish sold`);
  expect(wrong).toEqual([]);
}, 900_000);

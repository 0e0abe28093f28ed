import { liveSeason } from './support/livedSeason';

test.each([
  [3, 7],
  [11, 21],
])(
  'season %i lived and planned again every %i days keeps every fish, coin and tick',
  (seed, days) => {
    const { wrong, sold, batches, plans } = liveSeason(seed, days);
    expect(wrong).toEqual([]);
    expect(batches).toBeGreaterThan(3);
    expect(sold).toBeGreaterThan(1000);
    expect(plans).toBeGreaterThan(5);
  },
  120_000,
);

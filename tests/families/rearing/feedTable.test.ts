import fc from 'fast-check';
import { feedTable } from '../../../shared/families/feeding/kernels/feedTable';
import { rationTable } from '../../../shared/families/feeding/kernels/rationTable';
import { liveShare, weaningTable } from '../../../shared/families/feeding/kernels/weaning';
import { weightAfter } from '../../../shared/families/growth/kernels/specificGrowth';
import '../../support/printed';
import { column, rowsOf, sentenceOf } from '../../support/sheet';

const SEED = { seed: 20260302, numRuns: 60 };
const plan = fc.record({
  fish: fc.integer({ min: 0, max: 2_000_000 }),
  weight: fc.double({ min: 0.001, max: 50, noNaN: true }),
  days: fc.integer({ min: 1, max: 120 }),
  growth: fc.double({ min: 0, max: 12, noNaN: true }),
  survival: fc.double({ min: 0.01, max: 1, noNaN: true }),
  meals: fc.integer({ min: 1, max: 12 }),
  bag: fc.double({ min: 100, max: 25000, noNaN: true }),
  ration: fc.double({ min: 0, max: 0.3, noNaN: true }),
});

test('fish never increase, weights never fall, every row adds up, bags cover what was fed', () => {
  fc.assert(
    fc.property(plan, ({ ration, ...p }) => {
      const table = feedTable({ ...p, rationAt: () => ration });
      expect(table).toHaveLength(p.days);
      let fed = 0;
      table.forEach((row, i) => {
        const before = table[i - 1];
        if (before) {
          expect(row.fish).toBeLessThanOrEqual(before.fish);
          expect(row.weight).toBeGreaterThanOrEqual(before.weight);
          expect(row.bags).toBeGreaterThanOrEqual(before.bags);
        }
        expect(row.ration).toBeCloseTo(row.fish * row.weight * ration, 6);
        expect(row.perMeal * p.meals).toBeCloseTo(row.ration, 6);
        fed += row.fish * row.weight * ration;
        expect(Math.abs(row.fed - fed)).toBeLessThanOrEqual(1e-9 * Math.max(1, fed));
        expect(row.bags * p.bag).toBeGreaterThanOrEqual(row.fed * (1 - 1e-9) - 1e-8 * p.bag);
        expect((row.bags - 1) * p.bag).toBeLessThanOrEqual(row.fed * (1 + 1e-9) + 1e-6 * p.bag);
      });
      expect(Number.isInteger(table[0]?.fish)).toBe(true);
      expect(table[0]?.fish).toBe(p.fish);
    }),
    SEED,
  );
});

test(
  'mass balance: with a ration that follows from growth and conversion, feed over gain ' +
    'is the conversion',
  () => {
    // No deaths: the gain of a day is weight × (e^(g/100) − 1); feed that times 1.3 and the whole table must
    // give 1.3 back.
    const growth = 6;
    const ration = 1.3 * Math.expm1(growth / 100);
    const table = feedTable({
      fish: 1000,
      weight: 2,
      days: 30,
      growth,
      survival: 1,
      meals: 3,
      bag: 15000,
      rationAt: () => ration,
    });
    const gained = 1000 * (weightAfter(2, growth, 30) - 2);
    expect((table.at(-1)?.fed ?? 0) / gained).toBeCloseTo(1.3, 10);
  },
);

test('the survival asked for is reached after the last day, not before', () => {
  const table = feedTable({
    fish: 1_000_000,
    weight: 1,
    days: 10,
    growth: 0,
    survival: 0.5,
    meals: 1,
    bag: 1000,
    rationAt: () => 0.1,
  });
  const last = table.at(-1)?.fish ?? 0;
  expect(last).toBeGreaterThan(500_000);
  expect(Math.round(last * 0.5 ** 0.1)).toBe(500_000);
});

test('dates run from the start, blank without one; bags of 15 kg unless said otherwise', () => {
  const dated = rowsOf(
    'FEED.TABLE',
    20000,
    5,
    3,
    2,
    0.08,
    45000.6,
    null,
    null,
    null,
    null,
    null,
    null,
    null,
    false,
  );
  expect(dated.map((row) => row[1])).toEqual([45000, 45001, 45002]);
  expect(dated[0]?.[8]).toBe(1);
  expect(dated[1]?.[8]).toBe(2);
  expect(
    rowsOf('FEED.TABLE', 20000, 5, 1, 2, 0.08, null, null, null, null, null, null, null, null, false)[0]?.[1],
  ).toBe('');
});

test('headings stand on top unless left out', () => {
  expect(rowsOf('FEED.TABLE', 10, 5, 1, 2, 0.08)[0]?.slice(0, 5)).toEqual([
    'Day',
    'Date',
    'Fish',
    'Mean weight (g)',
    'Feed (g)',
  ]);
});

const TABLE = [
  { weight: 4, ration: 0.06 },
  { weight: 1, ration: 0.1 },
  { weight: 20, ration: 0.04 },
];
const look = rationTable(TABLE);

test('a ration lies between the rows around it, meets the rows, and is not guessed outside', () => {
  fc.assert(
    fc.property(fc.double({ min: 1, max: 20, noNaN: true }), (weight) => {
      const ration = look(weight);
      expect(ration).toBeGreaterThanOrEqual(0.04 - 1e-12);
      expect(ration).toBeLessThanOrEqual(0.1 + 1e-12);
    }),
    SEED,
  );
  for (const row of TABLE) expect(look(row.weight)).toBe(row.ration);
  expect(look(0.99)).toBeNaN();
  expect(look(20.01)).toBeNaN();
});

test('with temperatures: the neighbours are joined, a missing corner is not guessed', () => {
  const warm = TABLE.map((r) => ({ ...r, temperature: 26 })).concat([
    { weight: 1, ration: 0.12, temperature: 30 },
    { weight: 4, ration: 0.08, temperature: 30 },
  ]);
  const warmLook = rationTable(warm);
  expect(warmLook(4, 28)).toBeCloseTo(0.07, 12);
  expect(warmLook(20, 26)).toBe(0.04);
  expect(warmLook(20, 28)).toBeNaN();
  expect(warmLook(4, 31)).toBeNaN();
});

test('the feed table follows a ration table by weight and temperature', () => {
  const weights = column(1, 4, 1, 4);
  const rations = column(0.1, 0.06, 0.14, 0.1);
  const at = (temperature: number): number =>
    Number(
      rowsOf(
        'FEED.TABLE',
        1000,
        2,
        1,
        0,
        null,
        null,
        null,
        null,
        null,
        weights,
        rations,
        temperature,
        column(24, 24, 28, 28),
        false,
      )[0]?.[4],
    );
  expect([at(24), at(26), at(28)].map((g) => g.toFixed(6))).toEqual([
    '160.000000',
    '200.000000',
    '240.000000',
  ]);
  expect(
    sentenceOf(
      'FEED.TABLE',
      1000,
      2,
      1,
      0,
      null,
      null,
      null,
      null,
      null,
      weights,
      rations,
      30,
      column(24, 24, 28, 28),
    ),
  ).toContain('at 30 °C');
});

test.each([
  ['weight in kilograms', [1000, 0.0003, 10, 5, 0.05], 'That looks like kilograms: 0.0003 kg is 0.3 g'],
  ['ration in plain percent', [1000, 2, 10, 5, 5], 'type 5% or 0.05'],
  ['survival in plain percent', [1000, 2, 10, 5, 0.05, null, 90], 'type 90% or 0.9'],
  ['no days', [1000, 2, 0, 5, 0.05], 'days: expected a whole number from 1'],
  ['negative fish', [-5, 2, 10, 5, 0.05], 'fish: expected'],
  [
    'both a ration and a table',
    [1000, 2, 10, 5, 0.05, null, null, null, null, column(1, 9), column(0.1, 0.05)],
    'leave one of them blank',
  ],
  ['half a table', [1000, 2, 10, 5, null, null, null, null, null, column(1, 9)], 'give both'],
  [
    'a table with a gap',
    [1000, 2, 10, 5, null, null, null, null, null, column(1, 9), column(0.1, null)],
    'row 2: the cell is blank',
  ],
])('%s', (_what, args, says) => {
  expect(sentenceOf('FEED.TABLE', ...args)).toContain(says);
});

test('live food: alone at first, half on day 8, none from day 11, larvae never increase', () => {
  expect([1, 5, 8, 11, 20].map((d) => liveShare(d, 5, 6))).toEqual([1, 1, 0.5, 0, 0]);
  expect([5, 6].map((d) => liveShare(d, 5, 0))).toEqual([1, 0]);
  const table = weaningTable({
    larvae: 50000,
    days: 12,
    naupliiPerLarva: 100,
    survival: 0.8,
    liveOnly: 5,
    mixed: 6,
    naupliiPerGram: 230600,
    harvest: 0.8,
  });
  table.forEach((row, i) => {
    expect(row.live + row.dry).toBeCloseTo(1, 12);
    expect(row.larvae).toBeLessThanOrEqual(table[i - 1]?.larvae ?? Infinity);
    expect(row.cysts * 230600 * 0.8).toBeCloseTo(row.nauplii, 3);
  });
  expect(table[0]?.cysts).toAgreeWithPrinted('27.1');
});

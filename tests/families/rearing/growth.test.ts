import fc from 'fast-check';
import { feedConversion } from '../../../shared/families/growth/kernels/feedConversion';
import { sizeClasses, sizeSpread } from '../../../shared/families/growth/kernels/sizeSpread';
import {
  daysToWeight,
  specificGrowth,
  weightAfter,
} from '../../../shared/families/growth/kernels/specificGrowth';
import { dailySurvival, survivorsAfter } from '../../../shared/families/growth/kernels/survival';
import {
  daysByThermal,
  thermalGrowth,
  weightByThermal,
} from '../../../shared/families/growth/kernels/thermalGrowth';
import '../../support/printed';
import { column, rowsOf, sentenceOf } from '../../support/sheet';

const SEED = { seed: 20260303, numRuns: 400 };
const weight = fc.double({ min: 0.001, max: 2000, noNaN: true });
const days = fc.double({ min: 0.5, max: 300, noNaN: true });

test('growth, weight and days undo each other', () => {
  fc.assert(
    fc.property(weight, weight, days, (a, b, d) => {
      const [start, end] = [Math.min(a, b), Math.max(a, b) * 1.01];
      const rate = specificGrowth(start, end, d);
      expect(weightAfter(start, rate, d) / end).toBeCloseTo(1, 9);
      expect(daysToWeight(start, end, rate) / d).toBeCloseTo(1, 9);
      for (const scale of [100, 1000]) {
        const c = thermalGrowth(start, end, 27, d, scale);
        expect(weightByThermal(start, c, 27, d, scale) / end).toBeCloseTo(1, 9);
        expect(daysByThermal(start, end, c, 27, scale) / d).toBeCloseTo(1, 9);
      }
    }),
    SEED,
  );
});

test('splitting the time at any day changes nothing', () => {
  fc.assert(
    fc.property(weight, days, fc.double({ min: 0, max: 1, noNaN: true }), (w, d, part) => {
      const whole = weightAfter(w, 3, d);
      expect(weightAfter(weightAfter(w, 3, d * part), 3, d * (1 - part)) / whole).toBeCloseTo(1, 9);
      const thermal = weightByThermal(w, 1.2, 27, d, 1000);
      expect(
        weightByThermal(weightByThermal(w, 1.2, 27, d * part, 1000), 1.2, 27, d * (1 - part), 1000) / thermal,
      ).toBeCloseTo(1, 9);
    }),
    SEED,
  );
});

test('survivors never increase, and daily survival gives the total back', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 1, max: 1e6 }),
      fc.double({ min: 0, max: 1, noNaN: true }),
      days,
      days,
      (n, share, d, more) => {
        const daily = dailySurvival(n, n * share, d);
        expect(survivorsAfter(n, daily, d)).toBeCloseTo(n * share, 4);
        expect(survivorsAfter(n, daily, d + more)).toBeLessThanOrEqual(
          survivorsAfter(n, daily, d) * (1 + 1e-12),
        );
      },
    ),
    SEED,
  );
});

test('biological conversion is never worse than economic; without deaths they are one', () => {
  fc.assert(
    fc.property(weight, weight, fc.double({ min: 0, max: 50, noNaN: true }), (feed, gain, dead) => {
      const got = feedConversion(feed, 10, 10 + gain, dead);
      expect(got.biological).toBeLessThanOrEqual(got.economic * (1 + 1e-12));
      expect(feedConversion(feed, 10, 10 + gain, 0)).toMatchObject({ biological: got.economic });
    }),
    SEED,
  );
});

test('spread does not change with the unit or the order; classes hold every fish once', () => {
  fc.assert(
    fc.property(
      fc.array(weight, { minLength: 2, maxLength: 60 }),
      fc.array(weight, { minLength: 1, maxLength: 5 }),
      (list, cuts) => {
        const got = sizeSpread(list);
        expect(sizeSpread([...list].reverse()).variation).toBeCloseTo(got.variation, 9);
        expect(sizeSpread(list.map((w) => w * 7)).variation).toBeCloseTo(got.variation, 9);
        expect(got.smallest).toBeLessThanOrEqual(got.mean * (1 + 1e-12));
        expect(got.largest).toBeGreaterThanOrEqual(got.mean * (1 - 1e-12));
        const classes = sizeClasses(
          list,
          [...new Set(cuts)].sort((a, b) => a - b),
        );
        expect(classes.reduce((sum, c) => sum + c.fish, 0)).toBe(list.length);
        expect(classes.reduce((sum, c) => sum + c.share, 0)).toBeCloseTo(1, 12);
      },
    ),
    SEED,
  );
});

test.each([
  ['end weight in kilograms', 'GROWTH.SGR', [800, 1.1, 30], '1.1 kg is 1100 g'],
  ['start weight in kilograms', 'GROWTH.SGR', [0.0004, 2, 30], 'looks like kilograms'],
  ['no days between', 'GROWTH.SGR', [2, 4, 0], 'days: expected a number above 0'],
  ['one fish in kilograms in a sample', 'SIZE.SPREAD', [column(4.1, 0.0042, 3.9, 4.3)], 'row 2'],
  ['a zero weight', 'SIZE.SPREAD', [column(4.1, 0, 3.9)], 'row 2'],
  ['a negative weight', 'SIZE.SPREAD', [column(4.1, -3.9)], 'got −3.9'],
  ['one fish only', 'SIZE.SPREAD', [column(4.1, null)], 'at least 2'],
  ['too warm for the thermal model', 'GROWTH.WEIGHTBYTGC', [10, 1, 32, 30], '30.3'],
  ['a temperature in °F', 'GROWTH.WEIGHTBYTGC', [10, 1, 82, 30], '82 °F is 27.8 °C'],
  ['length in millimetres', 'CONDITION.FACTOR', [5, 95], '95 mm is 9.5 cm'],
  ['mean weight of a harvest in kilograms', 'SURVIVAL.IMPLIED', [100000, 10000, 0.2], 'kilograms'],
  ['feed in grams, fish in kilograms', 'FEED.FCR', [12000, 5, 15], 'grams'],
])('%s', (_what, id, args, says) => {
  expect(sentenceOf(id, ...args)).toContain(says);
});

test('grading dates stop when cannibalism has faded', () => {
  const rows = rowsOf('GRADING.DATES', 45000.7, 7, null, false);
  expect(rows.map((row) => row[2])).toEqual([7, 14, 21, 28, 35, 42]);
  expect(rows[0]?.[1]).toBe(45007);
});

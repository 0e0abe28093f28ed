import fc from 'fast-check';
import {
  breakEvenNumber,
  breakEvenPrice,
  costPerFish,
} from '../../../shared/families/money/kernels/breakEven';
import { cashWeeks, leastBalance } from '../../../shared/families/money/kernels/cashWeeks';
import { mondayOf } from '../../../shared/units/dates';
import { profitRatios } from '../../../shared/families/money/kernels/ratios';
import { swingsOf } from '../../../shared/families/money/kernels/swings';
import { grid, refusal } from '../../support/call';

const SEED = { seed: 20270 };
const amount = fc.double({ min: 0.01, max: 1e6, noNaN: true });

test('consistency: at the break-even price and number the profit is nothing', () => {
  fc.assert(
    fc.property(amount, amount, amount, (fixed, variable, fish) => {
      const price = breakEvenPrice(fixed, variable, fish);
      expect(profitRatios(price * fish, fixed + variable * fish).profit / (price * fish)).toBeCloseTo(0, 9);
      const number = breakEvenNumber(fixed, variable, variable * 1.5);
      expect((number * variable * 1.5 - fixed - number * variable) / fixed).toBeCloseTo(0, 9);
    }),
    SEED,
  );
});

test('consistency: the price for a margin leaves that margin', () => {
  fc.assert(
    fc.property(
      amount,
      amount,
      amount,
      fc.double({ min: 0, max: 0.9, noNaN: true }),
      (fixed, variable, fish, margin) => {
        const price = breakEvenPrice(fixed, variable, fish, margin);
        expect(profitRatios(price * fish, fixed + variable * fish).margin).toBeCloseTo(margin, 9);
      },
    ),
    SEED,
  );
});

test('no number of fish pays when each one loses money', () => {
  expect(breakEvenNumber(1000, 4, 4)).toBeNaN();
  expect(breakEvenNumber(1000, 4, 3)).toBeNaN();
});

test('cost of one fish is all costs, not the largest', () => {
  expect(costPerFish([10, 20, 30], 30)).toBe(2);
});

test('weeks begin on Monday', () => {
  // 1 January 2027 is a Friday, serial 46388.
  expect([46384, 46388, 46390, 46391].map(mondayOf)).toEqual([46384, 46384, 46384, 46391]);
});

test('consistency: every payment lands in one week, and the last balance is the sum', () => {
  const entry = fc.record({
    date: fc.integer({ min: 46000, max: 46500 }),
    amount: fc.integer({ min: -1000, max: 1000 }),
  });
  fc.assert(
    fc.property(
      fc.array(entry, { minLength: 1, maxLength: 40 }),
      fc.integer({ min: -500, max: 500 }),
      (entries, atHand) => {
        const weeks = cashWeeks(entries, atHand);
        expect(weeks.at(-1)?.balance).toBe(entries.reduce((sum, e) => sum + e.amount, atHand));
        expect(weeks.every((week, i) => i === 0 || week.begins === (weeks[i - 1]?.begins ?? NaN) + 7)).toBe(
          true,
        );
        expect(leastBalance(weeks, atHand)).toBe(Math.min(atHand, ...weeks.map((w) => w.balance)));
      },
    ),
    SEED,
  );
});

test('swings: the widest first, and only one figure moves', () => {
  const rows = swingsOf(
    [
      { name: 'b', low: 4, planned: 5, high: 5 },
      { name: 'a', low: 1, planned: 2, high: 3 },
    ],
    ([b = 0, a = 0]) => a * b,
  );
  expect(rows).toEqual([
    { name: 'a', atLow: 5, atHigh: 15, swing: 10 },
    { name: 'b', atLow: 8, atHigh: 10, swing: 2 },
  ]);
});

test('a mistyped year is named, not spilled over thousands of rows', () => {
  expect(refusal('CASH.WEEKS', [[37000], [46000]], [[1], [2]])).toContain('mistyped year');
  expect(grid('CASH.WEEKS', [[46388]], [[5]], 0, false)).toEqual([[46384, 5, 0, 5]]);
});

import chiSquareQuantile from '@stdlib/stats-base-dists-chisquare-quantile';
import normalReference from '@stdlib/stats-base-dists-normal-quantile';
import studentReference from '@stdlib/stats-base-dists-t-quantile';
import { normalQuantile } from '../../../shared/maths/normalQuantile';
import { gammaQuantile, poissonLimits } from '../../../shared/families/counting/kernels/poisson';
import { incompleteBeta, incompleteGamma, logGamma } from '../../../shared/maths/specialFunctions';
import { twoSidedStudent } from '../../../shared/maths/studentQuantile';

/** Relative difference, so that tails count as much as the middle. */
const apart = (a: number, b: number): number => Math.abs(a - b) / Math.max(Math.abs(b), 1e-300);

test('normal quantile against an independent library', () => {
  for (const tail of [1e-4, 0.001, 0.0249, 0.025, 0.07, 0.075, 0.1, 0.3, 0.45, 0.4999]) {
    expect(apart(normalQuantile(tail), normalReference(tail, 0, 1))).toBeLessThan(1e-13);
    expect(apart(normalQuantile(1 - tail), normalReference(1 - tail, 0, 1))).toBeLessThan(1e-13);
  }
  // Far out the library itself loses digits: it forms 1 − tail first.
  for (const tail of [1e-12, 1e-9, 1e-6])
    expect(apart(normalQuantile(tail), normalReference(tail, 0, 1))).toBeLessThan(1e-6);
  expect(normalQuantile(0.5)).toBe(0);
  for (const bad of [0, 1, -1, 2, NaN]) expect(normalQuantile(bad)).toBeNaN();
});

test('t quantile against an independent library, whole and broken degrees of freedom', () => {
  for (const df of [1, 1.3, 2, 2.5, 3, 3.7, 4, 5, 7, 10, 19.4, 30, 99, 500, 12345])
    for (const confidence of [0.5, 0.8, 0.9, 0.95, 0.99, 0.999, 0.9999])
      expect(apart(twoSidedStudent(confidence, df), studentReference((1 + confidence) / 2, df))).toBeLessThan(
        1e-9,
      );
  expect(twoSidedStudent(0.95, 0.5)).toBeNaN();
  expect(twoSidedStudent(1, 5)).toBeNaN();
});

test('Poisson limits against an independent chi-square quantile', () => {
  for (const counted of [1, 2, 5, 17, 100, 560]) {
    const { low, high } = poissonLimits(counted, 0.95);
    expect(apart(low, chiSquareQuantile(0.025, 2 * counted) / 2)).toBeLessThan(1e-8);
    expect(apart(high, chiSquareQuantile(0.975, 2 * counted + 2) / 2)).toBeLessThan(1e-8);
  }
  expect(poissonLimits(0, 0.95).low).toBe(0);
});

/** Chance of k or fewer, summed term by term from the definition. */
const chanceUpTo = (k: number, mean: number): number => {
  let term = Math.exp(k * Math.log(mean) - mean - logGamma(k + 1));
  let sum = 0;
  for (let i = k; i >= 0 && term > 1e-25; i--) {
    sum += term;
    term *= i / mean;
  }
  return sum;
};

test(
  'consistency: Poisson limits leave 2.5 % outside on each side, also for large counts ' +
    'where the library is off',
  () => {
    for (const counted of [1, 10, 560, 5000, 200000]) {
      const { low, high } = poissonLimits(counted, 0.95);
      expect(chanceUpTo(counted, high)).toBeCloseTo(0.025, 9);
      expect(1 - chanceUpTo(counted - 1, low)).toBeCloseTo(0.025, 9);
    }
  },
);

test('consistency: special functions at exact places', () => {
  let factorial = 1;
  for (let n = 1; n < 100; n++) {
    expect(apart(Math.exp(logGamma(n) - Math.log(factorial)), 1)).toBeLessThan(1e-12);
    factorial *= n;
  }
  expect(logGamma(0.5)).toBeCloseTo(Math.log(Math.sqrt(Math.PI)), 13);
  expect(incompleteBeta(0.5, 2, 2)).toBeCloseTo(0.5, 14);
  expect(incompleteBeta(0.3, 1, 1)).toBeCloseTo(0.3, 14);
  expect(incompleteGamma(1, 1)).toBeCloseTo(1 - Math.exp(-1), 14);
  for (const a of [0.5, 3, 40, 4000])
    for (const p of [0.01, 0.5, 0.99]) expect(incompleteGamma(a, gammaQuantile(p, a))).toBeCloseTo(p, 11);
});

import { narrow } from '../../../shared/families/learning/kernels/belief';
import { estimateBetween } from '../../../shared/families/learning/kernels/betweenFemales';
import { normalShare } from '../../../shared/families/learning/kernels/normalMixture';
import { poolNormal } from '../../../shared/families/learning/kernels/poolNormal';
import { poolShares } from '../../../shared/families/learning/kernels/poolShares';
import { nextShareAt } from '../../../shared/families/learning/kernels/shareQuantiles';
import { rateSpec } from '../../../shared/families/learning/rates';
import { incompleteBeta } from '../../../shared/maths/specialFunctions';

/** Tables and sums over grids, against what they stand for. */
test.each([4.5, 5, 6, 7, 7.5])(
  'the bell curve %f deviations out, by the continued fraction of Laplace',
  (z) => {
    let rest = z;
    for (let k = 200; k >= 1; k--) rest = z + k / rest;
    const beyond = Math.exp(-0.5 * z * z) / Math.sqrt(2 * Math.PI) / rest;
    expect(Math.abs(normalShare(-z) - beyond)).toBeLessThan(1e-15);
    expect(Math.abs(1 - normalShare(z) - beyond)).toBeLessThan(1e-15);
  },
);

test('a peak a ten-thousandth as wide as the stretch is closed in on, and nothing of it is cut off', () => {
  const sd = 1e-3;
  const [low, high] = narrow(-6, 6, 17, (u) => -0.5 * ((u - 0.3) / sd) ** 2);
  // e^−16 of the top stands √32 deviations off.
  const reach = Math.sqrt(32) * sd;
  expect([low <= 0.3 - reach, high >= 0.3 + reach]).toEqual([true, true]);
  expect(high - low).toBeLessThan(2 * 2 * reach);
});

test('a spread of which nothing was seen has the ends of its log-normal belief', () => {
  const spec = rateSpec('femaleSpread');
  const { low, high } = estimateBetween(spec, []);
  const deviations = (x: number): number => Math.log(x / spec.literature) / Math.log(spec.runsFactor);
  expect(Math.abs(deviations(low) + 1.959964)).toBeLessThan(1e-3);
  expect(Math.abs(deviations(high) - 1.959964)).toBeLessThan(1e-3);
});

describe('eight schools (RUBIN81), each a kind of one run', () => {
  const EFFECTS = [28.39, 7.94, -2.75, 6.82, -0.64, 0.63, 18.01, 12.16];
  const ERRORS = [14.9, 10.2, 16.3, 11.0, 9.4, 11.4, 10.4, 17.6];
  const cases = poolNormal(
    EFFECTS.map((value, i) => ({ values: [value], errors: [(ERRORS[i] ?? NaN) ** 2] })),
    {
      mean: [{ weight: 1, mean: 0, sd: 50 }],
      // Runs of one kind do not differ.
      runs: { logDensity: () => 0, from: -9, to: -8 },
      kinds: { logDensity: (u) => u - Math.log(1 + (Math.exp(u) / 25) ** 2), from: -9, to: 9 },
    },
  );
  const mean = cases.reduce((sum, { weight, farm }) => sum + weight * farm.mean, 0);
  const variance = cases.reduce(
    (sum, { weight, farm }) => sum + weight * (farm.sd ** 2 + (farm.mean - mean) ** 2),
    0,
  );
  // Printed values as in tests/reference/learning/RUBIN81, where one spread alone has more points and three figures.
  test.each([
    ['mean', mean, 7.985729, 0.005],
    ['its deviation', Math.sqrt(variance), 4.995762, 0.005],
    ['mean spread between schools', cases.reduce((sum, c) => sum + c.weight * c.kindSd, 0), 5.884511, 0.04],
  ])('%s', (_what, got, printed, within) => {
    expect(Math.abs(got - printed)).toBeLessThan(within);
  });
});

test('points taken together: below the share said lies the part asked for, by the distributions themselves', () => {
  const points = poolShares(
    [
      { k: 40, n: 100 },
      { k: 75, n: 100 },
      { k: 60, n: 100 },
    ],
    {
      mean: { logDensity: (x) => -0.5 * x * x, from: -6, to: 6 },
      steadiness: { logDensity: (u) => -0.5 * (u - 2) ** 2, from: -4, to: 8 },
    },
  );
  const parts = [0.025, 0.1, 0.5, 0.9, 0.975];
  nextShareAt(points, parts).forEach((share, i) => {
    const below = points.reduce(
      (sum, p) => sum + p.weight * incompleteBeta(share, p.mean * p.steadiness, (1 - p.mean) * p.steadiness),
      0,
    );
    expect(Math.abs(below - (parts[i] ?? NaN))).toBeLessThan(1e-3);
  });
});

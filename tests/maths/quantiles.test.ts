import stdlibNormal from '@stdlib/stats-base-dists-normal-quantile';
import stdlibT from '@stdlib/stats-base-dists-t-quantile';
import stdlibChi from '@stdlib/stats-base-dists-chisquare-quantile';
import { gammaQuantile } from '../../shared/families/counting/kernels/poisson';
import { mixtureQuantile } from '../../shared/families/learning/kernels/normalMixture';
import { normalQuantile, twoSidedNormal } from '../../shared/maths/normalQuantile';
import { twoSidedStudent } from '../../shared/maths/studentQuantile';

/** Quantiles against another library, in the middle and far out in the tails. */
const near = (got: number, wanted: number, digits: number): void =>
  expect(Math.abs(got - wanted)).toBeLessThanOrEqual(10 ** -digits * Math.max(1e-12, Math.abs(wanted)));
const TAILS = [1e-300, 1e-60, 1e-20, 1e-12, 1.4e-11, 1e-9, 1e-6, 1e-3, 0.02, 0.075, 0.2, 0.43, 0.5];

/**
 * Share beyond z by Laplace's continued fraction, φ(z)/(z + 1/(z + 2/(z + …))): the library's own tail has too few
 * digits from four deviations on.
 */
function beyond(z: number): number {
  let rest = z;
  for (let k = 200; k >= 1; k--) rest = z + k / rest;
  return Math.exp(-0.5 * z * z) / Math.sqrt(2 * Math.PI) / rest;
}
test.each(TAILS)('normal: %f below, and as much above', (p) => {
  if (p < 0.01) near(beyond(-normalQuantile(p)), p, 10);
  if (p >= 1e-3) near(normalQuantile(p), stdlibNormal(p, 0, 1), 10);
  if (p >= 1e-3) near(normalQuantile(1 - p), stdlibNormal(1 - p, 0, 1), 10);
});
test('normal: as Wichura (1988) prints it, and nothing at its ends', () => {
  near(normalQuantile(0.25), -0.6744897501960817, 15);
  near(normalQuantile(0.001), -3.090232306167814, 15);
  near(normalQuantile(1e-20), -9.262340089798408, 15);
  near(twoSidedNormal(0.95), 1.959963984540054, 15);
  expect([0, 1, -0.1, 1.1, NaN].map(normalQuantile)).toEqual([NaN, NaN, NaN, NaN, NaN]);
});

test.each([1, 2, 3, 4.9, 5.1, 12, 200])('Student: %f degrees of freedom', (df) => {
  for (const share of [0.1, 0.6, 0.95, 0.998, 0.999998])
    near(twoSidedStudent(share, df), stdlibT((1 + share) / 2, df), 8);
});

test.each([0.01, 0.3, 0.9, 1, 1.1, 3, 40])('gamma: shape %f', (shape) => {
  for (const p of [1e-6, 0.001, 0.025, 0.3, 0.5, 0.9, 0.975, 0.9999])
    near(gammaQuantile(p, shape), stdlibChi(p, 2 * shape) / 2, 9);
});
test('gamma: a large shape, where the library is off by as much as one', () => {
  // Below x with shape n: as many as n of a Poisson count of mean x.
  const shape = 2000;
  const logFactorial = Array.from({ length: shape }, (_, i) => Math.log(i + 1)).reduce((a, b) => a + b);
  for (const p of [0.001, 0.5, 0.975]) {
    const x = gammaQuantile(p, shape);
    let term = Math.exp(shape * Math.log(x) - x - logFactorial);
    let sum = term;
    for (let k = shape + 1; k < 2 * shape; k++) sum += term *= x / k;
    near(sum, p, 8);
  }
});
test('gamma: shape 1 in closed form, and nothing outside', () => {
  for (const p of [1e-9, 0.01, 0.5, 0.99]) near(gammaQuantile(p, 1), -Math.log1p(-p), 11);
  expect([gammaQuantile(0, 1), gammaQuantile(1, 1), gammaQuantile(0.5, 0)]).toEqual([NaN, NaN, NaN]);
});

describe('a mixture of bells', () => {
  const Z = 1.959963984540054;
  test.each([1e-4, 0.01, 1, 1e4])('one bell is that bell, at a scale of %f', (sd) => {
    for (const weight of [0.2, 1, 30])
      expect((mixtureQuantile([{ weight, mean: 5, sd }], 0.975) - 5) / sd).toBeCloseTo(Z, 7);
  });
  test('two bells far apart: each has its own part', () => {
    const bells = [
      { weight: 3, mean: 0, sd: 1e-3 },
      { weight: 1, mean: 100, sd: 10 },
    ];
    // 0.75 · 0.025 lies below the first one's lower limit; 0.75 + 0.25 · 0.975 below the second one's upper one.
    expect(mixtureQuantile(bells, 0.75 * 0.025) * 1e3).toBeCloseTo(-Z, 7);
    expect((mixtureQuantile(bells, 0.75 + 0.25 * 0.975) - 100) / 10).toBeCloseTo(Z, 7);
  });
  test('a bell of no weight is not seen', () => {
    const bells = [
      { weight: 1, mean: 0, sd: 1 },
      { weight: 1e-11, mean: 1e6, sd: 1 },
    ];
    expect(mixtureQuantile(bells, 0.975)).toBeCloseTo(Z, 7);
  });
});

/**
 * Tarone R.E. 1982, tumours in 71 groups of rats, as analysed by Gelman et al., Bayesian Data Analysis,
 * section 5.3: beta-binomial, prior density of (α, β) proportional to (α + β)^(−5/2). Counts, and the printed
 * mode of the posterior over (ln(α/β), ln(α + β)), read in the public PyMC example gallery ("Hierarchical
 * Binomial Model: Rat Tumor Example") and transcribed by hand; the book's means of α and β, 2.4 and 14.3,
 * from memory.
 */
import { poolShares } from '../../../shared/families/learning/kernels/poolShares';
import '../../support/printed';

const K = [
  0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 1, 1, 1, 1, 1, 1, 1, 1, 2, 2, 2, 2, 2, 2, 2, 2, 2, 1, 5, 2, 5, 3,
  2, 7, 7, 3, 3, 2, 9, 10, 4, 4, 4, 4, 4, 4, 4, 10, 4, 4, 4, 5, 11, 12, 5, 5, 6, 5, 6, 6, 6, 6, 16, 15, 15, 9,
  4,
];
const N = [
  20, 20, 20, 20, 20, 20, 20, 19, 19, 19, 19, 18, 18, 17, 20, 20, 20, 20, 19, 19, 18, 18, 25, 24, 23, 20, 20,
  20, 20, 20, 20, 10, 49, 19, 46, 27, 17, 49, 47, 20, 20, 13, 48, 50, 20, 20, 20, 20, 20, 20, 20, 48, 19, 19,
  19, 22, 46, 49, 20, 20, 23, 19, 22, 20, 20, 20, 52, 46, 47, 24, 14,
];

// In (ln(α/β), ln(α + β)) that prior is M(1 − M)·φ^(−1/2), with M = α/(α + β) and φ = α + β.
const points = poolShares(
  K.map((k, i) => ({ k, n: N[i] ?? NaN })),
  {
    mean: { logDensity: (x) => -Math.log(1 + Math.exp(-x)) - Math.log(1 + Math.exp(x)), from: -8, to: 8 },
    steadiness: { logDensity: (u) => -u / 2, from: -2, to: 8 },
  },
);
const expected = (of: (mean: number, phi: number) => number): number =>
  points.reduce((sum, p) => sum + p.weight * of(p.mean, p.steadiness), 0);

test('71 groups', () => {
  expect([K.length, N.length]).toEqual([71, 71]);
});

test.each([
  ['mean of α', expected((m, phi) => m * phi), '2.4'],
  ['mean of β', expected((m, phi) => (1 - m) * phi), '14.3'],
])('%s', (_what, got, printed) => {
  expect(got).toAgreeWithPrinted(printed);
});

test('the printed mode, (−1.79, 2.74), is where the weight is', () => {
  // Weight per unit of area: a point of the grid stands for its own step of the mean.
  const densest = points.reduce((most, p) =>
    p.weight / p.halfStep > most.weight / most.halfStep ? p : most,
  );
  // Within one step of the grid.
  expect(Math.abs(densest.logit + 1.79)).toBeLessThanOrEqual(2 * densest.halfStep);
  expect(Math.abs(Math.log(densest.steadiness) - 2.74)).toBeLessThanOrEqual(0.15);
});

/**
 * Rubin D.B. 1981, eight parallel experiments, as analysed and printed by Röver C. 2020 (bayesmeta, Journal
 * of Statistical Software 93(6)): normal prior 0 ± 50 for the mean, half-Cauchy prior with scale 25 for the
 * spread. Data and printed summary read in the vignette that ships with the package and transcribed by hand.
 * The package prints more digits than its own grid is good for (it documents steps of 0.01 in divergence), so
 * the comparison is to three figures.
 */
import type { Belief } from '../../../shared/families/learning/kernels/belief';
import { mixtureQuantile } from '../../../shared/families/learning/kernels/normalMixture';
import { poolNormal } from '../../../shared/families/learning/kernels/poolNormal';
import '../../support/printed';

const EFFECTS = [28.39, 7.94, -2.75, 6.82, -0.64, 0.63, 18.01, 12.16];
const ERRORS = [14.9, 10.2, 16.3, 11.0, 9.4, 11.4, 10.4, 17.6];
/** Density of ln τ when τ is half-Cauchy. */
const halfCauchy = (scale: number): Belief => ({
  logDensity: (u) => u - Math.log(1 + (Math.exp(u) / scale) ** 2),
  from: -9,
  to: 9,
});

const cases = poolNormal([{ values: EFFECTS, errors: ERRORS.map((e) => e * e) }], {
  mean: [{ weight: 1, mean: 0, sd: 50 }],
  runs: halfCauchy(25),
});
const bells = cases.map(({ farm, weight }) => ({ ...farm, weight }));
const mean = bells.reduce((sum, b) => sum + b.weight * b.mean, 0);
const variance = bells.reduce((sum, b) => sum + b.weight * (b.sd ** 2 + (b.mean - mean) ** 2), 0);

// Printed 7.985729, 4.995762, 7.962961 and 5.884511.
test.each([
  ['mean of the common effect', mean, '7.99'],
  ['its standard deviation', Math.sqrt(variance), '5.00'],
  ['its median', mixtureQuantile(bells, 0.5), '7.96'],
  ['mean spread between schools', cases.reduce((sum, c) => sum + c.weight * c.runSd, 0), '5.88'],
])('%s', (_what, got, printed) => {
  expect(got).toAgreeWithPrinted(printed);
});

test('the printed shortest interval of 95 %, −1.823 to 17.825, holds 95 % here', () => {
  const below = (x: number): number =>
    bells.reduce((sum, b) => sum + b.weight * cumulative((x - b.mean) / b.sd), 0);
  expect(below(17.824562) - below(-1.823353)).toAgreeWithPrinted('0.950');
});

/** Simpson's rule, so that the check does not rest on the routine under test. */
function cumulative(z: number): number {
  const steps = 400;
  const h = (z + 9) / steps;
  let sum = 0;
  for (let i = 0; i <= steps; i++)
    sum += (i === 0 || i === steps ? 1 : i % 2 ? 4 : 2) * Math.exp(-0.5 * (-9 + h * i) ** 2);
  return (sum * h) / 3 / Math.sqrt(2 * Math.PI);
}

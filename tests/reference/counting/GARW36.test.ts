/**
 * Garwood F. 1936. Fiducial limits for the Poisson distribution. Biometrika 28:437-442.
 * The paper was not opened. Limits for a count of 25 at three levels, and the upper limit for 0, are printed
 * on statistics help pages that name the method; transcribed by the project.
 */
import { poissonLimits } from '../../../shared/families/counting/kernels/poisson';
import '../../support/printed';

test.each([
  [25, 0.9, '17.38', '34.92'],
  [25, 0.95, '16.18', '36.90'],
  [25, 0.99, '14.00', '41.00'],
  [0, 0.95, '0', '3.689'],
])('a count of %d at %d', (counted, confidence, low, high) => {
  expect(poissonLimits(counted, confidence).low).toAgreeWithPrinted(low);
  expect(poissonLimits(counted, confidence).high).toAgreeWithPrinted(high);
});

/** Digits from memory of the published table; no page was seen. */
test.each([
  [1, '0.0253', '5.572'],
  [5, '1.623', '11.668'],
  [10, '4.795', '18.390'],
  [100, '81.36', '121.63'],
])('from memory: a count of %d at 95 %%', (counted, low, high) => {
  expect(poissonLimits(counted, 0.95).low).toAgreeWithPrinted(low);
  expect(poissonLimits(counted, 0.95).high).toAgreeWithPrinted(high);
});

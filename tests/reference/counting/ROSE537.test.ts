/**
 * Rose, course slides BIOL/MSCI 537: harvesting, hauling, measuring
 * (https://www.scribd.com/document/816762188/Techniques). Worked example of counting eggs by weight: 316.8 g
 * in all; samples of 1.5, 1.6 and 1.9 g hold 36, 35 and 41 eggs. Transcribed by the project.
 */
import { lotEstimate } from '../../../shared/families/counting/kernels/lotEstimate';
import '../../support/printed';

const SIZES = [1.5, 1.6, 1.9];
const COUNTS = [36, 35, 41];

test('eggs per gram and eggs in all', () => {
  const got = lotEstimate(316.8, SIZES, COUNTS, 0.95);
  expect(got.ratio).toAgreeWithPrinted('22.4');
  expect(got.total).toAgreeWithPrinted('7,096');
});

/** The mean of the three ratios gives 7,123: another estimator, not ours. */
test('counter-example: the mean of the ratios is not what is returned', () => {
  const meanOfRatios = SIZES.reduce((sum, size, i) => sum + (COUNTS[i] ?? NaN) / size, 0) / 3;
  expect(meanOfRatios * 316.8).toAgreeWithPrinted('7,123');
  expect(lotEstimate(316.8, SIZES, COUNTS, 0.95).total).not.toAgreeWithPrinted('7,123');
});

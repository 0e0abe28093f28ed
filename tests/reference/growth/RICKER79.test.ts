/**
 * Specific growth rate, Ricker 1979 and later texts. Worked examples of a specific growth rate page
 * (AQUATEXT), transcribed by the project: 50 → 100 g in 10 days is 6.931 %/d. The same page prints 4.615 for
 * 30 → 60 g in 15 days, which is wrong.
 */
import { growthFromRation } from '../../../shared/families/growth/kernels/feedConversion';
import { specificGrowth } from '../../../shared/families/growth/kernels/specificGrowth';
import '../../support/printed';

test('50 to 100 g in 10 days', () => {
  expect(specificGrowth(50, 100, 10)).toAgreeWithPrinted('6.931');
});

test('counter-example: 30 to 60 g in 15 days is not the printed 4.615', () => {
  expect(specificGrowth(30, 60, 15)).not.toAgreeWithPrinted('4.615');
  expect(specificGrowth(30, 60, 15)).toAgreeWithPrinted('4.621');
});

test('growth rate is ration over feed conversion', () => {
  expect(growthFromRation(0.05, 1.25)).toAgreeWithPrinted('4');
});

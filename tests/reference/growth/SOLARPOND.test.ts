/**
 * Solar-induced water temperature and growth of Clarias gariepinus (abstract): 4.07 → 298.75 g in 90 days at
 * 29.19 °C, 4.07 → 198.40 g at 27.58 and 30.91 °C. The abstract prints 3.32 g/day, which is the final weight
 * over the days. Growth rates worked out by the project from the printed weights.
 */
import { findFunction } from '../../../shared/catalogue';
import { invoke } from '../../../shared/functions/invoke';
import { specificGrowth } from '../../../shared/families/growth/kernels/specificGrowth';
import { thermalGrowth } from '../../../shared/families/growth/kernels/thermalGrowth';
import '../../support/printed';

test('counter-example: the gain is not the printed 3.32 g a day', () => {
  const fn = findFunction('SPAWN.GROWTH.GAIN');
  const got = fn && invoke(fn, [4.07, 298.75, 90]);
  expect(298.75 / 90).toAgreeWithPrinted('3.32');
  expect(got).not.toAgreeWithPrinted('3.32');
  expect(got).toAgreeWithPrinted('3.274');
});

test('consistency: growth rates from the printed weights', () => {
  expect(specificGrowth(4.07, 298.75, 90)).toAgreeWithPrinted('4.773');
  expect(specificGrowth(4.07, 198.4, 90)).toAgreeWithPrinted('4.318');
  expect(thermalGrowth(4.07, 298.75, 29.19, 90, 1000)).toAgreeWithPrinted('1.937');
});

test('the middle temperature grew best, which no steady rise with temperature can give', () => {
  const middle = thermalGrowth(4.07, 298.75, 29.19, 90, 1000);
  expect(thermalGrowth(4.07, 198.4, 30.91, 90, 1000)).toBeLessThan(middle);
});

/**
 * Farm advice page with growth formulas: thermal growth coefficient in the ×100 form, 10 → 350 g at 11 °C in
 * 200 days gives 0.222. Transcribed by the project.
 */
import { thermalGrowth } from '../../../shared/families/growth/kernels/thermalGrowth';
import '../../support/printed';

test('10 to 350 g at 11 °C in 200 days', () => {
  expect(thermalGrowth(10, 350, 11, 200, 100)).toAgreeWithPrinted('0.222');
});

test('the ×1000 form is ten times that', () => {
  expect(thermalGrowth(10, 350, 11, 200, 1000)).toBeCloseTo(10 * thermalGrowth(10, 350, 11, 200, 100), 12);
});

/**
 * Alawode et al. Economic viability of Clarias gariepinus fingerlings production in Ibadan (abstract): 31
 * hatcheries, per cycle variable cost 237,919.90 and fixed cost 104,705 naira for 15,451.6 seed; printed
 * benefit-cost ratio 1.54, return on investment 0.54, fixed to variable 0.44. Transcribed from the abstract.
 * Break-even figures are not printed there: they are worked out from the printed costs and stand under
 * "consistency".
 */
import { grid, number } from '../../support/call';

const VARIABLE = 237_919.9;
const FIXED = 104_705;
const SEED = 15_451.6;
const SALES = 1.54 * (VARIABLE + FIXED);

test('the return they print is the profit of costs of the benefit-cost ratio they print', () => {
  const [row = []] = grid('PROFIT.RATIOS', SALES, VARIABLE + FIXED, false);
  expect(row[2]).toAgreeWithPrinted('0.54');
  expect(row[3]).toAgreeWithPrinted('1.54');
  expect(FIXED / VARIABLE).toAgreeWithPrinted('0.44');
});

test('consistency: break-even price, and its number at the price their sales imply', () => {
  const each = VARIABLE / SEED;
  expect(number('COST.PERFISH', [[VARIABLE], [FIXED]], SEED)).toAgreeWithPrinted('22.174');
  expect(number('BREAKEVEN.PRICE', FIXED, each, SEED)).toAgreeWithPrinted('22.174');
  expect(number('BREAKEVEN.NUMBER', FIXED, each, SALES / SEED)).toAgreeWithPrinted('5584');
});

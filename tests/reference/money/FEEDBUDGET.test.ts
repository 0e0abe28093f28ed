/**
 * Landau M., Scarpa J. Teaching exercise 2. World Aquaculture magazine 2009: costs of 6,754.04 $ for 3,818 kg
 * sold, feed half of them; the break-even price printed there, 0.884 $/kg, is the feed alone. A
 * counter-example, transcribed from the page.
 */
import { number } from '../../support/call';

test('the price that covers all costs is twice the printed one', () => {
  const price = number('COST.PERFISH', 6754.04, 3818);
  expect(price).toAgreeWithPrinted('1.769');
  expect(price / 2).toAgreeWithPrinted('0.884');
  expect(number('BREAKEVEN.PRICE', 6754.04, 0, 3818)).toBe(price);
});

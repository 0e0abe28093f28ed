/**
 * Natural Science 5(7A), 2013:1-6, five neotropical species: 5.5 mg/kg carp pituitary as 0.5 then 5.0 mg/kg,
 * printed as 10 and 90 %.
 */
import { grid } from '../../support/call';

test('a tenth first, the rest after it', () => {
  const [first, second] = grid('HORMONE.SPLIT', 5.5, 0.5 / 5.5)[0] ?? [];
  expect(first).toAgreeWithPrinted('0.5');
  expect(second).toAgreeWithPrinted('5.0');
  expect(0.5 / 5.5).toAgreeWithPrinted('0.1');
});

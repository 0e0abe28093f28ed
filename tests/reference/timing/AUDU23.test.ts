/**
 * Audu S.I., Onyia E.C., Onyia L.U. 2023. Global Journal of Fisheries Science 5(1), 108CC07C1 (abstract):
 * stripped at 9, 11, 13, 15 and 17 h; fertilised 99.19, 97.66 and 99.33 % at 11, 13 and 15 h, hatched best
 * (63.73 %) at 13 h and 1.99 % at 17 h.
 */
import { columnOf, grid } from '../../support/call';

test('a best hour of 13 opens the window at 11 h and shuts it at 15 h, before 17 h', () => {
  const own = [columnOf([24, 26]), columnOf([15, 13])] as const;
  const hours = (grid('STRIP.WINDOW', 46000, 26, 'pituitary', 0, ...own)[0] ?? []).map(
    (at) => (Number(at) - 46000) * 24,
  );
  expect(hours[0]).toAgreeWithPrinted('11.0');
  expect(hours[1]).toAgreeWithPrinted('13.0');
  expect(hours[2]).toAgreeWithPrinted('15.0');
});

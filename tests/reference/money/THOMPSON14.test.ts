/**
 * Thompson O.A., Mafimisebi T.E. 2014. Fisheries and Aquaculture Journal 5(2): efficiency ratios of
 * fingerlings, juveniles and table fish 1.85, 1.71 and 1.55 beside profitability 0.85, 0.71 and 0.55.
 * Transcribed from the page.
 */
import { grid } from '../../support/call';

test.each([
  ['1.85', '0.85'],
  ['1.71', '0.71'],
  ['1.55', '0.55'],
])('efficiency %s is profitability %s plus one', (efficiency, profitability) => {
  const [row = []] = grid('PROFIT.RATIOS', Number(efficiency) * 1000, 1000, false);
  expect(row[3]).toAgreeWithPrinted(efficiency);
  expect(row[2]).toAgreeWithPrinted(profitability);
});

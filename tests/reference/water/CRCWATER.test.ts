import '../../support/printed';
import { constantsAt } from '../../../shared/families/water/carbonate/constants';

/**
 * Ion product of water. CRC Handbook of Chemistry and Physics, online, table 05_20 (0.1 MPa): pKw 14.946 at 0
 * °C, 13.995 at 25 °C. Marshall and Franck as tabulated in a textbook copy: 14.938 at 0 °C, 13.995 at 25 °C.
 * Transcribed from the two pages.
 */
const pKw = (t: number): number => -Math.log10(constantsAt(t).kw);

test('pKw at 25 °C', () => {
  expect(pKw(25)).toAgreeWithPrinted('13.995');
});

test('pKw at 0 °C agrees with Marshall and Franck, and with the CRC table to 0.01', () => {
  // The two tables differ from each other by 0.008 there.
  expect(Math.abs(pKw(0) - 14.938)).toBeLessThan(0.001);
  expect(Math.abs(pKw(0) - 14.946)).toBeLessThan(0.01);
});

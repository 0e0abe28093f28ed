import '../../support/printed';
import { constantsAt } from '../../../shared/families/water/carbonate/constants';

/**
 * Plummer L.N., Busenberg E. 1982. Geochim. Cosmochim. Acta 46:1011-1040. Values at 25 °C as printed in the
 * abstract (log K of calcite −8.480 ± 0.020, CaHCO3+ 1.11 ± 0.07, CaCO3° 3.22 ± 0.14), transcribed from the
 * publisher's record.
 */
const at25 = constantsAt(25);

test('log K of calcite, CaHCO3+ and CaCO3° at 25 °C', () => {
  expect(Math.log10(at25.kCalcite)).toAgreeWithPrinted('-8.480');
  expect(Math.log10(at25.kCaHCO3)).toAgreeWithPrinted('1.11');
  expect(Math.log10(at25.kCaCO3)).toAgreeWithPrinted('3.22');
});

test('the coefficients have not been mistyped: sums over 0 to 40 °C', () => {
  // The values at seven temperatures, worked out once from the printed coefficients in another program.
  const printed: readonly (readonly [number, string, string, string, string])[] = [
    [0, '6.5786', '10.6286', '1.1084', '8.3814'],
    [5, '6.5163', '10.5544', '1.1921', '8.3942'],
    [15, '6.4188', '10.4284', '1.3408', '8.4302'],
    [20, '6.3819', '10.3756', '1.4069', '8.4533'],
    [25, '6.3519', '10.3289', '1.4679', '8.4798'],
    [30, '6.3281', '10.2879', '1.5244', '8.5098'],
    [35, '6.3102', '10.2523', '1.5766', '8.5430'],
  ];
  for (const [t, k1, k2, kh, calcite] of printed) {
    const k = constantsAt(t);
    expect(-Math.log10(k.k1)).toAgreeWithPrinted(k1);
    expect(-Math.log10(k.k2)).toAgreeWithPrinted(k2);
    expect(-Math.log10(k.kh)).toAgreeWithPrinted(kh);
    expect(-Math.log10(k.kCalcite)).toAgreeWithPrinted(calcite);
  }
});

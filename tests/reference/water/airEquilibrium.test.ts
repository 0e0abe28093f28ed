import '../../support/printed';
import { solve } from '../../../shared/families/water/carbonate/carbonate';
import { constantsAt } from '../../../shared/families/water/carbonate/constants';
import { compose } from '../../../shared/families/water/carbonate/readings';

/**
 * pH of pure water in balance with CO2, printed in teaching texts: 5.65 at 10^−3.5 atm and 25 °C (an answer
 * to why rain of pH 5.6 counts as acid), 5.64 at 350 ppm (university lecture slide). Standard buffer:
 * saturated lime water is the pH 12.45 buffer at 25 °C (data sheet of calcium hydroxide). Baking soda: 8.3
 * for 0.1 M leaves ion activity out, so it is not compared here.
 */
const pure = (ppm: number): number => {
  const back = { temperature: 25, calcium: 0, ionicStrength: 0 };
  return solve(constantsAt(25), compose(back, 0, 0), { kind: 'open', pressure: ppm * 1e-6 }).ph;
};

test('pure water in balance with air', () => {
  // Printed with older constants: 0.02 pH either way.
  expect(Math.abs(pure(1e6 * 10 ** -3.5) - 5.65)).toBeLessThan(0.02);
  expect(Math.abs(pure(350) - 5.64)).toBeLessThan(0.02);
});

test('saturated lime water, 1.5 g/L', () => {
  // Its strength is read from the sheet as 1.5 g/L, near saturation; 0.05 pH is 12 % of that.
  const moles = 1500 / 74.093;
  const water = { temperature: 25, sodium: 0, calcium: moles, chloride: 0, sulfate: 0, carbon: 0 };
  expect(Math.abs(solve(constantsAt(25), water, { kind: 'closed' }).ph - 12.45)).toBeLessThan(0.05);
});

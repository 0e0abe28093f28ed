import { constantsAt } from '../../../shared/families/water/carbonate/constants';

/**
 * Tucker C.S. 1984, factors that turn alkalinity (mg/L CaCO3) into mg/L of CO2, from a web page that
 * reproduces the table. The copy's rows for pH 7.6 and 7.8 have typing errors and are left out. The table
 * takes no account of ion activity, so the bare constants are compared; other constants were in use then: 1 %
 * from 5 to 30 °C.
 */
const factor = (t: number, ph: number): number => (44.01 / 50.0435) * (10 ** -ph / constantsAt(t).k1);

test.each([
  [25, 6, 1.97],
  [25, 6.4, 0.784],
  [25, 6.8, 0.313],
  [25, 7, 0.197],
  [30, 7, 0.188],
  [5, 7, 0.291],
])('%d °C, pH %d: %d', (t, ph, printed) => {
  expect(Math.abs(factor(t, ph) / printed - 1)).toBeLessThan(0.011);
});

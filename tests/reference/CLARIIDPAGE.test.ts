/**
 * Extension page "Fingerlings production and hatchery management", agric4profits.com: glands of the same
 * species, donors 1.5 times the weight of the female. Latency 20 h at 22 °C and 12 h at 28 °C. Transcribed
 * from the page.
 */
import { number } from '../support/call';

test.each([
  [22, '20'],
  [28, '12'],
])('own-species pituitary at %d °C: %s h', (temperature, hours) => {
  expect(number('LATENCY.HOURS', temperature, 'own-species pituitary')).toAgreeWithPrinted(hours);
});

test('donors weigh 1.5 times the fish', () => {
  expect(number('PITUITARY.DONORS', 2, 1)).toBe(3);
});

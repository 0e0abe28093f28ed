/**
 * Extension page "Fingerlings production and hatchery management", agric4profits.com: glands of the same
 * species, donors 1.5 times the weight of the female. Latency 20 h at 22 °C and 12 h at 28 °C. Transcribed
 * from the page.
 */
import { grid, number } from '../../support/call';

test.each([
  [22, '20'],
  [28, '12'],
])(
  'own-species pituitary at %d °C: %s h lies between the first look and the last hour tried',
  (temperature, hours) => {
    const [first, , last] = grid('STRIP.WINDOW', 46000, temperature, 'own-species pituitary')[0] ?? [];
    expect((Number(first) - 46000) * 24).toBeLessThan(Number(hours));
    expect((Number(last) - 46000) * 24).toBeGreaterThan(Number(hours));
  },
);

test('donors weigh 1.5 times the fish', () => {
  expect(number('PITUITARY.DONORS', 2, 1)).toBe(3);
});

/**
 * Oreochromis karongae (journal abstract): hatching period 14.7 d at 25 °C, 7.3 d at 29 °C. Transcribed from
 * the abstract.
 */
import { number } from '../../support/call';

test.each([
  [25, '14.7'],
  [29, '7.3'],
])('at %d °C hatching takes %s d', (temperature, days) => {
  expect(number('INCUBATION.HOURS', temperature, 'Karonga tilapia') / 24).toAgreeWithPrinted(days);
});

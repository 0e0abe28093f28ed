/**
 * Add-my-Pet collection, mydata_Clarias_gariepinus.m: age at hatch 1.25 d at 25 °C and 0.58 d at 33 °C
 * (credited there to FishBase). Transcribed from the file.
 */
import { number } from '../../support/call';

test.each([
  [25, '1.25'],
  [33, '0.58'],
])('at %d °C hatching takes %s d', (temperature, days) => {
  expect(number('INCUBATION.HOURS', temperature, 'African catfish to 33 °C') / 24).toAgreeWithPrinted(days);
});

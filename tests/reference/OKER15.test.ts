/**
 * Okere E., Erondu E.S., Zabbey N. 2015. Agriculture, Forestry and Fisheries 4(2):71-76.
 * Latency of African catfish at a mean of 26.0 ± 0.7 °C, printed in minutes. Transcribed from the public page
 * of the paper.
 */
import { number } from '../support/call';

test.each([
  ['ready-made solution', '613'],
  ['pituitary extract', '745'],
])('latency of %s at 26.0 °C is %s minutes', (preparation, minutes) => {
  expect(number('LATENCY.HOURS', 26, preparation) * 60).toAgreeWithPrinted(minutes);
});

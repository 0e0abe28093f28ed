/**
 * Thesis on the biological zero of common carp embryos, tables 4.2 and 4.3 (in Vietnamese), public extract.
 * Three lots at 26 and three at 33 °C, hours to hatch and base temperature of each pair. Transcribed from the
 * extract.
 */
import { number } from '../../support/call';

const LOTS = [
  ['45.17', '32.75', '7.54'],
  ['45.50', '33.33', '6.83'],
  ['44.75', '33.25', '5.76'],
] as const;

test.each(LOTS)('lots of %s h at 26 °C and %s h at 33 °C give a base of %s °C', (cool, warm, base) => {
  expect(number('BASE.TEMPERATURE', 26, Number(cool), 33, Number(warm))).toAgreeWithPrinted(base);
});

test('the mean base of the three pairs is the printed 6.73 ± 0.90', () => {
  const bases = LOTS.map(([cool, warm]) => number('BASE.TEMPERATURE', 26, Number(cool), 33, Number(warm)));
  const mean = bases.reduce((a, b) => a + b, 0) / bases.length;
  const sd = Math.sqrt(bases.reduce((s, b) => s + (b - mean) ** 2, 0) / (bases.length - 1));
  // The mean of the three rounded bases is 6.71; the base of the printed mean hours is the printed 6.73.
  expect(number('BASE.TEMPERATURE', 26, 45.14, 33, 33.11)).toAgreeWithPrinted('6.73');
  expect(sd).toAgreeWithPrinted('0.90');
});

test.each([
  [26, '45.14'],
  [33, '33.11'],
])('hatching at %d °C takes the printed mean of %s h', (temperature, hours) => {
  expect(number('INCUBATION.HOURS', temperature, 'common carp')).toAgreeWithPrinted(hours);
});

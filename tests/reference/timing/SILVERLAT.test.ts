/**
 * Timing of hypophysation in the silver carp (journal abstract). Natural spawning: 7.4 h at 25.5 °C, 188.4 ±
 * 1.99 degree-hours; stripped: 199 ± 1.74 degree-hours, above zero. Transcribed from the abstract.
 */
import { number } from '../../support/call';

test('7.4 h at 25.5 °C lie within the printed 188.4 ± 1.99 degree-hours', () => {
  expect(Math.abs(number('DEGREE.HOURS', 7.4, 25.5, 0) - 188.4)).toBeLessThanOrEqual(1.99);
});

test('latency read back at 25.5 °C makes the printed 199 degree-hours', () => {
  expect(number('LATENCY.HOURS', 25.5, 'silver carp') * 25.5).toAgreeWithPrinted('199');
});

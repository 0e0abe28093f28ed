/**
 * Salman N.A., Al-Noor S.S., Khalaf K.A. Thermal accumulated period of grass carp (abstracts, 2023).
 * Degree-hours above zero, printed beside hours and temperature. Transcribed from the abstracts.
 */
import { number } from '../../support/call';

test.each([
  [11, 27, '297'],
  [12, 25, '300'],
  [14.5, 25, '363'],
])('%d h at %d °C are %s degree-hours above zero', (hours, temperature, printed) => {
  expect(number('DEGREE.HOURS', hours, temperature, 0)).toAgreeWithPrinted(printed);
});

test('latency at 27 °C is the printed 11 h', () => {
  expect(number('LATENCY.HOURS', 27, 'grass carp')).toAgreeWithPrinted('11');
});

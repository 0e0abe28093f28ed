/**
 * Aceh Journal of Animal Science, August 2019: effect of water pH on hatching of Clarias gariepinus. 23.5 to
 * 25.0 h at 28.0 ± 1.0 °C. Transcribed from the abstract.
 */
import { grid, number } from '../../support/call';

test('the measured times at 28 °C are the ends of the printed range', () => {
  const [first, last] = grid('HATCH.WINDOW', 46000, 28, 'African catfish at 28 °C')[0] ?? [];
  expect((Number(first) - 46000) * 24).toAgreeWithPrinted('23.5');
  expect(Number(last)).toBeGreaterThan(46000 + 25 / 24);
  expect(number('INCUBATION.HOURS', 28, 'African catfish at 28 °C')).toBe((23.5 + 25) / 2);
});

test('the table of the fish passes through the middle; the one from memory is short, within a tenth', () => {
  const measured = number('INCUBATION.HOURS', 28, 'African catfish at 28 °C');
  expect(number('INCUBATION.HOURS', 28)).toBeCloseTo(measured, 9);
  const recalled = number('INCUBATION.HOURS', 28, 'handbook African catfish') / measured;
  expect(recalled).toBeLessThan(1);
  expect(recalled).toBeGreaterThan(0.9);
});

import { shortNumber } from '../../../src/localsheet/univer/generalNumbers';

/** Width of 88 pixels: ten characters, the usual column. */
test.each([
  [0.053662336661957265, '0.05366234'],
  [148676.7766874814, '148676.777'],
  [-0.053662336661957265, '-0.0536623'],
  [0.5, '0.5'],
  [1 / 3, '0.33333333'],
  [12345678.912, '12345678.9'],
])('%p is shown as %s', (value, shown) => {
  expect(shortNumber(value, 88)).toBe(shown);
});

test('very small and very large numbers are shown with a power of ten', () => {
  expect(shortNumber(0.0000012345678, 88)).toBe('1.2346E-06');
  expect(shortNumber(1.23456789e14, 88)).toMatch(/^1\.234\dE\+14$/);
});

test('what is shown never runs over the column', () => {
  for (const width of [48, 64, 88, 140])
    for (const value of [Math.PI, -Math.PI, 1e-7 / 3, 2e10 / 3, -123456.789])
      expect(shortNumber(value, width).length * 7.6).toBeLessThan(Math.max(width, 70));
});

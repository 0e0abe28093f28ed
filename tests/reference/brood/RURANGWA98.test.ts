/**
 * Rurangwa E. et al. 1998. Journal of Fish Biology 53(2):402-413 (abstract): best at 15,000 sperm per egg,
 * success falls below 3,000.
 */
import { number, refusal } from '../../support/call';

test('15,000 per egg unless another is given', () => {
  expect(number('MILT.VOLUME', 1000, 1e9)).toBe(number('MILT.VOLUME', 1000, 1e9, 15_000));
});

test('3,000 is taken, less is refused with the source', () => {
  expect(number('MILT.VOLUME', 1_000_000, 3e9, 3000)).toBe(1);
  expect(refusal('MILT.VOLUME', 1_000_000, 3e9, 2999)).toMatch(/^#N\/A .*Rurangwa/);
});

import { shareSpread } from '../../../shared/families/money/odds/shareSpread';

/**
 * Beta distributions whose quantiles are written down in one line: I⁻¹(p; 1, 1) = p, I⁻¹(p; 2, 1) = √p and
 * I⁻¹(p; 1, 2) = 1 − √(1 − p); Φ from the printed table of the normal distribution.
 */
const PHI: readonly (readonly [z: number, below: number])[] = [
  [-2.5, 0.0062097],
  [-2, 0.0227501],
  [-1, 0.1586553],
  [-0.52, 0.3015318],
  [-0.25, 0.4012937],
  [0, 0.5],
  [0.5, 0.6914625],
  [0.83, 0.7967306],
  [1, 0.8413447],
  [1.5, 0.9331928],
  [2.5, 0.9937903],
];
/** Linear on the logit between 0.05 apart. */
const WITHIN = 2e-4;

test.each(PHI)('at %d deviations', (z, below) => {
  const even = shareSpread(0.5, 1 / Math.sqrt(12));
  const rising = shareSpread(2 / 3, 1 / Math.sqrt(18));
  const falling = shareSpread(1 / 3, 1 / Math.sqrt(18));
  expect(Math.abs(even(z) - below)).toBeLessThan(WITHIN);
  expect(Math.abs(rising(z) - Math.sqrt(below))).toBeLessThan(WITHIN);
  expect(Math.abs(falling(z) - (1 - Math.sqrt(1 - below)))).toBeLessThan(WITHIN);
});

test('without a spread, or sure either way, it is the mean', () => {
  expect([shareSpread(0.4, 0)(2), shareSpread(0, 0.1)(2), shareSpread(1, 0.1)(-2)]).toEqual([0.4, 0, 1]);
});

import { betaOf, shareSpread } from '../../../shared/families/money/odds/shareSpread';
import { normalQuantile } from '../../../shared/maths/normalQuantile';
import { incompleteBeta } from '../../../shared/maths/specialFunctions';

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

// Read back through the distribution function: the deviation that was asked for, out to the ends of the table.
test.each([
  [0.5, 0.2],
  [0.5, 0.8],
  [0.1, 0.4],
  [0.9, 0.4],
  [0.99, 0.2],
  [0.01, 0.2],
])('mean %f with %f of the widest spread', (mean, part) => {
  const deviation = part * Math.sqrt(mean * (1 - mean));
  const [a, b] = betaOf(mean, deviation);
  const at = shareSpread(mean, deviation);
  for (const z of [-6, -5.97, -4.1, -2.03, -0.4, 0, 0.7, 2.2, 4]) {
    const below = incompleteBeta(at(z), a, b);
    // Beyond, the share is 0 or 1 to the last digits, or the table ends.
    if (at(z) > 1e-12 && below < 1 - 1e-9 && below > 2e-12)
      expect(Math.abs(normalQuantile(below) - z)).toBeLessThan(0.015);
  }
});

/**
 * Steeby J., Avery J. 2005. Southern Regional Aquaculture Center Publication 1803: a million channel catfish
 * fry at 3,000 eggs per pound, 70 % hatch, 70 % survival to swim-up and half of the females spawning need
 * 1,350 to 2,000 lb of females (612 to 907 kg).
 */
import { number } from '../../support/call';

const KG_PER_POUND = 0.45359237;

test('the weight of females is the low end of the printed range', () => {
  const kg = number('BROOD.WEIGHT', 1e6, 3000 / KG_PER_POUND, 0.7, 0.7, 0.5);
  expect(kg).toBeGreaterThanOrEqual(612);
  expect(kg).toBeLessThanOrEqual(907);
  expect(kg / KG_PER_POUND / 1350).toBeCloseTo(1, 1);
});

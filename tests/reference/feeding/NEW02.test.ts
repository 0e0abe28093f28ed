/**
 * New M.B. 2002. FAO Fish. Tech. Paper 428, Annex 4, read in a copy of its text
 * (https://www.progressivegardening.com/freshwater-prawns/ph.html): 5 g of cysts per litre below 20 L, 2 g
 * per litre in larger volumes; 5 to 35 ppt; stopped for good above 33 °C; up to 1 g of baking soda per litre.
 * Transcribed by the project.
 */
import { hatchingWater } from '../../../shared/families/feeding/kernels/cystHatching';
import '../../support/printed';

test.each([
  [5, undefined, '5', '1'],
  [99, undefined, '5', '19.8'],
  [100, undefined, '2', '50'],
  [38, 19, '5', '7.6'],
  [40, 20, '2', '20'],
])('%d g of cysts, vessel %s L', (cysts, vessel, density, volume) => {
  const got = hatchingWater(cysts, vessel);
  expect(got.density).toAgreeWithPrinted(density);
  expect(got.volume).toAgreeWithPrinted(volume);
});

test('no vessel ever holds more cysts per litre than its size allows', () => {
  for (let vessel = 1; vessel < 60; vessel += 0.5) {
    const got = hatchingWater(77, vessel);
    expect(77 / (got.vessels * vessel)).toBeLessThanOrEqual((vessel < 20 ? 5 : 2) + 1e-9);
  }
});

/**
 * Dupree H.K., Huner J.V. 1984 (key DUPREE84), as an extension leaflet prints it: pounds per US gallon at 65 °F
 * (18.3 °C) for 1, 12, 24 and 48 h, swim-up fry and 1 to 2 inch fingerlings. Swann L., University of Missouri MX392
 * (key SWANN): metabolism doubles for each 18 °F. Woynarovich and Horvath 1980 (key WOYN80): 5,000 to 8,000 larvae in
 * 5 to 7 L. Transcribed from the pages.
 */
import '../../support/printed';
import { bagLoad } from '../../../shared/families/care/kernels/bags';
import { poundsFromGrams, litresFromGallons } from '../../../shared/units/convert';
import { grid } from '../../support/call';

const poundsPerGallon = (gramsPerLitre: number): number =>
  poundsFromGrams(gramsPerLitre * litresFromGallons(1));

test.each([
  ['swim-up fry', 0.05, 1, '0.5', '2.0'],
  ['swim-up fry', 0.05, 12, '0.4', '1.6'],
  ['swim-up fry', 0.05, 24, '0.4', '1.2'],
  ['swim-up fry', 0.05, 48, '0.2', '0.6'],
  ['fingerlings', 0.5, 1, '1.0', '3.7'],
  ['fingerlings', 0.5, 12, '0.9', '3.2'],
  ['fingerlings', 0.5, 24, '0.7', '2.7'],
  ['fingerlings', 0.5, 48, '0.3', '1.3'],
])('%s of %d g for %d h: %s to %s pounds a gallon', (_what, grams, hours, low, high) => {
  const load = bagLoad(grams, hours, 18.3);
  expect(poundsPerGallon(load.low)).toAgreeWithPrinted(low);
  expect(poundsPerGallon(load.high)).toAgreeWithPrinted(high);
});

test('ten degrees warmer halve the load', () => {
  expect(bagLoad(0.5, 12, 28.3).low / bagLoad(0.5, 12, 18.3).low).toBeCloseTo(0.5, 12);
});

test('larvae: the careful number lies below what three sources printed, 710 a litre and more', () => {
  const [low, high] = grid('BAG.FISH', 0.0025, 6, 24, 25)[0] ?? [];
  expect(Number(low) / 6).toBeLessThanOrEqual(710);
  expect(Number(high) / 6).toBeLessThanOrEqual(8000 / 5);
});

test('weight rule and count rule meet at 10 mg: just below counts, just above weighs', () => {
  const perLitre = (grams: number): number => Number(grid('BAG.FISH', grams, 10, 24, 27)[0]?.[2]);
  expect(perLitre(0.0099)).toBe(700);
  expect(perLitre(0.0101)).toBeGreaterThan(700);
});

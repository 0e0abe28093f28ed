/**
 * Walsh S.J., Lindberg W.J. 1986. Catfish Farming in Florida, Circular 710, University of Florida: Table 3, feed
 * particle size by length of channel catfish, printed in inches; 7 ppm thiosulfate for 1 ppm of chlorine; a teaspoon
 * of household bleach (5.25 %) a gallon. Transcribed from the page images 10, 11 and 17.
 */
import '../../support/printed';
import { chlorineGrams, THIOSULFATE_PER_CHLORINE } from '../../../shared/families/care/kernels/disinfect';
import { grainFor } from '../../../shared/families/care/kernels/grain';
import { litresFromGallons } from '../../../shared/units/convert';

const MM_PER_INCH = 25.4;
test.each([
  // Just inside and just outside of each printed limit.
  [0.49, '0.42', '0.60'],
  [0.51, '0.60', '0.84'],
  [0.99, '0.60', '0.84'],
  [1.01, '0.84', '1.19'],
  [1.49, '0.84', '1.19'],
  [1.51, '1.19', '1.68'],
  [2.49, '1.19', '1.68'],
  [2.51, '1.68', '2.38'],
  [3.99, '1.68', '2.38'],
  [4.01, '2.38', '3.36'],
  [5.99, '2.38', '3.36'],
])('a fish of %d inches takes %s to %s mm', (inches, from, to) => {
  const [low, high] = grainFor(inches * MM_PER_INCH);
  expect(low).toAgreeWithPrinted(from);
  expect(high).toAgreeWithPrinted(to);
});

test('above 6 inches a pellet of 3/16 inch', () => {
  expect(grainFor(6.01 * MM_PER_INCH)[0]).toBeCloseTo((3 / 16) * MM_PER_INCH, 2);
});

test('7 parts of thiosulfate for one of chlorine, as the atoms say', () => {
  expect(THIOSULFATE_PER_CHLORINE).toAgreeWithPrinted('7');
});

test('a teaspoon of bleach a gallon is about 68 mg/L', () => {
  // 4.93 mL of 5.25 g in 100 mL.
  const grams = chlorineGrams(litresFromGallons(1), 68, 0.0525);
  expect(grams / 4.93).toAgreeWithPrinted('1.0');
});

/**
 * Piper R.G. et al. 1982 (key PIPER82), pp. 283 and 90: 200 ppm of chlorine for 30 to 60 minutes; 5.6 g of sodium
 * thiosulfate for each gallon of 200 ppm; calcium hypochlorite 70 %. University of Florida sheet (key UFSANIT): 1,000
 * to 2,000 kg of hydrated lime a hectare of wet mud. Transcribed from the pages.
 */
import '../../support/printed';
import { litresFromGallons } from '../../../shared/units/convert';
import { grid, number } from '../../support/call';

test('5.6 g of thiosulfate take the chlorine out of a gallon of 200 mg/L', () => {
  expect(number('CHLORINE.NEUTRALISE', litresFromGallons(1), 200)).toAgreeWithPrinted('5.6');
});

test('200 mg/L stands 30 to 60 minutes', () => {
  expect(grid('CHLORINE.DOSE', 100)[0]?.slice(2, 4)).toEqual([30, 60]);
});

test('a powder of 70 %: 286 g for 1,000 L', () => {
  expect(number('CHLORINE.DOSE', 1000, 200, 'calcium hypochlorite', 0.7)).toAgreeWithPrinted('286');
});

test('a hectare of wet mud takes 1,000 to 2,000 kg of lime', () => {
  expect(grid('LIME.MUD', 10_000)[0]).toEqual([1_000_000, 2_000_000]);
});

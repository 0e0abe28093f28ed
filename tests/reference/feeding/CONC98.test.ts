/**
 * Conceicao L.E.C. et al. 1998. Cost of growth in larval and juvenile African catfish. Aquaculture
 * 161:95-106, abstract: from 0.07 mg to 38 g of body dry weight, oxygen consumption falls from 1.0 to 0.033
 * µmol per mg dry weight and hour, food intake from 152 to 6.2 % of body dry weight a day. Transcribed by the
 * project.
 */
import { foodIntake, oxygenPerFish } from '../../../shared/families/feeding/kernels/metabolism';
import '../../support/printed';

const MG_PER_MICROMOLE = 0.031998;

test.each([
  [0.07, '1.0', '1.52'],
  [38000, '0.033', '0.062'],
])('at %d mg', (dryWeight, oxygen, food) => {
  expect(oxygenPerFish(dryWeight) / dryWeight / MG_PER_MICROMOLE).toAgreeWithPrinted(oxygen);
  expect(foodIntake(dryWeight)).toAgreeWithPrinted(food);
});

test('the line falls all the way, as the abstract says, and ends where it was measured', () => {
  let last = Infinity;
  for (let mg = 0.07; mg < 38000; mg *= 1.7) {
    const rate = oxygenPerFish(mg) / mg;
    expect(rate).toBeLessThan(last);
    last = rate;
  }
  expect(oxygenPerFish(0.069)).toBeNaN();
  expect(foodIntake(38001)).toBeNaN();
});

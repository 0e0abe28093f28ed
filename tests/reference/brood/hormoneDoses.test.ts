/**
 * Doses per kg for African catfish, taken when none is given. Brzuska E. 2003, Czech J. Anim. Sci.
 * 48(5):181-190 (BRZUSKA03): carp pituitary 4 mg/kg, ready-made solution 0.5 mL/kg. Suez Canal University
 * (SUEZ): hCG 3000 IU/kg best. Tilapia pituitary 8 mg/kg best of 6 to 10 (TILAPIAGLAND). Shourbela et al.
 * (SHOURBELA): 40 µg/kg GnRHa with 10 mg/kg domperidone. Sharaf 2012 (SHARAF12): 30 µg/kg with 8 mg/kg
 * pimozide. Read in abstracts.
 */
import { grid } from '../../support/call';

test.each([
  ['ready-made solution', '0.5', 'mL', '0'],
  ['carp pituitary', '4', 'mg', '0'],
  ['tilapia pituitary', '8', 'mg', '0'],
  ['hCG', '3000', 'IU', '0'],
  ['GnRHa with domperidone', '40', 'µg', '10'],
  ['GnRHa with pimozide', '30', 'µg', '8'],
])('1 kg gets of %s %s %s and %s mg antagonist', (preparation, amount, unit, antagonist) => {
  const [got, gotUnit, , gotAntagonist] = grid('HORMONE.DOSE', 1, preparation)[0] ?? [];
  expect(got).toAgreeWithPrinted(amount);
  expect(gotUnit).toBe(unit);
  expect(gotAntagonist).toAgreeWithPrinted(antagonist);
});

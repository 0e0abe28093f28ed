/**
 * Hatching characteristics of Artemia strain KKT1, J. Biol. Res. 2005
 * (http://www.jbr.gr/papers20051/frm5-04.htm): hatching percentage 69.2 %, efficiency 230,600 nauplii per
 * gram, output 661 mg per gram. Transcribed by the project.
 */
import { findFunction } from '../../../shared/catalogue';
import { invoke } from '../../../shared/functions/invoke';
import type { Cell, Grid } from '../../../shared/base/values';
import { isGrid } from '../../../shared/base/values';
import '../../support/printed';

const first = (name: string, args: readonly (Cell | Grid)[]): Cell | undefined => {
  const fn = findFunction(name);
  if (!fn) throw new Error(name);
  const got = invoke(fn, args);
  return isGrid(got) ? got[0]?.[0] : got;
};

/** Cysts in a gram follow from the two printed figures: efficiency ÷ percentage. */
const CYSTS_PER_GRAM = 230600 / 0.692;

test('the output is efficiency times the weight of a nauplius', () => {
  // 2.866 µg is worked out from the two printed figures; the printed output is met again with it.
  expect(first('SPAWN.CYSTS.OUTPUT', [230600, 2.866])).toAgreeWithPrinted('661');
});

test('percentage and efficiency agree on the cysts in a gram', () => {
  expect(CYSTS_PER_GRAM).toAgreeWithPrinted('333,237');
  const hatched = Math.round(CYSTS_PER_GRAM * 0.692);
  expect(first('SPAWN.CYSTS.HATCHED', [hatched, 0, Math.round(CYSTS_PER_GRAM) - hatched])).toAgreeWithPrinted(
    '0.692',
  );
});

test('counted samples of such a hatch give the printed efficiency back', () => {
  // 1.6 g in 80 mL, 0.25 mL samples: mean × 200, the sample formula recalled from FAO Paper 361 (from
  // memory).
  expect(first('SPAWN.CYSTS.EFFICIENCY', [[[1153], [1150], [1156]], 0.25, 0.08, 1.6])).toAgreeWithPrinted(
    '230,600',
  );
});

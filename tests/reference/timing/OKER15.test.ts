/**
 * Okere E., Erondu E.S., Zabbey N. 2015. Agriculture, Forestry and Fisheries 4(2):71-76.
 * Latency of African catfish at a mean of 26.0 ± 0.7 °C, printed in minutes: 613 with a ready-made solution, 745
 * with pituitary extract. Transcribed from the public page of the paper.
 */
import '../../support/printed';
import { profileFor } from '../../../shared/families/timing/records/profiles';
import { isError } from '../../../shared/base/values';
import { hoursAt } from '../../../shared/families/timing/kernels/rateCurve';

const NONE = { ownTemperatures: undefined, ownHours: undefined };

test.each([
  // The shortest and the longest of the hours measured or found best with each.
  ['ready-made solution', '613', 0],
  ['carp pituitary', '745', 1],
] as const)('%s: one end of the best hours at 26.0 °C is %s min', (preparation, minutes, end) => {
  const profile = profileFor('latency', preparation, NONE);
  if (isError(profile)) throw new Error(profile.message);
  expect(hoursAt(profile.curve, 26) * profile.usual[end] * 60).toAgreeWithPrinted(minutes);
});

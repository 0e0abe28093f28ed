/**
 * Hecht T., Appelbaum S. 1988. J. Zoology, abstract: cannibalism begins at 8 mm, 3.5 days after the start of
 * feeding, and loses importance at about 80 mm, 47 days. Mwangi A.M. et al. 2020: grading every two weeks did
 * best. Transcribed by the project.
 */
import {
  ONSET,
  OVER,
  GRADING_INTERVAL,
  gradingDays,
} from '../../../shared/families/growth/kernels/cannibalism';
import '../../support/printed';

test('onset, end and the gradings between', () => {
  expect(ONSET.days).toAgreeWithPrinted('3.5');
  expect(ONSET.length).toAgreeWithPrinted('8');
  expect(OVER.days).toAgreeWithPrinted('47');
  expect(OVER.length).toAgreeWithPrinted('80');
  expect(gradingDays(GRADING_INTERVAL, OVER.days)).toEqual([14, 28, 42]);
});

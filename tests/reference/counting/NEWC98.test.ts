/**
 * Newcombe R.G. 1998. Two-sided confidence intervals for the single proportion: comparison of seven methods.
 * Statistics in Medicine 17:857-872, table I, methods 3 (score) and 4 (score with continuity correction), 95
 * %. Digits transcribed by the project from several public test suites that quote the table alike; the paper
 * was not opened.
 */
import { twoSidedNormal } from '../../../shared/maths/normalQuantile';
import { wilsonAt, wilsonCorrectedAt } from '../../../shared/families/counting/kernels/wilson';
import '../../support/printed';

const Z = twoSidedNormal(0.95);

test.each([
  [81, 263, '0.2553', '0.3662', '0.2535', '0.3682'],
  [15, 148, '0.0624', '0.1605', '0.0598', '0.1644'],
  [0, 20, '0.0000', '0.1611', '0.0000', '0.2005'],
  [1, 29, '0.0061', '0.1718', '0.0018', '0.1963'],
])('table I: %d of %d', (k, n, low, high, lowCorrected, highCorrected) => {
  expect(wilsonAt(k, n, Z).low).toAgreeWithPrinted(low);
  expect(wilsonAt(k, n, Z).high).toAgreeWithPrinted(high);
  expect(wilsonCorrectedAt(k, n, Z).low).toAgreeWithPrinted(lowCorrected);
  expect(wilsonCorrectedAt(k, n, Z).high).toAgreeWithPrinted(highCorrected);
});

/**
 * R's score interval with continuity correction for 9 of 30, printed on a blog page of 9 April 2014 with z =
 * 1.96.
 */
test('9 of 30 with z = 1.96', () => {
  expect(wilsonCorrectedAt(9, 30, 1.96).low).toAgreeWithPrinted('0.1541262');
  expect(wilsonCorrectedAt(9, 30, 1.96).high).toAgreeWithPrinted('0.4955824');
});

/** Web pages print (0.398, 0.602) or (0.400, 0.600) for p = 0.5 without n: neither is Wilson at 100. */
test('counter-example: the loose web values for 50 of 100 are not met', () => {
  expect(wilsonAt(50, 100, Z).low).not.toAgreeWithPrinted('0.398');
  expect(wilsonAt(50, 100, Z).low).not.toAgreeWithPrinted('0.400');
  expect(wilsonAt(50, 100, Z).low).toAgreeWithPrinted('0.4038');
});

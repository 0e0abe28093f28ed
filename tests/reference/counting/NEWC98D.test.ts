/**
 * Newcombe R.G. 1998. Interval estimation for the difference between independent proportions: comparison of
 * eleven methods. Statistics in Medicine 17:873-890, table II, method 10, contrasts (a) to (h), 95 %.
 * Digits transcribed by the project from several public test suites that quote the table alike; the paper was
 * not opened.
 */
import { shareDifference } from '../../../shared/families/counting/kernels/difference';
import '../../support/printed';

test.each([
  ['a', 56, 70, 48, 80, '0.0524', '0.3339'],
  ['b', 9, 10, 3, 10, '0.1705', '0.8090'],
  ['c', 6, 7, 2, 7, '0.0582', '0.8062'],
  ['d', 5, 56, 0, 29, '-0.0381', '0.1926'],
  ['e', 0, 10, 0, 20, '-0.1611', '0.2775'],
  ['f', 0, 10, 0, 10, '-0.2775', '0.2775'],
  ['g', 10, 10, 0, 20, '0.6791', '1.0000'],
  ['h', 10, 10, 0, 10, '0.6075', '1.0000'],
])('table II (%s): %d of %d against %d of %d', (_row, k1, n1, k2, n2, low, high) => {
  const got = shareDifference(k1, n1, k2, n2, 0.95);
  expect(got.low).toAgreeWithPrinted(low);
  expect(got.high).toAgreeWithPrinted(high);
});

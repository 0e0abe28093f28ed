/**
 * Proportions control charts. NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.3.2: 30 wafers of 50
 * chips; counts from memory, their sum of 347 and the printed centre line of 0.2313 agree with a textbook
 * exercise that was read. Limits 0.0524 and 0.4102 from memory. "An Introduction to Business Statistics",
 * example 16.6 (read in a public copy): ten samples of 200.
 */
import { controlChart } from '../../../shared/families/learning/kernels/controlChart';
import '../../support/printed';

const WAFERS = [
  12, 15, 8, 10, 4, 7, 16, 9, 14, 10, 5, 6, 17, 12, 22, 8, 10, 5, 13, 11, 20, 18, 24, 15, 9, 12, 7, 13, 9, 6,
];
const TEXTBOOK = [40, 44, 22, 34, 24, 32, 28, 32, 34, 30];

test('wafers: centre and limits of chance', () => {
  const { centre, points } = controlChart(
    WAFERS,
    WAFERS.map(() => 50),
  );
  expect(centre).toAgreeWithPrinted('0.2313');
  expect(points[0]?.chanceLow).toAgreeWithPrinted('0.0524');
  expect(points[0]?.chanceHigh).toAgreeWithPrinted('0.4102');
});

test('textbook: 320 of 2000', () => {
  const { centre, points } = controlChart(
    TEXTBOOK,
    TEXTBOOK.map(() => 200),
  );
  expect(centre).toAgreeWithPrinted('0.16');
  expect(points[0]?.chanceHigh).toAgreeWithPrinted('0.2378');
  expect(points[0]?.chanceLow).toAgreeWithPrinted('0.0822');
});

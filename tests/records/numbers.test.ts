import { decimalIn, isOpenToBoth, readNumber } from '../../shared/records/columns/cells/numbers';

/** Which mark is the decimal one, by the rules of writing numbers: two kinds, the last one; three digits, perhaps none. */
test.each([
  ['1,250.5', '.'],
  ['1.250,5', ','],
  ['1,250,000', '.'],
  ['1.250.000', ','],
  ['0,250', ','],
  ['0.250', '.'],
  ['12,5', ','],
  ['12.50', '.'],
  ['1234.567', '.'],
  ['1250', undefined],
  ['1,250', undefined],
  ['999.125', undefined],
  [',5', ','],
  ['.5', '.'],
  [',250', ','],
  ['.250', '.'],
])('%s: the decimal mark is %s', (text, mark) => {
  expect(decimalIn(text)).toBe(mark);
});

test.each([
  ['1,250', true],
  ['1.250', true],
  ['0.250', false],
  ['1234,567', false],
  ['1250', false],
  ['12,50', false],
])('%s may be either: %s', (text, isOpen) => {
  expect(isOpenToBoth(text)).toBe(isOpen);
});

test.each([
  ['1,250', ',', 1.25],
  ['1,250', '.', 1250],
  ['1.250', ',', 1250],
  ['1.250', '.', 1.25],
  ['1.250,75', '.', 1250.75],
  [',5', '.', 0.5],
  ['.250', ',', 0.25],
  ['-3,5', '.', -3.5],
  ['\u22123.5', ',', -3.5],
  ['12 500', '.', 12_500],
  ["12'500", '.', 12_500],
] as const)('%s with “%s” for the decimals is %d', (text, decimal, value) => {
  expect(readNumber(text, decimal)).toEqual({ value, unit: '' });
});

test('what stands behind a number is its unit', () => {
  expect(readNumber('12,5 kg', '.')).toEqual({ value: 12.5, unit: 'kg' });
  expect(readNumber('no number', '.')).toEqual({ value: NaN, unit: '' });
});

test('digits of other keyboards and written fractions are read as in the pane', () => {
  expect(readNumber('2½ kg', '.')).toEqual({ value: 2.5, unit: 'kg' });
  expect(readNumber('\uff15\uff10\uff10', '.')).toEqual({ value: 500, unit: '' });
  expect(readNumber('\u0661\u0662\u066b\u0665', '.')).toEqual({ value: 12.5, unit: '' });
});

test.each([
  ['c. 120', 120],
  ['c 120', 120],
  ['ca 120', 120],
  ['C101', NaN],
  ['c101', NaN],
  ['B101', NaN],
])('a number with “circa” before it, or the tag of a fish: %s', (text, value) => {
  expect(readNumber(text, '.').value).toBe(value);
});

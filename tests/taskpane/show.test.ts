import { celsius, count, gram, money, moment, pH, share } from '../../shared/units/quantities';
import { asWritten, rectangles } from '../../taskpane/host/reading/cells';
import { areaText } from '../../shared/sheet/formula/address';
import { dayText, weekdayText } from '../../shared/units/dates';
import {
  fieldShown,
  grouped,
  labelOf,
  setNumberStyle,
  showCell,
  showWithUnit,
} from '../../taskpane/pane/values/show';

const plain = (text: string): string => text.replaceAll('\u202f', ' ');

test.each([
  [12.345, gram, '12.35 g'],
  [0.0042, gram, '0.0042 g'],
  [1_234_567, count, '1 234 567'],
  [0.0537, share, '5.4 %'],
  [0.00537, share, '0.537 %'],
  [0.8, share, '80.0 %'],
  [7, pH, '7.00'],
  [-2.5, celsius, '−2.5 °C'],
  [46447.9375, moment, '2027-03-01 22:30'],
  [0, gram, '0.00 g'],
  [999_999_999_999, count, '999 999 999 999'],
  [1_000_000_000_000, count, '1.0000e+12'],
  [-0.001, money, '−0.001 money'],
])('%d in %p is printed as %s', (value, quantity, printed) => {
  expect(plain(showWithUnit(value, quantity))).toBe(printed);
});

test('an error shows its code, a blank a dash', () => {
  expect(showCell({ error: '#N/A', message: 'x' }, gram)).toBe('#N/A');
  expect(showCell('', gram)).toBe('–');
  expect(showCell(true, gram)).toBe('TRUE');
});

test('what rounds to nothing has no minus', () => {
  expect(grouped(-0.0001, 2)).toBe('0.00');
});
test('1 March 2027 is a Monday', () => {
  expect([weekdayText(46447), dayText(46447)]).toEqual(['Mon', '1 Mar']);
});
test('parameter names become words', () => {
  expect(['sampleWeights', 'ph', 'naupliiPerLarva'].map(labelOf)).toEqual([
    'Sample weights',
    'pH',
    'Nauplii per larva',
  ]);
});

test.each([
  ['Fish', 'Fish'],
  ['Start plan', 'Start plan'],
  ['2026-05-01', "'2026-05-01"],
  ['=1+1', "'=1+1"],
  ['-', "'-"],
  ['TRUE', "'TRUE"],
  ['May 5', "'May 5"],
  ['#N/A', "'#N/A"],
  ['007', "'007"],
])('the text %s is written so that it stays text', (text, written) => {
  expect(asWritten(text)).toBe(written);
});

test('rectangles cover each cell exactly once', () => {
  const cells = ['A1', 'B1', 'C1', 'A2', 'B2', 'C2', 'E2', 'A4', 'B3', 'B4'];
  const areas = rectangles(cells);
  expect(areas.map(areaText).sort()).toEqual(['A1:C2', 'A4:B4', 'B3', 'E2'].sort());
});

test('a number in a field has the mark its reader types, unless that could make thousands of it', () => {
  const texts = ['0.5', '27.25', '80.5 %', '1.234', '0.125', '12.3456', '-1.5', 'F1.2', '1.2.3', '12'];
  expect(texts.map(fieldShown)).toEqual(texts);
  setNumberStyle('comma');
  expect(texts.map(fieldShown)).toEqual([
    '0,5',
    '27,25',
    '80,5 %',
    '1.234',
    '0,125',
    '12,3456',
    '-1,5',
    'F1.2',
    '1.2.3',
    '12',
  ]);
  setNumberStyle('point');
});

import { findFunction } from '../../../shared/catalogue';
import type { NamedParam } from '../../../shared/functions/define';
import { evaluate } from '../../../shared/catalogue/calculation';
import { isoMomentText } from '../../../shared/units/dates';
import { setPhrases } from '../../../taskpane/pane/phrases';
import { literal, readMoment, readNumber, readTyped } from '../../../taskpane/pane/values/typed';

function param(fn: string, name: string): NamedParam {
  const found = findFunction(fn)?.params.find((one) => one.name === name);
  if (!found) throw new Error(`${fn} has no ${name}`);
  return found;
}
const temperature = param('SPAWN.AMMONIA.SHARE', 'temperature');
const injected = param('SPAWN.STRIP.TIME', 'injected');
const preparation = param('SPAWN.STRIP.TIME', 'preparation');
const weights = param('SPAWN.EGGS.BYWEIGHT', 'sampleWeights');

test.each([
  ['6.8', 6.8],
  ['6,8', 6.8],
  [' 24 ', 24],
  ['-3', -3],
  ['−3', -3],
  ['80%', 0.8],
  ['80 %', 0.8],
  ['.5', 0.5],
  ['1e3', 1000],
])('the number “%s” is %d', (text, number) => {
  expect(readNumber(text)).toBe(number);
});

test.each(['', '6,8,9', '1,000,5', '24 °C', '--1', '1 2'])('“%s” is no number', (text) => {
  expect(readNumber(text)).toBeUndefined();
});

// Serial numbers as spreadsheets count them: 1 January 2000 is 36526.
test.each([
  ['2000-01-01', 36526],
  ['2000-01-01 12:00', 36526.5],
  ['2000-01-01T06:00', 36526.25],
  ['2024-02-29', 45351],
  ['22:30', 22.5 / 24],
  ['22h30', 22.5 / 24],
  ['22 h', 22 / 24],
  ['29/02/2024 06h', 45351.25],
  ['29.2.2024', 45351],
  ['29 février 2024 12:00', 45351.5],
])('the moment “%s” is %d', (text, serial) => {
  expect(readMoment(text)).toBeCloseTo(serial, 9);
});

test.each(['2023-02-29', '1.5.2026', '01/05/2026', '24:00', '2026-13-01', ''])(
  '“%s” is no moment',
  (text) => {
    expect(readMoment(text)).toBeUndefined();
  },
);

test('day before month where the language has one order', () => {
  setPhrases('fr', {});
  expect(['01/05/2026 22:30', '1.5.2026'].map((text) => isoMomentText(readMoment(text) ?? 0))).toEqual([
    '2026-05-01 22:30',
    '2026-05-01',
  ]);
  setPhrases('en', undefined);
  expect(readMoment('01/05/2026')).toBeUndefined();
});

test('a moment reads back as it was typed', () => {
  for (const text of ['2026-05-01', '2026-05-01 22:30', '2027-12-31 00:01'])
    expect(isoMomentText(readMoment(text) ?? 0)).toBe(text);
});

test('a typed value becomes the formula text of the same value', () => {
  expect(readTyped('82', temperature)).toEqual({ kind: 'value', value: 82, formula: '82' });
  expect(readTyped('24,5', temperature)).toEqual({ kind: 'value', value: 24.5, formula: '24.5' });
  expect(readTyped('warm', temperature)).toEqual({ kind: 'value', value: 'warm', formula: '"warm"' });
  expect(readTyped('ready-made solution', preparation)).toMatchObject({ formula: '"ready-made solution"' });
  expect(readTyped('say "when"', preparation)).toMatchObject({ formula: '"say ""when"""' });
  expect(readTyped('', temperature)).toEqual({ kind: 'blank' });
});

test('a date becomes DATE and TIME, which no language of a spreadsheet misreads', () => {
  const typed = readTyped('2026-05-01 22:30', injected);
  expect(typed).toMatchObject({ kind: 'value', formula: 'DATE(2026,5,1)+TIME(22,30,0)' });
  expect(typed.kind === 'value' && evaluate(`=${typed.formula}`)).toBeCloseTo(
    readMoment('2026-05-01 22:30') ?? 0,
    9,
  );
});

test.each(['B2', '$B$2:C9', 'Sheet1!A1', "'Night log'!A1:A9", 'B:B'])('“%s” is a reference', (text) => {
  expect(readTyped(text, temperature)).toEqual({ kind: 'reference', reference: text });
});
test.each(['24', 'hot', '2026-05-01', 'AB', 'B2 and B3'])('“%s” is no reference', (text) => {
  expect(readTyped(text, temperature).kind).toBe('value');
});

test.each([
  ['0.5; 0.6; 0.4', [0.5, 0.6, 0.4]],
  ['0,5; 0,6', [0.5, 0.6]],
  ['0.5, 0.6, 0.4', [0.5, 0.6, 0.4]],
  ['0.5 0.6 0.4', [0.5, 0.6, 0.4]],
  ['0.5\n0.6', [0.5, 0.6]],
  ['1,2,3', [1, 2, 3]],
])('the list “%s” is %j', (text, items) => {
  expect(readTyped(text, weights)).toEqual({
    kind: 'value',
    value: items.map((item) => [item]),
    formula: `{${items.join(';')}}`,
  });
});

test('one item of a list is that item, a decimal comma included', () => {
  expect(readTyped('0,5', weights)).toMatchObject({ value: 0.5, formula: '0.5' });
});

test('a value written as a formula evaluates to itself', () => {
  for (const value of [1.5, -2, 'a "b"', true]) expect(evaluate(`=${literal(value)}`)).toEqual(value);
  expect(
    evaluate(
      `=${literal([
        [1, 2],
        [3, 4],
      ])}`,
    ),
  ).toEqual([
    [1, 2],
    [3, 4],
  ]);
});

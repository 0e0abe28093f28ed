import { call } from '../../support/call';
import { column, rowsOf, sentenceOf } from '../../support/sheet';

test.each([
  [
    'a total in kilograms',
    'EGGS.BYWEIGHT',
    [0.3168, column(1.5, 1.6), column(36, 35)],
    'looks like kilograms',
  ],
  ['total and sample swapped', 'EGGS.BYWEIGHT', [2.9, column(1.5, 1.6), column(36, 35)], 'wrong way round'],
  [
    'a zero sample',
    'EGGS.BYWEIGHT',
    [300, column(1.5, 0), column(36, 35)],
    'row 2: expected a number above 0',
  ],
  ['a negative sample', 'EGGS.BYWEIGHT', [300, column(1.5, -1.6), column(36, 35)], 'got −1.6'],
  [
    'a count without its weight',
    'EGGS.BYWEIGHT',
    [300, column(1.5, null), column(36, 35)],
    'row 2: the cell is blank',
  ],
  [
    'one sample in kilograms',
    'EGGS.BYWEIGHT',
    [300, column(1.5, 0.0016, 1.9), column(1036, 1135, 1241)],
    'row 2',
  ],
  ['no eggs at all', 'EGGS.BYWEIGHT', [300, column(1.5, 1.6), column(0, 0)], 'nothing was counted'],
  ['half an egg', 'EGGS.BYWEIGHT', [300, column(1.5), column(36.5)], 'whole number'],
  [
    'a weight with the unit of a volume',
    'EGGS.BYWEIGHT',
    ['300 ml', column(1.5), column(36)],
    'Leave the unit out',
  ],
  ['a decimal comma', 'EGGS.BYWEIGHT', ['300,5', column(1.5), column(36)], 'decimal comma'],
  [
    'a vat in cubic metres',
    'LARVAE.BYVOLUME',
    [0.5, column(250, 250, 250), column(24, 31, 27)],
    'cubic metres',
  ],
  ['more hatched than fertilised', 'HATCH.SHARE', [640, 600], 'more hatched than fertilised'],
  ['more fertilised than eggs', 'FERTILISATION.SHARE', [640, 600], 'wrong way round'],
  ['more alive than stocked', 'SURVIVAL.SHARE', [640, 600], 'fish from another vat'],
  ['nothing looked at', 'SHARE.INTERVAL', [0, 0], 'sample: expected a whole number'],
  ['confidence as a plain percent', 'SHARE.INTERVAL', [5, 10, 95], 'type 95% or 0.95'],
  ['a stage that gained fish', 'STAGES.PRODUCT', [1000, column(80, 120), column(100, 100)], 'row 2'],
  [
    'ends that do not enclose the start',
    'STAGES.PRODUCT',
    [1000, column(80), column(100), 1100, 1200],
    'must enclose',
  ],
  ['a plus-or-minus in plain percent', 'SAMPLE.SIZE', [5], 'type 5% or 0.05'],
  ['an error in a cell', 'SHARE.INTERVAL', [{ error: '#DIV/0!' as const }, 10], 'Mend that cell first'],
])('%s', (_what, id, args, says) => {
  expect(sentenceOf(id, ...args)).toContain(says);
});

test('a bad row errs alone, the others answer', () => {
  const rows = rowsOf('HATCH.SHARE', column(180, 640, null, 90), column(200, 600, null, 100));
  expect(rows[0]?.[0]).toBe(0.9);
  expect(rows[1]?.[0]).toMatchObject({ error: '#VALUE!' });
  expect(rows[2]).toEqual(['', '', '']);
  expect(rows[3]?.[0]).toBe(0.9);
});

test('a single sample says that its interval is too narrow', () => {
  expect(rowsOf('EGGS.BYWEIGHT', 100, 1, 25)[0]?.[4]).toContain('one sample');
  expect(rowsOf('EGGS.BYWEIGHT', 100, column(1, 1), column(25, 30))[0]?.[4]).toContain(
    't with 1 degree of freedom',
  );
});

test('the heading row carries the units', () => {
  const got = call('EGGS.BYWEIGHT', 316.8, column(1.5, 1.6, 1.9), column(36, 35, 41), null, true);
  expect(Array.isArray(got) && got[0]).toEqual([
    'Eggs',
    'Low',
    'High',
    'Eggs per gram (per g)',
    'Interval from',
  ]);
});

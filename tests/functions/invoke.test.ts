import { column, defineFunction, fields, rows, value } from '../../shared/functions/define';
import { invoke } from '../../shared/functions/invoke';
import { choice, flag, num, series, texts } from '../../shared/functions/params';
import { celsius, count, gram, litre, mgPerLitre, text } from '../../shared/units/quantities';
import type { Grid } from '../../shared/base/values';
import { isError, outside } from '../../shared/base/values';

const about = {
  family: 'Water',
  summary: 'A function made up for this test.',
  valid: 'anywhere',
  sources: ['DEFINITION'],
  examples: [],
} as const;

const dose = defineFunction({
  ...about,
  id: 'TEST.DOSE',
  params: {
    volume: num(litre, { above: 0, max: 1e6, doc: 'Water to treat.' }),
    rate: num(mgPerLitre, { min: 0, doc: 'Dose.', default: 5 }),
    material: choice(['soda ash', 'baking soda'], {
      doc: 'What is dosed.',
      default: 'soda ash',
      aliases: { soda: 'soda ash' },
    }),
    strong: flag(false, 'Double it.'),
    temperature: num(celsius, {
      min: 0,
      max: 45,
      doc: 'Temperature.',
      optional: true,
      published: { min: 18, max: 33, source: 'DEFINITION', because: 'Nothing was published beyond.' },
    }),
  },
  returns: value(gram, 'Grams.'),
  compute: ({ volume, rate, material, strong, temperature }) =>
    (volume * rate * (strong ? 2 : 1) * (material === 'soda ash' ? 1 : 3)) / 1000 +
    (temperature === undefined ? 0 : 0.5),
});

const spread = defineFunction({
  ...about,
  id: 'TEST.SPREAD',
  params: { middle: num(count, { min: 0, doc: 'Middle.' }) },
  returns: fields({ low: column('Low', gram), high: column('High', gram) }, 'Both ends.'),
  compute: ({ middle }) => (middle > 100 ? outside('Too far.') : { low: middle - 1, high: middle + 1 }),
});

const list = defineFunction({
  ...about,
  id: 'TEST.LIST',
  params: {
    weights: series(gram, { above: 0, doc: 'Weights.', pair: 'samples' }),
    counts: series(count, { min: 0, whole: true, doc: 'Counts.', pair: 'samples' }),
    names: texts({ doc: 'Names.', pair: 'samples', optional: true }),
    scale: num(count, { doc: 'Scale.', default: 1 }),
  },
  returns: rows({ name: column('Name', text), each: column('Each', gram) }, 'One row a sample.'),
  compute: ({ weights, counts, names, scale }) =>
    weights.map((w, i) => ({ name: names?.[i] ?? '', each: (w * scale) / (counts[i] ?? NaN) })),
});

const log = defineFunction({
  ...about,
  id: 'TEST.LOG',
  params: {
    hours: series(count, { doc: 'Hours.', pair: 'log' }),
    readings: series(celsius, { doc: 'Readings.', pair: 'log', blanks: 'drop', min: 0, max: 45, atLeast: 2 }),
  },
  returns: value(count, 'How many.'),
  compute: ({ hours, readings }) => hours.length * 100 + readings.length,
});

const message = (got: unknown): string =>
  isError(got) ? `${got.error} ${got.message ?? ''}` : `no error: ${JSON.stringify(got)}`;

describe('one cell', () => {
  test('defaults stand in for omitted and for blank arguments', () => {
    expect(invoke(dose, [1000])).toBe(5);
    expect(invoke(dose, [1000, null, ''])).toBe(5);
    expect(invoke(dose, [1000, undefined, 'SODA', true])).toBe(10);
  });
  test('zero is a number, not a blank', () => {
    expect(invoke(dose, [1000, 0])).toBe(0);
    expect(message(invoke(dose, [0]))).toBe(
      '#VALUE! volume: expected a number above 0 and up to 1000000 L, got 0. A blank cell can read as 0.',
    );
  });
  test.each([
    [[], 'volume is missing. Give a number above 0 and up to 1000000 L.'],
    [[null], 'volume is missing. Give a number above 0 and up to 1000000 L.'],
    [['12'], 'got the text "12". It is a number stored as text: retype it, or use VALUE().'],
    [['4,6'], 'decimal comma stored as text'],
    [['3/11/2026'], 'It is a date stored as text'],
    [['20 kg'], 'Leave the unit out of the cell, or write one of this kind.'],
    [[true], 'got TRUE'],
    [[{ error: '#DIV/0!' }], 'the cell holds the error #DIV/0!. Mend that cell first.'],
    [[NaN], 'expected a number'],
    [[1, 1, 'chalk'], 'expected one of "soda ash", "baking soda", got the text "chalk"'],
    [[1, 1, 'soda', 'yes'], 'expected TRUE or FALSE, got the text "yes"'],
    [[1, 1, 'soda', true, 82], '82 °F is 27.8 °C'],
    [[1, 1, 'soda', true, 27, 1], 'takes 5 arguments, got 6'],
  ] as const)('%j', (args, says) => {
    expect(message(invoke(dose, args as never))).toContain(says);
  });
  test('outside published limits is #N/A with the limit, not an extrapolation', () => {
    expect(message(invoke(dose, [1, 1, null, null, 40]))).toBe(
      '#N/A temperature: 40 °C is outside what was published (from 18 to 33 °C). Nothing ' +
        'was published beyond.',
    );
  });
  test('no answer is #NUM!', () => {
    expect((invoke(list, [[[1]], [[0]]]) as Grid)[1]?.[1]).toMatchObject({ error: '#NUM!' });
  });
});

describe('ranges', () => {
  test('stretch as built-in functions do', () => {
    expect(invoke(dose, [[[1000], [2000]], [[1, 2, 3]]])).toEqual([
      [1, 2, 3],
      [2, 4, 6],
    ]);
    expect(invoke(dose, [[[1000, 2000]]])).toEqual([[5, 10]]);
    expect(invoke(dose, [[[1000]]])).toBe(5);
  });
  test('a bad cell fails alone, a blank row stays blank', () => {
    const got = invoke(dose, [[[1000], [-1], [null], [''], ['x'], [{ error: '#REF!' }], [2000]]]) as Grid;
    expect(got.map(([cell]) => (isError(cell) ? cell.error : cell))).toEqual([
      5,
      '#VALUE!',
      '',
      '',
      '#VALUE!',
      '#VALUE!',
      10,
    ]);
    const two = invoke(dose, [
      [[1000], [null]],
      [[5], [6]],
    ]) as Grid;
    expect(message(two[1]?.[0])).toContain('volume is missing');
  });
  test('ranges of different sizes say so where they do not fit', () => {
    const got = invoke(dose, [
      [[1000], [2000], [3000]],
      [[1], [2]],
    ]) as Grid;
    expect(got[1]).toEqual([4]);
    expect(message(got[2]?.[0])).toContain('rate has 2 rows but another argument has 3 rows');
  });
  test('ragged ranges fail where they are short', () => {
    const got = invoke(dose, [[[1000, 2000], [3000]], 5]) as Grid;
    expect(got[0]).toEqual([5, 10]);
    expect(isError(got[1]?.[1])).toBe(true);
  });
});

describe('several columns', () => {
  test('fields come without headings, tables with', () => {
    expect(invoke(spread, [5])).toEqual([[4, 6]]);
    expect(invoke(spread, [5, true])).toEqual([
      ['Low (g)', 'High (g)'],
      [4, 6],
    ]);
    expect(invoke(list, [[[2]], [[4]], null, 1, false])).toEqual([['', 0.5]]);
  });
  test('a column of arguments gives a row of answers each; errors fill their row only', () => {
    const got = invoke(spread, [[[5], [null], [101]]]) as Grid;
    expect(got.slice(0, 2)).toEqual([
      [4, 6],
      ['', ''],
    ]);
    expect(message(got[2]?.[0])).toBe('#N/A Too far.');
    expect(message(invoke(spread, [[[5, 6]]]))).toContain('expected a single cell or one column');
  });
  test('a table takes single cells beside its lists', () => {
    expect(message(invoke(list, [[[1]], [[1]], null, [[1], [2]]]))).toContain(
      'scale: expected a single cell, got a range of 2 × 1',
    );
  });
});

describe('lists', () => {
  test('rows of a pair stay together, rows blank in all are skipped', () => {
    expect(invoke(list, [[[2], [null], [6]], [[1], [null], [3]], [['a'], [null], ['c']], 1, false])).toEqual([
      ['a', 2],
      ['c', 2],
    ]);
  });
  test.each([
    [[[[1], [2]], [[1]]], 'counts has 1 cells but weights has 2'],
    [
      [
        [[1], [2]],
        [[1], [null]],
      ],
      'counts, row 2: the cell is blank while weights has a value',
    ],
    [
      [
        [[1], [-2]],
        [[1], [1]],
      ],
      'weights, row 2: expected a number above 0 g, got −2',
    ],
    [
      [
        [[1], ['x']],
        [[1], [1]],
      ],
      'weights, row 2: expected a number above 0 g, got the text "x"',
    ],
    [
      [
        [[1], [2]],
        [[1], [1.5]],
      ],
      'counts, row 2: expected a whole number',
    ],
    [
      [
        [[null], [null]],
        [[1], [1]],
      ],
      'weights: needs at least 1 value, got only blank cells',
    ],
    [[null, [[1], [1]]], 'weights is missing'],
    [[[[1]], [[1]], [[{ error: '#N/A' }]]], 'the cell holds the error #N/A'],
  ] as const)('%j', (args, says) => {
    expect(message(invoke(list, args as never))).toContain(says);
  });
  test('a gap in a log leaves its row out', () => {
    expect(
      invoke(log, [
        [[0], [1], [2]],
        [[20], [null], [22]],
      ]),
    ).toBe(202);
    expect(
      message(
        invoke(log, [
          [[0], [1]],
          [[20], [null]],
        ]),
      ),
    ).toContain('needs at least 2 values, got 1');
  });
});

import { measuresFor } from '../../../shared/dosing/spoons';
import { MATERIAL_NAMES, cautionKeys } from '../../../shared/families/water/carbonate/materials';
import { CAUTIONS } from '../../../shared/functions/cautions';
import { call, columnOf, grid, refusal } from '../../support/call';

/** What people get wrong at the vat: a clear sentence each time, no hang, no silent guess. */
test.each([
  ['pH above 14', 'BUFFER.DOSE', [1000, 15, 7], '#VALUE!', 'from 3 to 11'],
  ['pH below 0', 'BUFFER.DOSE', [1000, -1, 7], '#VALUE!', 'from 3 to 11'],
  ['negative volume', 'BUFFER.DOSE', [-1000, 6, 7], '#VALUE!', 'above 0'],
  ['blank volume read as 0', 'BUFFER.DOSE', [0, 6, 7], '#VALUE!', 'blank cell'],
  [
    'target below the present with a base',
    'BUFFER.DOSE',
    [1000, 7.5, 6.5, 1, 25, 'soda ash', 1, null, 'closed'],
    '#VALUE!',
    'only raises pH',
  ],
  [
    'target above the present with an acid',
    'BUFFER.DOSE',
    [1000, 6.5, 7.5, 1, 25, 'HCl', 1, null, 'closed'],
    '#VALUE!',
    'only lowers pH',
  ],
  ['alkalinity impossible at this pH', 'BUFFER.DOSE', [1000, 9, 9.5, -0.5], '#VALUE!', 'cannot be at pH'],
  [
    'alkalinity that needs more CO2 than water holds',
    'BUFFER.DOSE',
    [1000, 5.3, 7, 3],
    '#VALUE!',
    '50 mg/L CaCO3 is 1 meq/L',
  ],
  ['alkalinity typed in mg/L', 'BUFFER.DOSE', [1000, 6.5, 7, 60], '#VALUE!', 'mg/L CaCO3'],
  ['temperature in °F', 'BUFFER.DOSE', [1000, 6.5, 7, 1, 80], '#VALUE!', '°F'],
  ['an unknown product', 'BUFFER.DOSE', [1000, 6.5, 7, 1, 25, 'sugar'], '#VALUE!', 'expected one of'],
  ['purity in percent', 'BUFFER.DOSE', [1000, 6.5, 7, 1, 25, 'soda ash', 95], '#VALUE!', '0.95'],
  [
    'carbon dioxide for a lasting fall',
    'BUFFER.DOSE',
    [1000, 8, 7, 1, 25, 'CO2', 1, null, 'open'],
    '#NUM!',
    'leaves again',
  ],
  [
    'lime past saturation',
    'BUFFER.DOSE',
    [1000, 6, 9, null, 25, 'agricultural lime', 1, null, 'open'],
    '#NUM!',
    'stops dissolving',
  ],
  [
    'baking soda past 8.3',
    'BUFFER.DOSE',
    [1000, 6, 8.8, 1, 25, 'baking soda', 1, null, 'closed'],
    '#NUM!',
    'Use soda ash',
  ],
  [
    'more salt than the method holds',
    'BUFFER.DOSE',
    [1000, 6, 7, 1, 25, 'soda ash', 1, null, 'closed', 0, 100, 'g/L salt'],
    '#N/A',
    'more salt',
  ],
  [
    'readings out of order',
    'BUFFER.NEXT',
    [1000, columnOf([0, 6, 4]), columnOf([4.6, 5.5, 5.9])],
    '#VALUE!',
    'running totals',
  ],
  [
    'no reading before the first dose',
    'BUFFER.NEXT',
    [1000, columnOf([3, 6]), columnOf([5, 5.5])],
    '#VALUE!',
    'before any product',
  ],
  [
    'a pH missing in the middle',
    'BUFFER.NEXT',
    [1000, columnOf([0, 4, 8]), columnOf([5, null, 6])],
    '#VALUE!',
    'row 2',
  ],
  [
    'columns of different length',
    'BUFFER.NEXT',
    [1000, columnOf([0, 4, 8]), columnOf([5, 6])],
    '#VALUE!',
    'cells',
  ],
  [
    'ten thousand readings',
    'BUFFER.NEXT',
    [
      1000,
      columnOf(Array.from({ length: 10_000 }, (_, i) => i)),
      columnOf(Array.from({ length: 10_000 }, () => 6)),
    ],
    '#N/A',
    'up to 40 readings',
  ],
  [
    'a target outside the window',
    'BUFFER.NEXT',
    [1000, columnOf([0]), columnOf([5]), 8],
    '#VALUE!',
    'edges of the window',
  ],
  [
    'an acid in the titration',
    'BUFFER.NEXT',
    [1000, columnOf([0]), columnOf([8]), 7, null, 25, 'HCl'],
    '#VALUE!',
    'lowers pH',
  ],
  [
    'pH of a reading above 14',
    'BUFFER.NEXT',
    [1000, columnOf([0, 4]), columnOf([5, 55])],
    '#VALUE!',
    'row 2',
  ],
] as const)('%s', (_what, id, args, code, says) => {
  const got = refusal(id, ...args);
  expect(got).toContain(code);
  expect(got).toContain(says);
});

const remark = (doses: readonly number[], readings: readonly number[]): { todo: string; remark: string } => {
  const [, row = []] = grid('BUFFER.NEXT', 1000, columnOf(doses), columnOf(readings));
  return { todo: String(row[1]), remark: String(row[8]) };
};

test('one reading only is answered with a small dose and says what it rests on', () => {
  expect(remark([0], [4.8]).remark).toContain('One reading only');
});

test('equal readings after doses are pointed out', () => {
  expect(String(grid('BUFFER.FIT', 1000, columnOf([0, 4, 8]), columnOf([6, 6, 6]))[0]?.[10])).toMatch(
    /hardly moved|do not go together|buffer beside/,
  );
});

test('two readings at one dose: alike they count as a repeat, apart they ask to wait', () => {
  expect(remark([0, 0, 0], [4.4, 4.42, 4.42]).todo).toContain('Dissolve');
  expect(remark([0, 4, 4], [5, 5.6, 6]).todo).toContain('until two readings agree');
});

test('a pH that falls after a base is asked for again', () => {
  expect(remark([0, 4], [6, 5.5]).todo).toContain('Read again before anything else: pH 5.50 was read');
});

test('above the window nothing more is given', () => {
  expect(remark([0, 4], [6, 7.9]).todo).toContain('above the window');
});

test('with fish in the water no step is longer than 0.3 pH', () => {
  const row =
    grid(
      'BUFFER.NEXT',
      1000,
      columnOf([0, 0, 0]),
      columnOf([5.6, 5.6, 5.6]),
      7,
      null,
      26,
      'soda ash',
      1,
      'aerated',
      null,
      0,
      'good',
      6.5,
      7.5,
      0.6,
      true,
    )[1] ?? [];
  expect(Number(row[2])).toBeGreaterThan(0);
  expect(Number(row[6]) - 5.6).toBeLessThan(0.35);
});

/** What was measured before this method: each wrong answer now has its sentence. */
describe('the measured list', () => {
  const row = (...args: Parameters<typeof grid> extends [string, ...infer R] ? R : never) =>
    grid('BUFFER.NEXT', ...args)[1] ?? [];

  test('a dead meter', () => {
    expect(refusal('BUFFER.DOSE', 1000, 0, 7)).toContain('No vat of water stands there: the meter is off');
    expect(refusal('BUFFER.NEXT', 600, columnOf([0]), columnOf([1.2]))).toContain('Check it in a buffer');
  });
  test('a vat measured in metres', () => {
    expect(refusal('VAT.RECTANGLE', 2, 1, 0.5)).toContain('That looks like metres: 2 m is 200 cm.');
  });
  test('more than dissolves', () => {
    expect(refusal('BUFFER.PH', 1, 1e5, 6, 0.1)).toContain('more than dissolves in 1 L');
  });
  test('two kilograms of baking soda for water that needs air', () => {
    expect(refusal('BUFFER.DOSE', 1000, 5.5, 7.5, 0.2, 30, 'baking soda')).toContain(
      'It needs no baking soda: aerate it',
    );
  });
  test('quicklime with fish in', () => {
    for (const fn of ['BUFFER.DOSE', 'BUFFER.AIRED'] as const) {
      const args = fn === 'BUFFER.DOSE' ? [null, 'open', 0, 0, 'µS/cm', 420, true] : [null, 6.5, true];
      expect(refusal(fn, 1000, 5, 7, null, 25, 'quicklime', 1, ...args)).toContain(
        'never put quicklime into water',
      );
    }
    expect(
      refusal(
        'BUFFER.NEXT',
        1000,
        columnOf([0]),
        columnOf([5]),
        7,
        null,
        25,
        'quicklime',
        1,
        'unknown',
        null,
        0,
        'good',
        6.5,
        7.5,
        1,
        true,
      ),
    ).toContain('never put quicklime into water');
  });
  test('eight times the part-dose before', () => {
    const got = row(1000, columnOf([0, 0.743, 11.801]), columnOf([5.86, 5.93, 6.04]), 7, null, 24.7);
    expect(got[2]).toBe(0);
    expect(Number(got[11])).toBeGreaterThan(8);
  });
  test('the morning after names the pH that was read, and blames nobody', () => {
    const got = row(
      1000,
      columnOf([0, 3, 3]),
      columnOf([5.2, 6.6, 7.9]),
      7,
      null,
      25,
      'soda ash',
      1,
      'unknown',
      null,
      0,
      'good',
      6.5,
      7.5,
      1,
      false,
      null,
      columnOf(['', '', 'night']),
    );
    expect(got[9]).toBe('stop');
    expect(String(got[1])).toContain('pH 7.90 was read');
    expect(String(got[1])).toContain('no fault of the product');
    expect(String(got[8])).not.toContain('bag');
  });
  test('183 g for a hard well at pH 6.2: it is aired, and needs nothing', () => {
    const hard = row(1000, columnOf([0]), columnOf([6.2]), 7, null, 25, 'soda ash', 1, 'well', 3);
    expect([hard[2], hard[9]]).toEqual([0, 'air first']);
    expect(String(hard[1])).toContain('Air first, no product yet');
    expect(String(hard[8])).toContain('by itself: this water needs no product');
    // The plan asks BUFFER.AIRED, for the water as it stands after airing.
    expect(call('BUFFER.AIRED', 1000, 6.2, 7, 3)).toBe(0);
  });
  test('6.8 g in the log where the spoons hold 6.3 g', () => {
    expect(measuresFor(6.8, [8.4])).toMatchObject({ count: 0.75, each: 8.4, grams: expect.closeTo(6.3, 9) });
  });
  test('caustic soda has the caution of a base that burns, and no other product has it', () => {
    expect(cautionKeys('caustic soda', false)).toEqual(['CAUSTIC']);
    expect(CAUTIONS['CAUSTIC']).toMatch(/water|burn/i);
    for (const name of MATERIAL_NAMES.filter((one) => one !== 'caustic soda'))
      expect(cautionKeys(name, true)).not.toContain('CAUSTIC');
  });
  test('a slip of one digit', () => {
    const got = row(1000, columnOf([0, 3]), columnOf([5.2, 9.1]));
    expect([got[2], got[9]]).toEqual([0, 'read again']);
    expect(String(got[1])).toContain('pH 9.10 was read');
  });
  test('a meter that fails its buffer', () => {
    const args = [
      7,
      null,
      25,
      'soda ash',
      1,
      'unknown',
      null,
      0,
      'good',
      6.5,
      7.5,
      1,
      false,
      null,
      null,
      null,
      null,
      null,
    ];
    expect(refusal('BUFFER.NEXT', 1000, columnOf([0]), columnOf([5.2]), ...args, 6.4)).toContain(
      'more than 0.5 off',
    );
    expect(refusal('BUFFER.NEXT', 1000, columnOf([0]), columnOf([5.2]), ...args, 6.5)).toBe('');
  });
});

/** Both sides of every chosen number of the method. */
describe('just inside and just outside', () => {
  test.each([
    [
      'a reading of a vat',
      'BUFFER.NEXT',
      [1000, columnOf([0]), columnOf([3])],
      [1000, columnOf([0]), columnOf([2.99])],
    ],
    ['a side of a vat', 'VAT.RECTANGLE', [10, 10, 3], [9.9, 10, 3]],
    ['the depth of a vat', 'VAT.RECTANGLE', [10, 10, 3], [10, 10, 2.9]],
    [
      'solubility',
      'BUFFER.PH',
      [1, 1.65, 6, 0.1, 25, 'hydrated lime'],
      [1, 1.66, 6, 0.1, 25, 'hydrated lime'],
    ],
    [
      'the ceiling',
      'BUFFER.NEXT',
      [1000, columnOf([0]), columnOf([5]), 7, null, 25, 'soda ash', 1, 'unknown', null, 0, 'good', 6.5, 8],
      [1000, columnOf([0]), columnOf([5]), 7, null, 25, 'soda ash', 1, 'unknown', null, 0, 'good', 6.5, 8.01],
    ],
  ] as const)('%s', (_what, id, inside, outside) => {
    expect(refusal(id, ...inside)).toBe('');
    expect(refusal(id, ...outside)).toContain('#VALUE!');
  });

  const action = (
    doses: number[],
    readings: number[],
    events: string[] = [],
    meter = 'good',
    again?: number[],
  ) => {
    const args = [7, null, 25, 'soda ash', 1, 'unknown', null, 0, meter, 6.5, 7.5, 1, false, null] as const;
    const extra = [columnOf(doses.map((_, i) => events[i] ?? '')), again ? columnOf(again) : null];
    return grid('BUFFER.NEXT', 1000, columnOf(doses), columnOf(readings), ...args, ...extra)[1]?.[9];
  };
  test('the top of the window', () => {
    expect([action([0], [7.5]), action([0], [7.52])]).toEqual(['watch', 'stop']);
  });
  test('the pair of a reading: 0.12 apart still agrees with a good meter, 0.24 with a cheap one', () => {
    expect(action([0], [4.4], [], 'good', [4.52])).not.toBe('wait');
    expect(action([0], [4.4], [], 'good', [4.53])).toBe('wait');
    expect(action([0], [4.4], [], 'cheap', [4.64])).not.toBe('wait');
    expect(action([0], [4.4], [], 'cheap', [4.65])).toBe('wait');
  });
  test('an unusual first reading is read again below 4 and above 9', () => {
    expect([action([0], [4]), action([0], [3.99])].map((one) => one === 'read again')).toEqual([false, true]);
    expect([action([0], [9]), action([0], [9.01])].map((one) => one === 'read again')).toEqual([false, true]);
  });
  test('three hours count as a night', () => {
    const at = (hours: number) =>
      grid(
        'BUFFER.NEXT',
        1000,
        columnOf([0, 2, 2]),
        columnOf([4.9, 5.9, 6.3]),
        7,
        null,
        25,
        'soda ash',
        1,
        'unknown',
        null,
        0,
        'good',
        6.5,
        7.5,
        1,
        false,
        null,
        null,
        null,
        columnOf([46000, 46000.01, 46000.01 + hours / 24]),
      )[1]?.[9];
    expect([at(2.9), at(3.1)]).toEqual(['wait', 'air first']);
  });
  test('no part-dose is more than twice the one before', () => {
    const got = grid(
      'BUFFER.NEXT',
      1000,
      columnOf([0, 0, 0.2, 0.2]),
      columnOf([5, 5, 5.2, 5.2]),
      7,
      null,
      25,
      'soda ash',
      1,
      'aerated',
    )[1];
    expect(Number(got?.[2])).toBeGreaterThan(0);
    expect(Number(got?.[2])).toBeLessThanOrEqual(0.4 + 1e-9);
  });
});

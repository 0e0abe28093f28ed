import { columnOf, grid, refusal } from '../../support/call';

/** What people get wrong at the vat: a clear sentence each time, no hang, no silent guess. */
test.each([
  ['pH above 14', 'BUFFER.DOSE', [1000, 15, 7], '#VALUE!', 'from 0 to 14'],
  ['pH below 0', 'BUFFER.DOSE', [1000, -1, 7], '#VALUE!', 'from 0 to 14'],
  ['negative volume', 'BUFFER.DOSE', [-1000, 6, 7], '#VALUE!', 'above 0'],
  ['blank volume read as 0', 'BUFFER.DOSE', [0, 6, 7], '#VALUE!', 'blank cell'],
  ['target below the present with a base', 'BUFFER.DOSE', [1000, 7.5, 6.5, 1], '#VALUE!', 'only raises pH'],
  [
    'target above the present with an acid',
    'BUFFER.DOSE',
    [1000, 6.5, 7.5, 1, 25, 'HCl'],
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
  ['baking soda past 8.3', 'BUFFER.DOSE', [1000, 6, 8.8, 1, 25, 'baking soda'], '#NUM!', 'Use soda ash'],
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
  expect(remark([0, 4, 8], [6, 6, 6]).remark).toContain('hardly moved');
});

test('two readings at one dose: alike they count as a repeat, apart they ask to wait', () => {
  expect(remark([0, 4, 4], [5, 5.6, 5.62]).todo).toContain('Dissolve');
  expect(remark([0, 4, 4], [5, 5.6, 6]).todo).toContain('Wait');
});

test('a pH that falls after a base asks to check', () => {
  expect(remark([0, 4], [6, 5.5]).todo).toContain('Check');
});

test('above the window nothing more is given', () => {
  expect(remark([0, 4], [6, 7.9]).todo).toContain('above the window');
});

test('with fish in the water no step is longer than 0.3 pH', () => {
  const row =
    grid(
      'BUFFER.NEXT',
      1000,
      columnOf([0, 5, 10]),
      columnOf([6, 6.15, 6.3]),
      7,
      null,
      26,
      'soda ash',
      1,
      'unknown',
      0.1,
      0,
      'good',
      6.5,
      7.5,
      0.6,
      true,
    )[1] ?? [];
  expect(Number(row[6]) - 6.3).toBeLessThan(0.35);
});

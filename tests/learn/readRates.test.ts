import type { RangeCells } from '../../shared/records';
import { parseAddress } from '../../shared/sheet/formula/address';
import { figuresFrom, learnRates, ratesFromCells, ratesToFigures } from '../../shared/learn';
import { ratesWorkbook } from '../../shared/books/learn';
import type { FarmRates } from '../../shared/learn';
import type { Cell } from '../../shared/base/values';
import { demoFarm, record } from './support/demoFarm';

/** The sheet as an open workbook hands over the cells in use: from the first that holds anything. */
function cellsOf(learned: FarmRates): { name: string; top: number; left: number; values: Cell[][] } {
  const cells = Object.entries(ratesWorkbook(learned).sheets[0]?.cells ?? {}).map(([address, { value }]) => ({
    ...(parseAddress(address) ?? { row: 0, column: 0 }),
    value: value ?? null,
  }));
  const filled = cells.filter(({ value }) => value !== null);
  const [top, left] = [Math.min(...filled.map((c) => c.row)), Math.min(...filled.map((c) => c.column))];
  const values = Array.from({ length: Math.max(...filled.map((c) => c.row)) - top + 1 }, () =>
    Array.from({ length: Math.max(...filled.map((c) => c.column)) - left + 1 }, (): Cell => ''),
  );
  for (const { row, column, value } of filled) (values[row - top] as Cell[])[column - left] = value;
  return { name: 'Rates', top, left, values };
}
const farm = learnRates(demoFarm(30));
const changed = (change: (values: Cell[][]) => void, learned = farm): RangeCells => {
  const cells = cellsOf(learned);
  change(cells.values);
  return cells;
};
const rowOf = (values: Cell[][], label: string, kind?: string): Cell[] =>
  values.find((line) => line[0] === label && (kind === undefined || line[1] === kind)) as Cell[];
const VALUE = 2;
const LATER = 'Strip later than the table by';

test.each([[0], [1], [5], [30]])(
  'round trip: %s runs come back as they were learned, and plan the same',
  (runs) => {
    const learned = learnRates(demoFarm(runs));
    const { rates, leftOut } = ratesFromCells(cellsOf(learned));
    expect(leftOut).toEqual([]);
    expect(rates).toEqual(
      learned.rates.map(({ key, kind, value, low, high, nextLow, nextHigh, runs: n }) => ({
        key,
        kind,
        value,
        low,
        high,
        nextLow,
        nextHigh,
        runs: n,
        isTyped: false,
      })),
    );
    for (const planned of [
      {},
      { month: 7 },
      { month: 1, preparation: 'ready-made solution' },
      { preparation: 'pituitary' },
    ])
      expect(figuresFrom(rates, planned)).toEqual(ratesToFigures(learned, planned));
  },
);

test('a figure says where the mean and where the next run may lie', () => {
  const { hatch } = figuresFrom(ratesFromCells(cellsOf(farm)).rates);
  const { low = NaN, meanLow = NaN, value = NaN, meanHigh = NaN, high = NaN } = hatch ?? {};
  expect([low, meanLow, value, meanHigh, high].toSorted((a, b) => a - b)).toEqual([
    low,
    meanLow,
    value,
    meanHigh,
    high,
  ]);
  expect(high - low).toBeGreaterThan(2 * (meanHigh - meanLow));
});

test('rows and columns that moved, and words in another case, are found', () => {
  const moved = changed((values) => {
    values.splice(2, 0, ['my notes'], []);
    const head = values.findIndex(([first]) => first === 'Rate');
    const rates = values.splice(head + 1, farm.rates.length).reverse();
    values.splice(head + 1, 0, ['  '], ...rates);
    for (const line of values) line.unshift('', line.splice(3, 1)[0] ?? '');
    rowOf(
      values.map((line) => line.slice(2)),
      'Eggs in a gram',
    );
    for (const line of values) if (line[2] === 'Eggs in a gram') line[2] = 'EGGS in a  gram ';
  });
  const read = ratesFromCells(moved);
  expect(read.leftOut).toEqual([]);
  expect(figuresFrom(read.rates, { month: 7 })).toEqual(ratesToFigures(farm, { month: 7 }));
});

test('a farm value the user typed over is used, and its interval reaches to it', () => {
  const { rates, leftOut } = ratesFromCells(
    changed((values) => {
      rowOf(values, 'Eggs that hatch')[VALUE] = 0.9;
    }),
  );
  expect(leftOut).toEqual([]);
  expect(figuresFrom(rates).hatch).toMatchObject({ value: 0.9, meanHigh: 0.9, runs: 30 });
});

test('typed where no run speaks of it: used too, the rest stays with the literature', () => {
  const { rates } = ratesFromCells(
    changed((values) => {
      rowOf(values, 'Fry that become fingerlings')[VALUE] = 0.5;
    }, learnRates([])),
  );
  expect(figuresFrom(rates)).toEqual({
    nurserySurvival: expect.objectContaining({ value: 0.5, runs: 0 }) as unknown,
  });
});

test.each([
  [
    'beyond all fish',
    'Eggs that hatch',
    VALUE,
    1.7,
    'Eggs that hatch is left out: Farm value in D24 is 170 %, but it lies between 0 % and 100 %.',
  ],
  ['eggs as body weight', 'Egg weight of body weight', VALUE, 14, 'but it lies between'],
  ['hours as a day', LATER, VALUE, 24, 'but it lies between -16 h and 16 h'],
  ['words', 'Eggs in a gram', VALUE, 'about 700', 'the text “about 700”, not a number'],
  ['an error', 'Growth of larvae and fry', VALUE, { error: '#REF!' } as const, 'is #REF!, not a number'],
  ['nothing', 'Eggs fertilised', VALUE, '', 'is blank, not a number'],
  ['an end that is gone', 'Eggs that hatch', 4, '', 'Low in F24 is blank'],
  ['ends the wrong way round', 'Eggs that hatch', 4, 0.99, 'a low end is above its high end'],
  ['half a run', 'Eggs that hatch', 8, 2.5, '2.5, not a number of runs'],
] satisfies [string, string, number, Cell, string][])(
  '%s: that rate is left out and named, the others stay',
  (_, label, column, nonsense, says) => {
    const read = ratesFromCells(
      changed((values) => {
        rowOf(values, label)[column] = nonsense;
      }),
    );
    expect(read.rates).toHaveLength(farm.rates.length - 1);
    expect(read.leftOut).toHaveLength(1);
    expect(read.leftOut[0]).toContain(says);
  },
);

test('an interval whose ends are one number is one', () => {
  const read = ratesFromCells(
    changed((values) => {
      const line = rowOf(values, 'Eggs that hatch');
      for (const column of [4, 5, 6, 7]) line[column] = line[VALUE] ?? null;
    }),
  );
  expect(read.leftOut).toEqual([]);
  expect(read.rates).toHaveLength(farm.rates.length);
});

test('a rate that stands twice counts once', () => {
  const read = ratesFromCells(
    changed((values) => {
      const at = values.findIndex(([first]) => first === 'Rate');
      values.splice(at + 1, 0, [...rowOf(values, 'Eggs that hatch')]);
    }),
  );
  expect(read.rates).toHaveLength(farm.rates.length);
  expect(read.leftOut[0]).toMatch(/^Eggs that hatch stands twice: row \d+ is left out\.$/);
});

test('what was not used is not read as a rate', () => {
  const learned = learnRates([
    record(5, { eggs: 1, hatched: 2 }),
    record(6, { latency: 12, temperature: 25 }),
    record(7, { eggs: 1000, hatched: 500 }),
  ]);
  const { rates, leftOut } = ratesFromCells(cellsOf(learned));
  expect([rates.length, leftOut]).toEqual([learned.rates.length, []]);
});

test('no table of rates is a sentence', () => {
  expect(
    ratesFromCells({
      name: 'Rates',
      top: 0,
      left: 0,
      values: [
        ['Rate', 'For'],
        ['Eggs that hatch', 0.5],
      ],
    }),
  ).toMatchObject({ rates: [], leftOut: [expect.stringContaining('No rates were found on Rates')] });
  expect(ratesFromCells({ name: 'Rates', top: 0, left: 0, values: [] }).rates).toEqual([]);
});

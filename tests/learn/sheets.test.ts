import { learnRates, rateOf } from '../../shared/learn/learn';
import { rateName, ratesWorkbook, restsOn } from '../../shared/books/learn/ratesSheet';
import { trendsOf } from '../../shared/learn/trends';
import { trendsWorkbook } from '../../shared/books/learn/trendsSheet';
import { calculate, lintWorkbook } from '../../shared/catalogue/calculation';
import { writeXlsx } from '../../shared/files';
import { demoFarm, record } from './support/demoFarm';

const rates = learnRates(demoFarm(20));
const trends = trendsWorkbook(trendsOf(demoFarm(20)));
const book = ratesWorkbook(rates);
const valueAt = (name: string): unknown => {
  const cell =
    book.names
      .find((n) => n.name === name)
      ?.refersTo.split('!')[1]
      ?.replaceAll('$', '') ?? '';
  return book.sheets[0]?.cells[cell]?.value;
};

test('both sheets work in every host', () => {
  const [none, one] = [[], demoFarm(1)];
  for (const model of [
    book,
    trends,
    ratesWorkbook(learnRates(none)),
    ratesWorkbook(learnRates(one)),
    trendsWorkbook(trendsOf(none)),
    trendsWorkbook(trendsOf(one)),
  ])
    expect(lintWorkbook(model)).toEqual([]);
});

test('names lead to the farm value, its ends and its runs', () => {
  const hatch = rateOf(rates, 'hatch');
  expect(
    [
      'rate_hatch',
      'rate_hatch_low',
      'rate_hatch_high',
      'rate_hatch_next_low',
      'rate_hatch_next_high',
      'rate_hatch_runs',
    ].map(valueAt),
  ).toEqual([hatch?.value, hatch?.low, hatch?.high, hatch?.nextLow, hatch?.nextHigh, 20]);
  expect(valueAt('rate_egg_share_m03')).toBe(rateOf(rates, 'eggShare', 3)?.value);
  expect(valueAt('rate_latency_offset_ready_made_solution')).toBe(
    rateOf(rates, 'latencyOffset', 'ready-made solution')?.value,
  );
});

test('a formula of another sheet reads them', () => {
  const { model, faults } = calculate({
    ...book,
    sheets: [
      ...book.sheets,
      { name: 'Mine', widths: [], cells: { A1: { formula: '=100000*rate_hatch*rate_larvae_to_fry' } } },
    ],
  });
  expect(faults).toEqual([]);
  expect(model.sheets[1]?.cells.A1?.value).toBeCloseTo(
    100_000 * (rateOf(rates, 'hatch')?.value ?? NaN) * (rateOf(rates, 'larvaeToFry')?.value ?? NaN),
    4,
  );
});

test('before and after stand side by side, the change is a formula', () => {
  const row = 5 + rates.rates.findIndex((r) => r.key === 'hatch');
  expect(book.sheets[0]?.cells[`M${row}`]?.value).toBe(0.59);
  expect(book.sheets[0]?.cells[`N${row}`]?.formula).toBe(`=D${row}-M${row}`);
  expect(book.sheets[0]?.cells[`N${row}`]?.value).toBeCloseTo(
    (rateOf(rates, 'hatch')?.value ?? NaN) - 0.59,
    9,
  );
});

test('standing of the literature is printed with it', () => {
  const texts = Object.values(book.sheets[0]?.cells ?? {}).map(({ value }) => String(value));
  expect(texts.some((t) => t.includes('(from memory, page not seen)'))).toBe(true);
  expect(texts.some((t) => t.includes('(published)'))).toBe(true);
});

test.each([
  [0, 0, 'literature only'],
  [0, 0.4, "the farm's other runs"],
  [1, 0.3, 'mostly literature'],
  [3, 0.7, 'mostly own runs'],
  [30, 0.97, 'own runs'],
])('%s runs, weight %s: %s', (runs, ownWeight, said) => {
  expect(restsOn({ runs, ownWeight })).toBe(said);
});

test('records that could not be used are listed with the reason', () => {
  const odd = ratesWorkbook(
    learnRates([
      record(5, { latency: 12, preparation: 'pituitary' }),
      record(6, { eggs: 1, hatched: 2 }, ['hatched-more']),
    ]),
  );
  const texts = Object.values(odd.sheets[0]?.cells ?? {}).map(({ value }) => value);
  expect(texts).toContain('the water temperature is not in the record');
  expect(texts).toContain('the check of records found something in them');
});

test('names of preparations are words', () => {
  expect(rateName({ key: 'latencyOffset', kind: 'Heterobranchus longifilis' })).toBe(
    'rate_latency_offset_heterobranchus_longifilis',
  );
});

test('text that looks like a formula stays text', () => {
  const rows = Array.from({ length: 3 }, (_, i) =>
    record(i + 5, { female: '=HYPERLINK("x")', date: 46000 + i, eggs: 1000, hatched: 500 }),
  );
  const cells = Object.values(trendsWorkbook(trendsOf(rows)).sheets[0]?.cells ?? {});
  expect(cells.some(({ formula }) => formula !== undefined)).toBe(false);
  expect(cells.some(({ value }) => value === '=HYPERLINK("x")')).toBe(true);
});

test('charts of the trends point at their tables', () => {
  const [sheet] = trends.sheets;
  expect(sheet?.charts?.map(({ title }) => title)).toEqual([
    'Eggs that hatch, run by run',
    'Eggs that hatch, by female',
    'Eggs that hatch, by male',
    'Eggs that hatch, by water temperature',
    'Eggs that hatch, by month',
  ]);
  expect(sheet?.charts?.[0]?.series.map(({ name }) => name)).toEqual([
    'Share',
    'Centre',
    'Lower limit',
    'Upper limit',
  ]);
});

test('written as a file', () => {
  expect(writeXlsx(book).length).toBeGreaterThan(5000);
  expect(writeXlsx(trends).length).toBeGreaterThan(5000);
});

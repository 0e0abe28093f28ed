import { baseInWords, runRecords, shareQuestions } from '../../shared/records';
import type { Correction } from '../../shared/records';
import { learnRates, rateOf } from '../../shared/learn';
import { audit, sheetOf } from '../records/support/grid';

/** Invented runs: about 80 % fertilised, 70 % of those hatched, so 56 % of all eggs. */
const FERTILISED = [0.8, 0.82, 0.79, 0.81, 0.78, 0.8, 0.83, 0.77];
const HATCHED = [0.7, 0.68, 0.71, 0.69, 0.72, 0.7, 0.67, 0.73];
type Line = readonly (string | number)[];
const day = (i: number): number => 46_000 + 9 * i;
const bookOf = (headings: Line, line: (i: number) => Line) =>
  audit([
    sheetOf(
      'Runs',
      [headings, ...FERTILISED.map((_, i) => line(i))],
      [headings, ...FERTILISED].map(() => headings.map((_, c) => (c === 0 ? 'yyyy-mm-dd' : 'General'))),
    ),
  ]);
const at = (list: readonly number[], i: number): number => list[i] ?? NaN;
const percents = (heading: string) =>
  bookOf(['Date', 'Water °C', 'Fertilised %', heading], (i) => [
    day(i),
    26 + (i % 3),
    Math.round(100 * at(FERTILISED, i)),
    Math.round(100 * at(HATCHED, i)),
  ]);
const hatchOf = (report: ReturnType<typeof percents>, said: readonly Correction[] = []) =>
  rateOf(learnRates(runRecords(report, said)), 'hatch');

test.each([
  ['Hatch % of fertilised', 'fertilised'],
  ['Hatched (% of fertilized eggs)', 'fertilised'],
  ['Hatch rate, of fert. eggs', 'fertilised'],
  ["Taux d'éclosion (% des œufs fécondés)", 'fertilised'],
  ['Taxa de eclosão dos ovos fertilizados', 'fertilised'],
  ['Eclosión de huevos fecundados %', 'fertilised'],
  ['Daya tetas dari telur terbuahi (%)', 'fertilised'],
  ['Hatch % of eggs', 'eggs'],
  ['Hatch rate of all eggs', 'eggs'],
  ['Hatched, % of eggs set', 'eggs'],
  ['Éclosion, % des œufs', 'eggs'],
  ["Taux d'éclosion sur total des œufs", 'eggs'],
  ['Eclosão % dos ovos', 'eggs'],
  ['Eclosión (% del total de huevos)', 'eggs'],
  ['Menetas % dari jumlah telur', 'eggs'],
  // These name what hatches, not what it is a share of.
  ['Hatch rate of eggs', undefined],
  ["Taux d'éclosion des œufs", undefined],
  ['Tasa de eclosión de los huevos', undefined],
  ['Daya tetas telur (%)', undefined],
  ['Hatch %', undefined],
  ['Fertilisation / hatch %', undefined],
  ['Fécondation, éclosion %', undefined],
] as const)('%s: %s', (heading, base) => {
  expect(baseInWords(heading)).toBe(base);
});

test('nothing says it: not learned, asked once, and learned as answered', () => {
  const report = percents('Hatch %');
  expect(hatchOf(report)?.runs).toBe(0);
  expect(learnRates(runRecords(report)).unused).toContainEqual({
    rate: 'hatch',
    because: 'the book does not say whether the hatch is a share of all eggs or of the fertilised eggs',
    count: 8,
  });
  const [question, ...others] = shareQuestions(report);
  expect(others).toEqual([]);
  expect(question).toEqual({ sheet: 'Runs', header: 'Hatch %', share: 0.7, records: 8, base: undefined });
  const said = (base: 'eggs' | 'fertilised'): Correction[] => [
    { sheet: 'Runs', header: 'Hatch %', field: 'hatchShare', base },
  ];
  expect(hatchOf(report, said('fertilised'))?.value).toBeCloseTo(0.56, 1);
  expect(hatchOf(report, said('eggs'))?.value).toBeCloseTo(0.7, 1);
  expect(hatchOf(report, said('fertilised'))?.runs).toBe(8);
  expect(shareQuestions(report, said('eggs'))[0]?.base).toBe('eggs');
});

test('the heading says it', () => {
  const report = percents('Hatch % of fertilised eggs');
  expect(hatchOf(report)?.runs).toBe(8);
  expect(hatchOf(report)?.value).toBeCloseTo(0.56, 1);
  expect(shareQuestions(report)).toEqual([]);
});

test.each([
  ['fertilised', 0.56],
  ['eggs', 0.56],
] as const)('counts in a few rows say it for all: %s', (base, share) => {
  const report = bookOf(['Date', 'Eggs', 'Fertilised %', 'Hatched', 'Hatch %'], (i) => {
    const [f, h] = [at(FERTILISED, i), at(HATCHED, i)];
    const eggs = 60_000 + 1237 * i;
    return [
      day(i),
      eggs,
      Math.round(100 * f),
      i < 4 ? Math.round(eggs * f * h) : '',
      Math.round(100 * (base === 'eggs' ? f * h : h)),
    ];
  });
  expect(shareQuestions(report)).toEqual([]);
  expect(runRecords(report).map(({ hatchBase }) => hatchBase)).toEqual(Array(8).fill(base));
  expect(hatchOf(report)?.runs).toBe(8);
  expect(hatchOf(report)?.value).toBeCloseTo(share, 1);
});

test('more hatched than fertilised, in two records and by more than a sample is off: of the fertilised', () => {
  const over = (beyond: number, records: number) =>
    bookOf(['Date', 'Water °C', 'Fertilised %', 'Hatch %'], (i) => [
      day(i),
      26 + (i % 3),
      70 + i,
      i < records ? 70 + i + beyond : 50 + i,
    ]);
  const baseOf = (beyond: number, records: number) => runRecords(over(beyond, records))[0]?.hatchBase;
  expect([baseOf(11, 2), baseOf(11, 1), baseOf(9, 2)]).toEqual(['fertilised', undefined, undefined]);
});

/**
 * The old book: French, one form per run on one sheet, hours as 22h30, decimal commas, weights of females in kilograms
 * and in grams, faults of the human kind. Checked, two questions answered, what was not read seen, cells mended,
 * checked again, rates learned and taken into a season. The book is of our own invention: every true figure is known.
 */
import { ratesWorkbook } from '../../shared/books/learn';
import { figuresFrom, learnRates, ratesFromCells } from '../../shared/learn';
import type { AuditReport, Correction } from '../../shared/records';
import { checkFile, notReadSentence, readingShare, runRecords, shareQuestions } from '../../shared/records';
import { ownFigures, planBatches } from '../../shared/season';
import { madeXlsx } from '../records/support/file';
import { bookOf, gridOf } from '../season/support/support';
import { Chance } from '../learn/support/farms';

const RUNS = 14;
const TALL = 17;
/** Of all eggs; 0.62 of the fertilised. */
const HATCH = 0.5;
type Page = (string | number | null)[][];

const two = (x: number): string => String(x).padStart(2, '0');
const clock = (hours: number): string => {
  const minutes = Math.round(hours * 60) % 1440;
  return `${two(Math.floor(minutes / 60))}h${two(minutes % 60)}`;
};
const comma = (x: number, digits: number): string => x.toFixed(digits).replace('.', ',');
const spaced = (x: number): string => String(x).replace(/\B(?=(\d{3})+$)/g, ' ');

/** Hours by warmth over 15.4 °C (Okere et al. 2015, 108 to 132 degree-hours). */
function oldBook(): Page {
  const chance = new Chance(41);
  const page: Page = [['Cahier de reproduction du clarias', null]];
  for (let i = 0; i < RUNS; i++) {
    const water = 26 + Math.round(15 * chance.next()) / 10;
    const kg = 0.9 + chance.next() * 1.4;
    const injected = 20 + Math.round(8 * chance.next()) / 4;
    const grams = Math.round(kg * 1000 * (0.1 + 0.04 * chance.next()));
    const perGram = 640 + 5 * Math.round(12 * chance.next());
    const eggs = grams * perGram;
    const good = Math.round(150 * (0.78 + 0.06 * chance.next()));
    const hatched = Math.round((eggs * HATCH * Math.exp(0.06 * chance.bell())) / 100) * 100;
    const day = 3 + 2 * i;
    const form: Page = [
      ['Ponte n°', i + 1],
      ['Date', `${two(((day - 1) % 28) + 1)}/${two(2 + Math.floor((day - 1) / 28))}/2025`],
      ['Poids femelle', i % 2 ? `${Math.round(kg * 1000)} g` : `${comma(kg, 2)} kg`],
      ['Hormone (ml)', comma(kg * 0.5, 2)],
      ["Heure d'injection", clock(injected)],
      ['Chaleur relevée', comma(water, 1)],
      ['Heure de stripping', clock(injected + 118 / (water - 15.4))],
      ["Poids d'œufs (g)", grams],
      ['Œufs par gramme', perGram],
      ["Total d'œufs", spaced(eggs)],
      ['Œufs examinés', 150],
      ['Œufs fécondés', good],
      ['Larves écloses', spaced(hatched)],
      ['Zrabou', Math.round(hatched * 0.62)],
      ['Brimou', 2 + ((3 * i) % 4)],
      ['Remarques', i % 3 ? null : 'eau claire'],
    ];
    page.push(...form, ...Array.from({ length: TALL - form.length }, () => [null, null]));
  }
  return page;
}
const rowOf = (run: number, line: number): number => 1 + TALL * run + line;
/** Nought too many, no such hour, a year slip, an hour in the morning for the evening, a dose for another fish. */
const FAULTS: readonly (readonly [run: number, line: number, to: (was: string) => string])[] = [
  [3, 9, (was) => `${was}0`],
  [5, 4, () => '27h30'],
  [7, 1, (was) => was.replace('2025', '2015')],
  [10, 3, () => '7,90'],
];
const cellName = (run: number, line: number): string => `B${rowOf(run, line) + 1}`;

const check = (page: Page, corrections: readonly Correction[]): AuditReport => {
  const done = checkFile(madeXlsx([{ name: 'Pontes', cells: page }]), 'cahier.xlsx', {
    corrections,
    today: 46_000,
  });
  if (!('report' in done)) throw new Error(JSON.stringify(done));
  return done.report;
};
const accused = (report: AuditReport): string[] =>
  report.groups
    .flatMap(({ findings }) => findings)
    .filter(({ severity }) => severity !== 'look')
    .flatMap(({ place, or = [] }) => [place.cell, ...or.map(({ cell }) => cell)]);

test('the old book: checked, asked, mended, checked again, learned, planned with', () => {
  const page = oldBook();
  const clean = page.map((line) => [...line]);
  for (const [run, line, to] of FAULTS) {
    const row = page[rowOf(run, line)];
    if (row) row[1] = to(String(row[1]));
  }

  // What was not read is said first, and asked.
  const first = readingShare(check(page, []).tables);
  expect(first.columns).toBeGreaterThanOrEqual(14);
  expect(notReadSentence(first)).toMatch(/^\d+ of \d+ columns (?:was|were) not read\.$/);
  expect(first.unread.map(({ header }) => header)).toEqual(['Brimou']);
  // By its numbers "Zrabou" may be the fry that are left: asked, not taken for sure.
  expect(first.questions.map(({ header }) => header)).toEqual(['Brimou', 'Chaleur relevée', 'Zrabou']);

  // Three answers.
  const answers: readonly Correction[] = [
    { header: 'Zrabou', field: 'fry' },
    { header: 'Brimou', field: 'ignore' },
    { header: 'Chaleur relevée', field: 'temperature' },
  ];
  const asked = check(page, answers);
  // What was left out on purpose goes on being said.
  expect(readingShare(asked.tables).unread.map(({ header }) => header)).toEqual(['Brimou']);
  const found = new Set(accused(asked));
  for (const [run, line] of FAULTS)
    expect([cellName(run, line), found.has(cellName(run, line))]).toEqual([cellName(run, line), true]);

  // Cells mended one by one: nothing is left.
  const again = check(clean, answers);
  expect(accused(again)).toEqual([]);
  expect(shareQuestions(again)).toEqual([]);

  // Rates as the farm was made, through their sheet into a season.
  const learned = learnRates(runRecords(again));
  const hatch = learned.rates.find(({ key }) => key === 'hatch');
  expect(hatch?.runs).toBe(RUNS);
  expect(Math.abs((hatch?.value ?? NaN) - HATCH)).toBeLessThan(0.05);
  const [sheet] = ratesWorkbook(learned).sheets;
  if (!sheet) throw new Error('no sheet of rates');
  const { rates } = ratesFromCells(gridOf(sheet));
  const figures = ownFigures((month) => figuresFrom(rates, month === undefined ? {} : { month }));
  const water = { temperatures: Array.from({ length: 12 }, () => 27) };
  const own = planBatches(bookOf({ ...water, ...figures }), { draws: 100, explains: false });
  expect(figures.assumptions.hatch).toBeCloseTo(hatch?.value ?? NaN, 3);
  expect(own.batches.length).toBeGreaterThan(0);
});

import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { cardsWorkbook, livingBook, LivingPages } from '../../../shared/books/living';
import { freeze } from '../../../shared/catalogue/sharing';
import { calculate } from '../../../shared/catalogue/calculation';
import { writeXlsx } from '../../../shared/files';
import { checkFile } from '../../../shared/records';
import type { CellModel, WorkbookModel } from '../../../shared/sheet/workbook/model';
import { runOf } from '../../run/support';

/** The check of records over every workbook we write: it finds nothing to doubt, typed or not. */

const folder = join(__dirname, '..', '..', '..', 'templates');
const findingsIn = (bytes: Uint8Array, name: string): string[] => {
  const checked = checkFile(bytes, name);
  if ('isCancelled' in checked) throw new Error('cancelled');
  if ('fault' in checked) return [];
  return checked.report.groups.flatMap(({ rule, where, findings }) =>
    findings.map((finding) => `${rule.id} ${where}: ${finding.sentence}`),
  );
};

test.each([
  'season-plan',
  'season-plan-values',
  'season-backyard',
  'season-commercial',
  'dosing',
  'season-plan-fr',
  'season-backyard-fr',
  'season-commercial-fr',
])('template %s', (name) => {
  expect(findingsIn(new Uint8Array(readFileSync(join(folder, `${name}.xlsx`))), `${name}.xlsx`)).toEqual([]);
});

const run = runOf({ product: 'fry' });
const own = livingBook(run.book, run.plan);

test('the cards, and a shared copy of the book', () => {
  expect(findingsIn(writeXlsx(cardsWorkbook(run.book, run.plan)), 'cards.xlsx')).toEqual([]);
  const copy = freeze(writeXlsx(own), { date: '2027-02-15', workbook: 'x' });
  if (copy.kind !== 'made') throw new Error(copy.kind);
  expect(findingsIn(copy.bytes, 'copy.xlsx')).toEqual([]);
});

const pages = new LivingPages(run.book, run.plan);
const { tables } = pages;
const [batch] = run.plan.batches;
if (!batch) throw new Error('no batch');
const reader = pages.reader(batch);
/** What a person wrote down of a run that went as planned, on the sheets of the book. */
const actuals = (): Record<string, Record<string, CellModel['value']>> => {
  const { pairs, eggs, fry } = tables;
  const pairsTyped = batch.pairs.flatMap((_, i) => [
    [`${pairs.letters.injected}${pairs.first + i}`, reader.number('inject') + 0.01],
    [`${pairs.letters.stripped}${pairs.first + i}`, batch.stripAt + 0.02],
    [`${pairs.letters.grams}${pairs.first + i}`, 100 + 7 * i],
    [`${pairs.letters.alive}${pairs.first + i}`, 82 - i],
  ]);
  return {
    Batches: Object.fromEntries(pairsTyped) as Record<string, CellModel['value']>,
    Counts: {
      [`${eggs.letters.ph}${eggs.first}`]: 6.9,
      [`${eggs.letters.g1}${eggs.first}`]: 1,
      [`${eggs.letters.g2}${eggs.first}`]: 1.1,
      [`${eggs.letters.g3}${eggs.first}`]: 0.9,
      [`${eggs.letters.n1}${eggs.first}`]: 660,
      [`${eggs.letters.n2}${eggs.first}`]: 731,
      [`${eggs.letters.n3}${eggs.first}`]: 602,
      [`${eggs.letters.looked}${eggs.first}`]: 100,
      [`${eggs.letters.alive}${eggs.first}`]: 81,
      [`${fry.letters.hatched}${fry.first}`]: Math.round(reader.number('larvae') * 0.95),
      [`${fry.letters.weaned}${fry.first}`]: Math.round(reader.number('fry') * 0.9),
      [`${fry.letters.weight}${fry.first}`]: 0.008,
      [`${fry.letters.weighed}${fry.first}`]: batch.feedFrom + 6,
    },
  };
};
const withTyped = (changes: (typed: ReturnType<typeof actuals>) => void = () => undefined): WorkbookModel => {
  const typed = actuals();
  changes(typed);
  return calculate(
    {
      ...own,
      sheets: own.sheets.map((sheet) => ({
        ...sheet,
        cells: {
          ...sheet.cells,
          ...Object.fromEntries(
            Object.entries(typed[sheet.name] ?? {}).map(([at, value]) => [at, { ...sheet.cells[at], value }]),
          ),
        } as typeof sheet.cells,
      })),
    },
    batch.feedFrom + 8,
  ).model;
};

test('with what was really counted: no finding', () => {
  expect(findingsIn(writeXlsx(withTyped()), 'typed.xlsx')).toEqual([]);
});

test.each([
  ['more alive than looked at', 'Counts', `${tables.eggs.letters.alive}${tables.eggs.first}`, 180],
  [
    'stripped before the injection',
    'Batches',
    `${tables.pairs.letters.stripped}${tables.pairs.first}`,
    reader.number('inject') - 0.2,
  ],
  ['a pH without its point', 'Counts', `${tables.eggs.letters.ph}${tables.eggs.first}`, 69],
] as const)('a slip is found: %s', (_, sheet, at, value) => {
  const model = withTyped((typed) => {
    const cells = typed[sheet];
    if (cells) cells[at] = value;
  });
  expect(findingsIn(writeXlsx(model), 'slip.xlsx').length).toBeGreaterThan(0);
});

test('a weighing on day 6 moves weight, feed and water of the days after it', () => {
  const heavy = new LivingPages(run.book, run.plan, {
    pairs: [],
    eggs: [],
    calendar: [],
    shopping: [],
    log: [],
    fry: [{ batch: batch.name, weight: 0.035, weighed: batch.feedFrom + 6 }],
  });
  const [before, after] = [pages.day(batch, 10), heavy.day(batch, 10)];
  for (const key of ['gramsNow', 'dry', 'change'] as const)
    expect(after.number(key)).toBeGreaterThan(2 * before.number(key));
  expect(after.number('air')).toBeLessThan(before.number('air'));
  expect(heavy.day(batch, 6).number('gramsNow')).toBeCloseTo(0.035, 6);
});

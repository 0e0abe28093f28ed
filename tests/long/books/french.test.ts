import { bookSheetNames, booksIn, readBook, SHEETS } from '../../../shared/books/living';
import { summaryOf } from '../../../shared/books/summary';
import { calculate, lintWorkbook } from '../../../shared/catalogue/calculation';
import type { Cell } from '../../../shared/base/values';
import type { WorkbookModel } from '../../../shared/sheet/workbook/model';
import { BACKYARD, COMMERCIAL } from '../../../templates/season.template';
import { fr } from '../../../shared/books/words/fr';
import { gridOf } from '../../season/support/support';
import { bothOf } from '../../books/french/support';
import { englishIn, textsOf } from '../../books/french/texts';

/** A season's book in French holds what the English one holds, and is read back as the same book. */

const books = {
  backyard: { input: BACKYARD, ...bothOf(BACKYARD) },
  commercial: { input: COMMERCIAL, ...bothOf(COMMERCIAL) },
};
const each = Object.entries(books);

test.each(each)('%s: every number of the French book is that of the English one', (_, { en, fr: own }) => {
  const wrong: unknown[] = [];
  let compared = 0;
  en.sheets.forEach((sheet, i) => {
    const same = own.sheets[i];
    expect(Object.keys(same?.cells ?? {})).toEqual(Object.keys(sheet.cells));
    for (const [address, { value, formula }] of Object.entries(sheet.cells)) {
      const said = same?.cells[address];
      if ((formula === undefined) !== (said?.formula === undefined)) wrong.push([sheet.name, address]);
      if (typeof value === 'string' || value === undefined) continue;
      compared++;
      if (JSON.stringify(said?.value) !== JSON.stringify(value))
        wrong.push([sheet.name, address, value, said?.value, said?.formula]);
    }
  });
  expect(wrong.slice(0, 10)).toEqual([]);
  expect(compared).toBeGreaterThan(1000);
  expect(lintWorkbook(own)).toEqual([]);
});

const namesOf = (input: object): ReadonlySet<string> => {
  const texts = new Set<string>();
  const walk = (value: unknown): void => {
    if (typeof value === 'string') texts.add(value);
    else if (typeof value === 'object' && value !== null) Object.values(value).forEach(walk);
  };
  walk(input);
  return texts;
};

test.each(each)('%s: no English label on any sheet', (_, { input, en, fr: own }) => {
  expect(textsOf(en).length).toBeGreaterThan(700);
  expect(englishIn(own, en, fr, namesOf(input))).toEqual([]);
});

const readOf = (model: WorkbookModel) => {
  const reading = readBook(model.sheets.map(gridOf), '');
  if (reading.kind === 'unreadable') throw new Error(reading.faults.join(' '));
  return reading;
};

test.each(each)('%s: it is read back as the same season', (_, { en, fr: own }) => {
  const [english, french] = [readOf(en), readOf(own)];
  // Sentences stay in the language of the book.
  const bare = ({ plan, ...rest }: typeof english) => ({
    ...rest,
    plan: { ...plan, findings: plan.findings.map(({ kind, about }) => ({ kind, about })) },
  });
  expect(bare(french)).toEqual(bare(english));
});

test('sheet names: found, told apart, at most 31 letters, none that a spreadsheet refuses', () => {
  const { en, fr: own } = books.backyard;
  const names = own.sheets.map(({ name }) => name);
  expect(new Set(names.map((name) => name.toLowerCase())).size).toBe(names.length);
  for (const name of names) {
    expect(name.length).toBeLessThanOrEqual(31);
    expect(name).not.toMatch(/[[\]:*?/\\]|^'|'$/);
  }
  expect(names.filter((name) => Object.values(SHEETS).some((one) => one === name))).toEqual(['Notes']);
  expect(booksIn(names)).toEqual(['']);
  const both = [...en.sheets.map(({ name }) => name), ...names.map((name) => `${name} 2`)];
  expect(booksIn(both)).toEqual(['', ' 2']);
  expect(bookSheetNames(' 2', both)).toContain('Aujourd’hui 2');
  expect(bookSheetNames('', both)).toContain('Today');
});
const cellsOf = (model: WorkbookModel, sheet: string): Cell[] =>
  model.sheets.filter(({ name }) => name === sheet).flatMap((one) => gridOf(one).values.flat());
test('a lost sheet and a lost heading are named as they stand in the book', () => {
  const { fr: own } = books.backyard;
  const without = own.sheets.filter(({ name }) => name !== 'Bacs').map(gridOf);
  expect(readBook(without, '')).toMatchObject({
    kind: 'unreadable',
    faults: [expect.stringContaining('“Bacs”')],
  });
  expect(cellsOf(own, 'Bacs')).toContain('prégrossissement');
});

test('the page for an investor follows the French book, in French, with the same numbers', () => {
  const { input, en, fr: own } = books.backyard;
  const [english, french] = [summaryOf(en), summaryOf(own)];
  if (!('model' in english) || !('model' in french)) throw new Error(JSON.stringify([english, french]));
  const names = new Set([...namesOf(input), ...own.sheets.map(({ name }) => name)]);
  expect(englishIn(french.model, english.model, fr, names)).toEqual([]);
  const numbers = (book: WorkbookModel, page: WorkbookModel): unknown[] =>
    Object.values(
      calculate({ ...book, sheets: [...book.sheets, ...page.sheets] }, 46_054).model.sheets.at(-1)?.cells ??
        {},
    )
      .map(({ value }) => value)
      .filter((value) => typeof value !== 'string');
  const wanted = numbers(en, english.model);
  expect(wanted.filter((value) => typeof value === 'number').length).toBeGreaterThan(60);
  expect(numbers(own, french.model)).toEqual(wanted);
});

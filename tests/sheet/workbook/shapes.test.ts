import { calculate } from '../../../shared/catalogue/calculation';
import { SheetBuilder } from '../../../shared/sheet/workbook/build';
import { seenFrom } from '../../../shared/sheet/workbook/shapes';

/** Formulas copied down, as Excel copies them: written out here for every row by hand. */
const ROWS = [2, 3, 4, 7];
const COPIED: readonly (readonly [
  about: string,
  at: (row: number) => string,
  value: (row: number) => unknown,
])[] = [
  ['a row that moves', (r) => `=A${r}*2`, (r) => r * 20],
  ['a row that stays', () => '=A$2*2', () => 40],
  ['a range that grows downwards', (r) => `=SUM(A$1:A${r})`, (r) => 5 * r * (r + 1)],
  ['a range whose corners change places', (r) => `=SUM(A${r}:A$3)`, (r) => sum(r, 3)],
  ['names of functions with digits', (r) => `=LOG10(10^${r})`, (r) => r],
  ['numbers that look like cells', (r) => `=1E2+A${r}`, (r) => 100 + 10 * r],
  ['a text that looks like a cell', (r) => `="B2 "&A${r}`, (r) => `B2 ${10 * r}`],
  ['a text with quotes', (r) => `="say ""A1"" "&A${r}`, (r) => `say "A1" ${10 * r}`],
  ['a sheet whose name looks like a cell', (r) => `='Vat B2'!A${r}`, (r) => r],
  ['a name with digits', (r) => `=rate_2+A${r}`, (r) => 7 + 10 * r],
  ['a column left and a row that stays', (r) => `=$A${r}+$A$1`, (r) => 10 * r + 10],
];
const sum = (from: number, to: number): number => {
  let all = 0;
  for (let row = Math.min(from, to); row <= Math.max(from, to); row++) all += 10 * row;
  return all;
};

test('formulas alike down a table, of which one is read, give what each gives for itself', () => {
  const book = new SheetBuilder('One', { widths: [] });
  const other = new SheetBuilder('Vat B2', { widths: [] });
  for (let row = 1; row <= 8; row++) {
    book.put(`A${row}`, 10 * row);
    other.put(`A${row}`, row);
  }
  const letters = 'CDEFGHIJKLMN';
  COPIED.forEach(([, at], i) => {
    for (const row of ROWS) book.put(`${letters[i]}${row}`, at(row));
  });
  book.put('B1', 7);
  const { model, faults } = calculate({
    title: 'copied',
    sheets: [book.build(), other.build()],
    names: [{ name: 'rate_2', refersTo: '=One!$B$1' }],
  });
  expect(faults).toEqual([]);
  COPIED.forEach(([about, , value], i) => {
    for (const row of ROWS)
      expect([about, row, model.sheets[0]?.cells[`${letters[i]}${row}`]?.value]).toEqual([
        about,
        row,
        value(row),
      ]);
  });
});

test('formulas that differ in more than their row are not taken for one another', () => {
  const seen = (row: number, formula: string): string => seenFrom(row - 1, formula);
  expect(seen(5, '=A5')).toBe(seen(9, '=A9'));
  for (const [a, b] of [
    ['=LOG10(2)', '=LOG14(2)'],
    ['="A5"', '="A9"'],
    ['=1E5', '=1E9'],
    ["='S 5'!A5", "='S 9'!A9"],
    ['=S5!A5', '=S9!A9'],
    ['=Table[C5]', '=Table[C9]'],
    ['=A5', '=B9'],
    ['=$A$5', '=$A$9'],
    ['=A$5', '=A9'],
  ] as const)
    expect([a, seen(5, a) === seen(9, b)]).toEqual([a, false]);
});

test('columns of three letters are columns, words of four are not', () => {
  expect(seenFrom(11, '=AAA12*2')).toBe(seenFrom(12, '=AAA13*2'));
  expect(seenFrom(11, '=AAAA12*2')).not.toBe(seenFrom(12, '=AAAA13*2'));
});

import type { SheetModel } from '../../../shared/sheet/workbook/model';
import { writeXlsx } from '../../../shared/files';
import type { SheetChoice } from '../../../shared/catalogue/sharing';
import { choiceSteps, freeze } from '../../../shared/catalogue/sharing';
import { runNow } from '../../../shared/base/steps';
import { season } from './support/season';
import { unzip } from './support/parts';

/** Headings as a person would name the columns, in sheets as people keep them. */

const book = (...sheets: readonly SheetModel[]): Uint8Array =>
  writeXlsx({ title: 'Test', names: [], sheets });
const sheetOf = (
  name: string,
  rows: readonly (readonly (string | number | undefined)[])[],
  more: Partial<SheetModel> = {},
): SheetModel => ({
  name,
  widths: [],
  ...more,
  cells: Object.fromEntries(
    rows.flatMap((row, r) =>
      row.flatMap((value, c) =>
        value === undefined ? [] : [[`${String.fromCharCode(65 + c)}${r + 1}`, { value }]],
      ),
    ),
  ),
});
const choices = (file: Uint8Array): readonly SheetChoice[] => runNow(choiceSteps(file)) ?? [];
const seen = (file: Uint8Array, at = 0): unknown[] =>
  choices(file)[at]?.columns.map(({ letter, heading, filled }) => [letter, heading, filled]) ?? [];

test('a title, a gap, headings, rows of words: only the headings are headings', () => {
  const file = book(
    sheetOf('Crew', [
      ['Night crew'],
      [],
      ['Name', 'Telephone', 'Shift'],
      ['Ada', '0555 1', 'early'],
      ['Bo', '0555 2', 'late'],
      ['Cy', '0555 3', 'late'],
    ]),
  );
  expect(seen(file)).toEqual([
    ['A', 'Name', 3],
    ['B', 'Telephone', 3],
    ['C', 'Shift', 3],
  ]);
  expect(choices(file)[0]?.columns[1]?.cells).toBe('Crew!B4:B1048576');
});

test('two tables below each other give both words', () => {
  expect(
    seen(
      book(sheetOf('Log', [['Vat', 'pH'], [1, 6.5], [2, 6.7], [], ['Buyer', 'Fish'], ['Reed Bank', 900]])),
    ),
  ).toEqual([
    ['A', 'Vat / Buyer', 4],
    ['B', 'pH / Fish', 4],
  ]);
});

test('a table of its own knows its headings, also alone in a column', () => {
  expect(
    seen(book(sheetOf('One', [['Weight'], [1.2], [1.4]], { tables: [{ name: 'weights', range: 'A1:A3' }] }))),
  ).toEqual([['A', 'Weight', 2]]);
  expect(seen(season())).toEqual(
    expect.arrayContaining([
      ['A', 'pH / Batch', 9],
      ['B', 'Temperature / Share', 9],
    ]),
  );
});

test('numbers, long sentences and words repeated are no headings', () => {
  expect(
    seen(
      book(
        sheetOf('Notes', [
          ['A very long remark about the water of the last night, which nobody would call a heading', 'ok'],
          [1, 2],
        ]),
      ),
    ),
  ).toEqual([]);
  expect(
    seen(
      book(
        sheetOf('Marks', [
          ['x', 'x'],
          [1, 2],
        ]),
      ),
    ),
  ).toEqual([]);
  expect(
    seen(
      book(
        sheetOf('Numbers', [
          [1, 2],
          [3, 4],
        ]),
      ),
    ),
  ).toEqual([]);
});

test('a sheet name with spaces is quoted, and what is chosen is emptied below its heading', () => {
  const file = book(
    sheetOf("Bo's crew", [
      ['Name', 'Telephone'],
      ['Ada', '0555 0199'],
    ]),
  );
  const cells = choices(file)[0]?.columns[1]?.cells ?? '';
  expect(cells).toBe("'Bo''s crew'!B2:B1048576");
  const copy = freeze(file, { workbook: 'Test', date: 'today', blank: [cells] });
  if (copy.kind !== 'made') throw new Error(copy.kind);
  const text = Object.values(unzip(copy.bytes)).join('\n');
  expect(text).not.toContain('0555 0199');
  expect(text).toContain('Telephone');
});

test('what cannot be read has no choices', () => {
  expect(runNow(choiceSteps(Uint8Array.of(1, 2, 3)))).toBeUndefined();
});

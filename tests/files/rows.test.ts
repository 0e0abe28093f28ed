import { readXlsx } from '../../shared/files';
import { plainFile, readable } from './support/support';

/**
 * Where rows and cells stand that do not say it: ISO 29500-1, 18.3.1.73 (row) and 18.3.1.4 (c): `r` may be left
 * out, and what leaves it out follows the one before. A height counts where the file says it is the user's.
 */
const sheetOf = (rows: string) => {
  const [sheet] = readable(readXlsx(plainFile(`<sheetData>${rows}</sheetData>`))).model.sheets;
  if (!sheet) throw new Error('no sheet');
  return sheet;
};
const valuesOf = (rows: string): Record<string, unknown> =>
  Object.fromEntries(Object.entries(sheetOf(rows).cells).map(([at, cell]) => [at, cell.value]));

test('cells without a place follow each other in the row that is named', () => {
  expect(valuesOf('<row r="3"><c><v>1</v></c><c><v>2</v></c></row><row r="7"><c><v>3</v></c></row>')).toEqual(
    {
      A3: 1,
      B3: 2,
      A7: 3,
    },
  );
});

test('rows without a number follow each other', () => {
  expect(
    valuesOf(
      '<row><c><v>1</v></c></row><row><c><v>2</v></c></row><row r="9"><c><v>3</v></c></row><row><c><v>4</v></c></row>',
    ),
  ).toEqual({ A1: 1, A2: 2, A9: 3, A10: 4 });
});

test('a cell after one that is named follows it', () => {
  expect(valuesOf('<row r="2"><c r="D2"><v>1</v></c><c><v>2</v></c></row>')).toEqual({ D2: 1, E2: 2 });
});

test('heights are kept where somebody set them, at their row', () => {
  const cell = '<c><v>1</v></c>';
  const { heights } = sheetOf(
    `<row r="2" ht="30" customHeight="1">${cell}</row><row r="4" ht="18">${cell}</row>` +
      `<row r="5" ht="41.5" customHeight="true">${cell}</row><row r="6" ht="20" customHeight="0">${cell}</row>`,
  );
  expect(heights).toEqual({ 2: 30, 5: 41.5 });
});

import { readXlsx } from '../../shared/files';
import { plainFile, readable } from './support/support';

/** Names and rows repeated on every page, as another program writes them (ISO/IEC 29500-1, 18.2.5). */
const read = (names: string) => {
  const { model, lost } = readable(
    readXlsx(plainFile('<sheetData/>', {}, `<definedNames>${names}</definedNames>`)),
  );
  return { names: model.names, titleRows: model.sheets[0]?.print?.titleRows, lost };
};
const name = (text: string, attributes = 'name="Rate"'): string =>
  `<definedName ${attributes}>${text}</definedName>`;
const TITLES = 'name="_xlnm.Print_Titles" localSheetId="0"';

test('a name of the workbook, a name of one sheet, a hidden name', () => {
  expect(read(name('Sheet!$A$1'))).toEqual({
    names: [{ name: 'Rate', refersTo: 'Sheet!$A$1' }],
    titleRows: undefined,
    lost: [],
  });
  expect(read(name('Sheet!$A$1', 'name="Rate" comment="of a day"')).names).toEqual([
    { name: 'Rate', refersTo: 'Sheet!$A$1', comment: 'of a day' },
  ]);
  expect(read(name('Sheet!$A$1', 'name="Rate" localSheetId="0"'))).toMatchObject({
    names: [],
    lost: ['Names that belong to one sheet'],
  });
  expect(read(name('Sheet!$A$1', 'name="Rate" hidden="1"'))).toMatchObject({ names: [], lost: [] });
});
test.each([
  ['Sheet!$1:$3', [1, 3]],
  ['Sheet!$A:$B,Sheet!$4:$4', [4, 4]],
  ['Sheet!$A:$B', undefined],
  ['Sheet!$B$1:$ZZZ$3', undefined],
])('rows on every page: %s', (text, rows) => {
  expect(read(name(text, TITLES))).toMatchObject({ names: [], titleRows: rows, lost: [] });
});
test('titles of no sheet are nothing, and no name', () => {
  expect(read(name('Sheet!$1:$3', 'name="_xlnm.Print_Titles"'))).toEqual({
    names: [],
    titleRows: undefined,
    lost: [],
  });
  expect(read(name('Sheet!$A$1:$C$9', 'name="_xlnm.Print_Area" localSheetId="0"'))).toEqual({
    names: [],
    titleRows: undefined,
    lost: [],
  });
});

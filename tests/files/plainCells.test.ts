import { strToU8 } from 'fflate';
import { CellReader } from '../../shared/files/cells/reader';
import { Cells } from '../../shared/files/cells/cells';
import { SharedStrings } from '../../shared/files/cells/strings';

/**
 * Most cells are read in one walk; what is written in any other way goes step by step. Both must say the same of one
 * cell, however it is written (ISO/IEC 29500-1, 18.3.1.4 for what a cell may hold; XML 1.0 for how).
 */
const context = {
  strings: new SharedStrings(strToU8('<sst><si><t>first</t></si><si><t>second</t></si></sst>')),
  dateStyles: [false, true],
  is1904: false,
};
function read(cells: string): unknown[] {
  const bytes = strToU8(`<sheetData>${cells}</sheetData>`);
  const walker = new Cells(bytes, '<sheetData>'.length);
  const reader = new CellReader(bytes, context);
  const found: unknown[] = [];
  while (walker.next()) {
    const { cell } = walker;
    found.push([
      cell.row,
      cell.column,
      reader.value(cell),
      reader.isDate(cell),
      reader.formula(cell)?.text,
      reader.typedNumber(cell),
      new TextDecoder().decode(bytes.slice(cell.start, cell.end)).startsWith('<'),
    ]);
  }
  return found;
}
const PLAIN = '<c r="B7" s="1"><v>45000.5</v></c>';

test.each([
  `<c r='B7' s='1'><v>45000.5</v></c>`,
  '<c s="1" r="B7"><v>45000.5</v></c>',
  '<c  r="B7"  s="1" ><v>45000.5</v></c>',
  '<c r="B7" s="1" t="n"><v>45000.5</v></c>',
  '<c r="B7" t="n" s="1"><v>45000.5</v></c>',
  '<c r="B7" s="1"><v><![CDATA[45000.5]]></v></c>',
  '<c r="B7" s="1"><!-- seen --><v>45000.5</v></c>',
  '<c r="B7" s="1"><v>45000.5</v><extLst><ext/></extLst></c>',
  '<c r="b7" s="1"><v>45000.5</v></c>',
  '<c r="B7" s="1"><v >45000.5</v ></c >',
])('%s says what the plain cell says', (written) => {
  expect(read(written)).toEqual(read(PLAIN));
});

test('kinds of cells, one after another, keep nothing of the one before', () => {
  const cells = [
    '<c r="A1" cm="1" vm="2"><f>B1*2</f><v>4</v></c>',
    '<c r="B1"><v>2</v></c>',
    '<c r="C1" t="s"><v>1</v></c>',
    '<c r="D1" t="inlineStr"><is><t>here</t></is></c>',
    '<c r="E1"/>',
    '<c r="F1" t="b"><v>1</v></c>',
    '<c r="G1" t="str"><f>"a"&amp;"b"</f><v>ab</v></c>',
    '<c r="H1" t="e"><v>#N/A</v></c>',
    '<c r="I1"><f>B1</f></c>',
    '<c r="J1" s="1"><v>1</v></c>',
    '<c r="K1"><v>x</v></c>',
  ];
  const alone = cells.flatMap(read);
  expect(read(cells.join(''))).toEqual(alone);
  expect(read(cells.toReversed().join(''))).toEqual(alone.toReversed());
  expect(alone.map((one) => (one as unknown[])[2])).toEqual([
    4,
    2,
    'second',
    'here',
    null,
    true,
    'ab',
    { error: '#N/A' },
    null,
    1,
    null,
  ]);
});

test.each([
  '<c r="7"><v>1</v></c>',
  '<c r="XFE1"><v>1</v></c>',
  '<c r="A1048577"><v>1</v></c>',
  '<c r="A1"><v>1</c>',
])('%s is refused', (written) => {
  expect(() => read(written)).toThrow();
});

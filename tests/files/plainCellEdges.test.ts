import { Cells } from '../../shared/files/cells/cells';
import type { CellSpan } from '../../shared/files/cells/cells';

/**
 * The commonest cell is read in one sweep. The same cell spelled in a way that only the careful reader
 * understands is the witness: two blanks in the tag, or a part behind the value.
 */
const bytesOf = (text: string): Uint8Array => new TextEncoder().encode(text);
interface Said {
  readonly row: number;
  readonly column: number;
  readonly style: string;
  readonly value: string;
  readonly whole: string;
}
function read(rows: string): Said[] {
  const bytes = bytesOf(`${rows}</sheetData>`);
  const text = (from: number, to: number): string =>
    from < 0 ? '' : new TextDecoder().decode(bytes.subarray(from, to));
  const said = ({ row, column, ...cell }: CellSpan): Said => ({
    row,
    column,
    style: text(cell.styleFrom, cell.styleTo),
    value: text(cell.valueFrom, cell.valueTo),
    whole: text(cell.start, cell.end),
  });
  const cells = new Cells(bytes, 0);
  const out: Said[] = [];
  while (cells.next()) out.push(said(cells.cell));
  return out;
}

const withoutSource = (all: readonly Said[]): Omit<Said, 'whole'>[] =>
  all.map(({ row, column, style, value }) => ({ row, column, style, value }));

type Plain = readonly [place: string, style: string, value: string];
const cell = ([place, style, value]: Plain, blank = ' '): string =>
  `<c${blank}r="${place}"${style === '' ? '' : `${blank}s="${style}"`}><v>${value}</v></c>`;

test('a plain cell reads the same in one sweep and carefully', () => {
  const cells: readonly Plain[] = [
    ['A1', '', '1'],
    ['B1', '7', '-2.5E-3'],
    ['XFD1', '12345', ''],
    ['A1048576', '', '1 &amp; 2'],
  ];
  const quick = read(`<row r="1">${cells.map((one) => cell(one)).join('')}</row>`);
  const careful = read(`<row r="1">${cells.map((one) => cell(one, '  ')).join('')}</row>`);
  expect(withoutSource(quick)).toEqual(withoutSource(careful));
  expect(quick.map(({ row, column, style, value }) => [row, column, style, value])).toEqual([
    [0, 0, '', '1'],
    [0, 1, '7', '-2.5E-3'],
    [0, 16_383, '12345', ''],
    [1_048_575, 0, '', '1 &amp; 2'],
  ]);
  expect(quick.map(({ whole }) => whole)).toEqual(cells.map((one) => cell(one)));
});

test('what only begins like a plain cell is left to the careful reader', () => {
  const rows = [
    '<c r="A1" s="2" t="s"><v>3</v></c>',
    '<c r="B1" t="b"><v>1</v></c>',
    '<c r="C1"><f>A1</f><v>3</v></c>',
    '<c r="D1"><v>4</v><extLst/></c>',
    '<c r="E1" s="2"/>',
    '<c r="F1"><v>6</v ></c>',
    '<c r="G1"><v>7</v></c >',
    '<c r="H1"><is><t>8</t></is></c>',
    '<c r="I1"><v/></c>',
    "<c r='J1'><v>10</v></c>",
    '<c><v>11</v></c>',
  ];
  const all = read(`<row r="1">${rows.join('')}</row>`);
  expect(all.map(({ whole }) => whole)).toEqual(rows);
  expect(all.map(({ column }) => column)).toEqual([0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10]);
  expect(all.map(({ value }) => value)).toEqual(['3', '1', '3', '4', '', '6', '7', '', '', '10', '11']);
});

test('a cell without a place stands behind a plain one', () => {
  expect(
    withoutSource(read('<row r="5"><c r="C5"><v>1</v></c><c><v>2</v></c></row><row><c><v>3</v></c></row>')),
  ).toEqual([
    { row: 4, column: 2, style: '', value: '1' },
    { row: 4, column: 3, style: '', value: '2' },
    { row: 5, column: 0, style: '', value: '3' },
  ]);
});

test.each([
  ['no such column', '<c r="XFE1"><v>1</v></c>'],
  ['no such row', '<c r="A1048577"><v>1</v></c>'],
  ['row nought', '<c r="A0"><v>1</v></c>'],
  ['no row', '<c r="A"><v>1</v></c>'],
  ['no column', '<c r="1"><v>1</v></c>'],
  ['cut off in the value', '<c r="A1"><v>1'],
  ['closed by another name', '<c r="A1"><v>1</v></d>'],
])('%s: the sheet is said to be damaged', (_, markup) => {
  expect(() => read(`<row r="1">${markup}`)).toThrow();
});

import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { readXlsx, writeXlsx } from '../../shared/files';
import { isDateFormat } from '../../shared/files/read/styles';
import { seasonPlanTemplate } from '../../templates/season-plan.template';
import { bookOf, cellsOf, partsOf, plainFile, readable, zipOf } from './support/support';

const faultOf = (bytes: Uint8Array): string => {
  const result = readXlsx(bytes);
  return 'fault' in result ? result.fault : 'read';
};
const bytesOf = (...codes: readonly number[]): Uint8Array => new Uint8Array(codes);
const ascii = (text: string): Uint8Array => new TextEncoder().encode(text);
const good = writeXlsx(bookOf({ A1: { value: 'fish' }, B1: { formula: '=1+1', value: 2 } }));

describe('what cannot be read gets a sentence', () => {
  const utf16 = ascii([...'EncryptedPackage'].join('\0'));
  test.each<[string, Uint8Array, RegExp]>([
    ['an empty file', bytesOf(), /^The file is empty\.$/],
    [
      'a locked file',
      new Uint8Array([0xd0, 0xcf, 0x11, 0xe0, ...new Uint8Array(600), ...utf16]),
      /protected with a password.*Remove the password/,
    ],
    [
      'an old .xls',
      new Uint8Array([0xd0, 0xcf, 0x11, 0xe0, ...new Uint8Array(600)]),
      /old \.xls format.*Excel Workbook \(\.xlsx\)/,
    ],
    ['a text file', ascii('day;fish;dead\n1;200;3\n'), /text \(CSV\) file/],
    ['a web page', ascii('<html><table><tr><td>1</td></tr></table></html>'), /web page or XML/],
    ['a PDF', ascii('%PDF-1.7 ...'), /PDF/],
    ['noise', bytesOf(1, 2, 3, 4, 5, 6, 7, 8), /not an Excel workbook \(\.xlsx\)/],
    ['half a file', good.slice(0, good.length / 2), /damaged: it was cut short/],
    ['a file without its end', good.slice(0, good.length - 30), /damaged: it was cut short/],
    ['another zip', zipOf({ 'photo.xml': '<a/>' }), /holds no workbook/],
    [
      'a Word document',
      zipOf({ '_rels/.rels': '<Relationships/>', 'word/document.xml': '<a/>' }),
      /Word document/,
    ],
    [
      'an OpenDocument file',
      zipOf({ mimetype: 'application/vnd.oasis.opendocument.spreadsheet', 'content.xml': '<a/>' }),
      /OpenDocument/,
    ],
    ['a binary workbook', zipOf({ 'xl/workbook.bin': 'x' }), /\.xlsb/],
    [
      'a part that declares a document type',
      plainFile('<!DOCTYPE a [<!ENTITY b "c">]><sheetData/>'),
      /document type declaration/,
    ],
    [
      'a part that ends in the middle',
      plainFile('<sheetData><row r="1"><c r="A1"><v>1</v></c>'),
      /damaged \(the cells of a sheet cannot be read\)/,
    ],
    [
      'a tag left open',
      zipOf({ ...partsOf(good), 'xl/worksheets/sheet1.xml': '<worksheet><sheetData><row r="1"><c r="A1' }),
      /damaged \(a tag does not end\)/,
    ],
    [
      'a sheet that is missing',
      zipOf({
        ...partsOf(good),
        'xl/worksheets/sheet1.xml': new Uint8Array(),
        'xl/_rels/workbook.xml.rels': (partsOf(good)['xl/_rels/workbook.xml.rels'] ?? '').replace(
          'worksheets/sheet1.xml',
          'worksheets/gone.xml',
        ),
      }),
      /sheet "Sheet" is missing/,
    ],
  ])('%s', (_title, bytes, sentence) => {
    expect(faultOf(bytes)).toMatch(sentence);
  });

  test('a small file that unpacks to a great one is not unpacked', () => {
    const bomb = zipOf({ ...partsOf(good), 'xl/worksheets/sheet2.xml': new Uint8Array(60_000_000) });
    expect(bomb.length).toBeLessThan(200_000);
    expect(faultOf(bomb)).toMatch(/unpacks to far more/);
  });

  test('files with bytes turned over are read or refused, never a crash', () => {
    const template = readFileSync(join(__dirname, '..', '..', 'templates', 'season-plan.xlsx'));
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.nat(template.length - 1), fc.nat(255)), { minLength: 1, maxLength: 6 }),
        (flips) => {
          const bytes = new Uint8Array(template);
          for (const [at, byte] of flips) bytes[at] = byte;
          expect(() => readXlsx(bytes)).not.toThrow();
        },
      ),
      { seed: 11, numRuns: 60 },
    );
  });
});

describe('files of other hands', () => {
  const data = (inner: string): string => `<sheetData><row r="1">${inner}</row></sheetData>`;

  test('shared texts, rich text joined, reading aids left out, hidden characters shown', () => {
    const texts =
      '<sst><si><t>plain</t></si><si><r><rPr><b/></rPr><t xml:space="preserve">bold ' +
      '</t></r><r><t>and not</t></r><rPh sb="0" ' +
      'eb="1"><t>aid</t></rPh></si><si><t>a_x000D_b_x005F_x0041_</t></si></sst>';
    const file = plainFile(
      data(
        '<c r="A1" t="s"><v>0</v></c><c r="B1" t="s"><v>1</v></c><c r="C1" ' +
          't="s"><v>2</v></c><c r="D1" t="inlineStr"><is><t>in &lt;line&gt; &#233;</t></is></c>',
      ),
      { 'xl/sharedStrings.xml': texts },
    );
    expect(Object.values(cellsOf(readXlsx(file))).map(({ value }) => value)).toEqual([
      'plain',
      'bold and not',
      'a\rb_x0041_',
      'in <line> é',
    ]);
  });

  test('cells without addresses follow each other', () => {
    const file = plainFile(
      '<sheetData><row><c><v>1</v></c><c><v>2</v></c></row><row><c ' +
        'r="C2"><v>3</v></c><c><v>4</v></c></row></sheetData>',
    );
    expect(
      Object.fromEntries(Object.entries(cellsOf(readXlsx(file))).map(([a, { value }]) => [a, value])),
    ).toEqual({ A1: 1, B1: 2, C2: 3, D2: 4 });
  });

  test('prefixed elements, comments, CDATA and a byte order mark', () => {
    const parts = partsOf(plainFile(''));
    const main = 'xmlns:x="http://schemas.openxmlformats.org/spreadsheetml/2006/main"';
    const file = zipOf({
      ...parts,
      'xl/worksheets/sheet1.xml': `\uFEFF<?xml version="1.0"?><x:worksheet ${main}><x:sheetData><!-- <x:c r="Z9"/> --><x:row r="1"><x:c r="A1" t="str"><x:v><![CDATA[a<b]]></x:v></x:c><x:c r="B1"><x:f>1>0</x:f><x:v>1</x:v></x:c></x:row></x:sheetData></x:worksheet>`,
    });
    expect(cellsOf(readXlsx(file))).toEqual({ A1: { value: 'a<b' }, B1: { value: 1, formula: '=1>0' } });
  });

  test('a > inside an attribute does not end the tag', () => {
    const file = plainFile(
      `${data('<c r="A1"><v>1</v></c>')}<dataValidations><dataValidation type="decimal" sqref="A1" prompt="more > less"><formula1>0</formula1><formula2>5</formula2></dataValidation></dataValidations>`,
    );
    expect(readable(readXlsx(file)).model.sheets[0]?.validations).toEqual([
      { range: 'A1', message: 'more > less', kind: 'decimal', min: 0, max: 5 },
    ]);
  });

  test('shared formulas are written out where they stand', () => {
    const file = plainFile(
      '<sheetData><row r="2"><c r="B2"><f t="shared" ref="B2:B4" ' +
        'si="0">A2*$D$1+A$1</f><v>1</v></c></row><row r="3"><c r="B3"><f t="shared" ' +
        'si="0"/><v>2</v></c></row><row r="4"><c r="B4"><f t="shared" ' +
        'si="0"/><v>3</v></c></row></sheetData>',
    );
    expect(Object.values(cellsOf(readXlsx(file))).map(({ formula }) => formula)).toEqual([
      '=A2*$D$1+A$1',
      '=A3*$D$1+A$1',
      '=A4*$D$1+A$1',
    ]);
  });

  test(
    'array formulas: a spilled one has its size, a single one none; what-if tables keep ' + 'their values',
    () => {
      const file = plainFile(
        data(
          '<c r="A1" cm="1"><f t="array" ' +
            'ref="A1:A2">_xldudf_SPAWN_HORMONE_VOLUME(B1:B2)</f><v>1</v></c><c r="C1"><f ' +
            't="array" ref="C1">SUM(A1:A2*2)</f><v>6</v></c><c r="D1"><f t="dataTable" ' +
            'ref="D1:D3"/><v>9</v></c>',
        ),
      );
      expect(cellsOf(readXlsx(file))).toEqual({
        A1: { value: 1, formula: '=SPAWN.HORMONE.VOLUME(B1:B2)', spill: [2, 1] },
        C1: { value: 6, formula: '=SUM(A1:A2*2)' },
        D1: { value: 9 },
      });
      expect(readable(readXlsx(file)).lost).toEqual(['What-if data tables (their values are kept)']);
    },
  );

  const styles = (xfs: string): string =>
    `<styleSheet><numFmts count="1"><numFmt numFmtId="170" formatCode="dd/mm/yyyy\\ hh:mm"/></numFmts><fonts><font><sz val="11"/><name val="Arial"/></font></fonts><fills><fill/></fills><borders><border/></borders><cellXfs>${xfs}</cellXfs></styleSheet>`;

  test('dates counted from 1904 are carried over to 1900, numbers are not', () => {
    const file = plainFile(
      data('<c r="A1" s="1"><v>100</v></c><c r="B1"><v>100</v></c>'),
      { 'xl/styles.xml': styles('<xf numFmtId="0"/><xf numFmtId="14"/>') },
      '<workbookPr date1904="1"/>',
    );
    expect(cellsOf(readXlsx(file))).toEqual({ A1: { value: 1562, format: 'd/m/yyyy' }, B1: { value: 100 } });
  });

  test('dates written as text of the strict format become serials', () => {
    // 2027-04-24 is serial 46501; six in the evening is three quarters of a day.
    const file = plainFile(
      data('<c r="A1" t="d" s="1"><v>2027-04-24T18:00:00</v></c><c r="B1" t="d"><v>2027-04-24</v></c>'),
      { 'xl/styles.xml': styles('<xf numFmtId="0"/><xf numFmtId="170"/>') },
    );
    expect(cellsOf(readXlsx(file))).toEqual({
      A1: { value: 46501.75, format: 'dd/mm/yyyy\\ hh:mm' },
      B1: { value: 46501 },
    });
  });

  test('looks that no style of ours says are spelled out', () => {
    const sheet =
      '<styleSheet><fonts><font><sz val="11"/></font><font><b/><i val="0"/><sz ' +
      'val="10"/><color ' +
      'rgb="FFAA0000"/></font></fonts><fills><fill/><fill/><fill><patternFill ' +
      'patternType="solid"><fgColor rgb="FFFFFF00"/></patternFill></fill></fills>' +
      ('<borders><border/></borders><cellXfs><xf/><xf fontId="1" fillId="2"><alignment ' +
        'horizontal="center" wrapText="1"/><protection ' +
        'locked="0"/></xf></cellXfs></styleSheet>');
    const file = plainFile(data('<c r="A1" s="1"><v>1</v></c>'), { 'xl/styles.xml': sheet });
    expect(cellsOf(readXlsx(file))['A1']).toEqual({
      value: 1,
      look: { ink: 'AA0000', fill: 'FFFF00', isBold: true, align: 'center', wraps: true, isOpen: true },
    });
    expect(cellsOf(readXlsx(writeXlsx(readable(readXlsx(file)).model)))['A1']).toEqual(
      cellsOf(readXlsx(file))['A1'],
    );
  });

  test('comparisons become colouring rules; what has no word in the model is named', () => {
    const sheet =
      '<styleSheet><dxfs><dxf><fill><patternFill><bgColor ' +
      'rgb="FFFFC7CE"/></patternFill></fill></dxf></dxfs></styleSheet>';
    const file = plainFile(
      `${data('<c r="B2"><v>1</v></c>')}<conditionalFormatting sqref="B2:B9"><cfRule type="cellIs" dxfId="0" priority="1" operator="greaterThan"><formula>$D$1</formula></cfRule><cfRule type="colorScale" priority="2"><colorScale/></cfRule></conditionalFormatting>` +
        '<hyperlinks><hyperlink ref="A1"/></hyperlinks>',
      { 'xl/styles.xml': sheet },
    );
    const { model, lost } = readable(readXlsx(file));
    expect(model.sheets[0]?.conditionals).toEqual([{ range: 'B2:B9', formula: '=B2>$D$1', style: 'bad' }]);
    expect(lost).toEqual(['Links', 'Colouring rules of other kinds']);
  });

  test('errors and truth values keep their kind', () => {
    const file = plainFile(
      data(
        '<c r="A1" t="e"><v>#DIV/0!</v></c><c r="B1" t="b"><v>0</v></c><c r="C1" ' +
          't="e"><v>#BUSY!</v></c><c r="D1"/>',
      ),
    );
    expect(cellsOf(readXlsx(file))).toEqual({
      A1: { value: { error: '#DIV/0!' } },
      B1: { value: false },
      C1: { value: { error: '#BUSY!' } },
    });
  });
});

test.each([
  ['d mmm yyyy', true],
  ['hh:mm', true],
  ['[h]:mm', true],
  ['mmm-yy', true],
  ['General', false],
  ['#,##0.00', false],
  ['0.0 "days"', false],
  ['[Red]0.0', false],
  ['0.00E+00', false],
  ['"day" 0', false],
  ['[$-409]d-mmm', true],
])('format %s shows a date: %s', (format, expected) => {
  expect(isDateFormat(format)).toBe(expected);
});

test('fifty thousand cells come back', () => {
  const cells = Object.fromEntries(
    Array.from({ length: 50_000 }, (_, i) => [
      `${'ABCDEFGHIJ'[i % 10] ?? 'A'}${Math.floor(i / 10) + 1}`,
      { value: i / 7 },
    ]),
  );
  expect(Object.keys(cellsOf(readXlsx(writeXlsx(bookOf(cells)))))).toHaveLength(50_000);
});

test('the season plan is read with its dates marked as such', () => {
  const { model } = readable(readXlsx(writeXlsx(seasonPlanTemplate())));
  expect(model.sheets.find(({ name }) => name === 'Calendar')?.cells['C5']).toMatchObject({
    format: 'ddd d mmm yy',
    value: expect.any(Number),
  });
});

import { strToU8, unzipSync, zipSync } from 'fflate';
import * as fc from 'fast-check';
import {
  checkFile,
  findingsWorkbook,
  harmless,
  marksOf,
  RunRecordSchema,
  runRecords,
} from '../../shared/records';
import { lintWorkbook } from '../../shared/catalogue/calculation';
import { readXlsx, writeXlsx } from '../../shared/files';
import { madeXlsx } from './support/file';
import { audit, auditGrid, sheetOf } from './support/grid';

const fault = (bytes: Uint8Array, name: string): string => {
  const checked = checkFile(bytes, name);
  return 'fault' in checked ? checked.fault : 'no fault';
};
const part = (xml: string): Uint8Array => {
  const book = unzipSync(
    madeXlsx([
      {
        name: 'A',
        cells: [
          ['Run', 'Eggs'],
          ['R1', 84_000],
        ],
      },
    ]),
  );
  return zipSync({ ...book, 'xl/worksheets/sheet1.xml': strToU8(xml) });
};
const rows =
  '<row r="1"><c r="A1" t="inlineStr"><is><t>Run</t></is></c><c r="B1" ' +
  't="inlineStr"><is><t>Eggs</t></is></c><c r="C1" ' +
  't="inlineStr"><is><t>Date</t></is></c></row>';

describe('files that cannot be checked give a sentence', () => {
  test.each([
    ['nothing', new Uint8Array(0), 'a.xlsx', 'empty'],
    ['nothing, as text', new Uint8Array(0), 'a.csv', 'empty'],
    ['blank lines', strToU8('\n\n\n'), 'a.csv', 'no text'],
    [
      'a locked workbook',
      Uint8Array.from([
        0xd0,
        0xcf,
        0x11,
        0xe0,
        ...[...'EncryptedPackage'].flatMap((c) => [c.charCodeAt(0), 0]),
      ]),
      'a.xlsx',
      'password',
    ],
    ['an old workbook', Uint8Array.from([0xd0, 0xcf, 0x11, 0xe0, 1, 2, 3]), 'a.xls', '.xls'],
    ['a PDF', strToU8('%PDF-1.7'), 'a.xlsx', 'PDF'],
    ['a zip of something else', zipSync({ 'readme.txt': strToU8('hello') }), 'a.xlsx', 'no workbook'],
    [
      'a file cut short',
      madeXlsx([
        {
          name: 'A',
          cells: [
            ['Run', 'Eggs'],
            ['R1', 84_000],
          ],
        },
      ]).slice(0, 700),
      'a.xlsx',
      'damaged',
    ],
    [
      'a trap that unpacks to far too much',
      zipSync({ 'xl/worksheets/sheet1.xml': [new Uint8Array(60_000_000), { level: 9 }] }),
      'a.xlsx',
      'far more',
    ],
    ['nothing of a hatchery', strToU8('Moon,Mood\nfull,good\nnew,bad\n'), 'a.csv', 'No column'],
    ['binary called text', Uint8Array.from([1, 0, 0, 0, 2, 0, 0, 0]), 'a.csv', 'not a text file'],
    [
      'a sheet that declares a document type',
      part('<!DOCTYPE x [<!ENTITY a "b">]><worksheet><sheetData/></worksheet>'),
      'a.xlsx',
      'document type',
    ],
    [
      'a sheet that stops in the middle',
      part(`<worksheet><sheetData>${rows}<row r="2"><c r="A2"><v>1`),
      'a.xlsx',
      'damaged',
    ],
  ])('%s', (_what, bytes, name, says) => {
    expect(fault(bytes, name)).toContain(says);
    expect(fault(bytes, name)).toMatch(/[.?!…)]$/);
  });

  test('any bytes at all: a sentence or a report, never an exception', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 400 }), fc.constantFrom('a.xlsx', 'a.csv'), (bytes, name) => {
        checkFile(bytes, name);
      }),
      { seed: 11, numRuns: 300 },
    );
    const good = madeXlsx(
      [
        {
          name: 'A',
          cells: [
            ['Run', 'Eggs', 'Date'],
            ...Array.from({ length: 20 }, (_, i) => [`R${i}`, 84_000 + i, 46_000 + i]),
          ],
        },
      ],
      0,
    );
    fc.assert(
      fc.property(fc.nat(good.length - 1), fc.nat(255), (at, byte) => {
        const bytes = good.slice();
        bytes[at] = byte;
        checkFile(bytes, 'a.xlsx');
      }),
      { seed: 12, numRuns: 400 },
    );
  });
});

describe('odd but valid files', () => {
  const cell = (xml: string): unknown => {
    const checked = checkFile(
      part(`<worksheet xmlns="x" xmlns:x="y"><sheetData>${rows}${xml}</sheetData></worksheet>`),
      'a.xlsx',
    );
    return 'report' in checked
      ? [checked.report.tables[0]?.numbers.eggs?.[0], checked.report.tables[0]?.numbers.date?.[0]]
      : checked;
  };
  test.each([
    [
      'without places',
      '<row><c t="inlineStr"><is><t>R1</t></is></c><c><v>84000</v></c><c><v>46001</v></c></row>',
      [84_000, 46_001],
    ],
    [
      'with a prefix',
      '<x:row r="2"><x:c r="A2" t="str"><x:v>R1</x:v></x:c><x:c ' +
        'r="B2"><x:v>84000</x:v></x:c><x:c r="C2"><x:v>46001</x:v></x:c></x:row>',
      [84_000, 46_001],
    ],
    [
      'dates as text of the standard',
      '<row r="2"><c r="A2" t="str"><v>R1</v></c><c r="B2"><v>8.4E4</v></c><c r="C2" ' +
        't="d"><v>2025-12-10T00:00:00</v></c></row>',
      [84_000, 46_001],
    ],
    [
      'comments and unparsed text',
      '<row r="2"><!-- <c> --><c r="A2" t="str"><v><![CDATA[R&1]]></v></c><c ' +
        'r="B2"><v>84000</v></c><c r="C2"><v>46001</v></c></row>',
      [84_000, 46_001],
    ],
    [
      'rich text with reading aids',
      '<row r="2"><c r="A2" ' +
        't="inlineStr"><is><r><t>R</t></r><rPh><t>x</t></rPh><r><t>1</t></r></is></c><c ' +
        'r="B2"><v>84000</v></c><c r="C2"><v>46001</v></c></row>',
      [84_000, 46_001],
    ],
    [
      'a cell at the far end of the sheet',
      '<row r="2"><c r="A2" t="str"><v>R1</v></c><c r="B2"><v>84000</v></c><c ' +
        'r="C2"><v>46001</v></c></row><row r="1048576"><c r="XFD1048576"><v>1</v></c></row>',
      [84_000, 46_001],
    ],
  ])('%s', (_what, xml, wanted) => {
    expect(cell(xml)).toEqual(wanted);
  });

  test('what was left out is said', () => {
    const checked = checkFile(
      part(
        `<worksheet><sheetData>${rows}<row r="2"><c r="A2" t="str"><v>R1</v></c><c r="B2"><v>84000</v></c><c r="XFD2"><v>1</v></c></row></sheetData></worksheet>`,
      ),
      'a.xlsx',
    );
    expect('report' in checked ? checked.notes.join() : '').toContain('to the right of column');
  });
});

describe('the report', () => {
  const book = [
    ['Run', 'Date', 'Egg weight (g)', 'Eggs per gram', 'Eggs', 'Larvae'],
    ...Array.from({ length: 12 }, (_, i) => [
      `R${i + 1}`,
      46_001 + 3 * i,
      120 + i,
      650 + 3 * i,
      i === 4 ? 820_880 : (120 + i) * (650 + 3 * i),
      40_000 + 17 * i,
    ]),
    ['=HYPERLINK("http://x")', 46_101, 'cmd|calc', 690, 80_000, '@SUM(A1)'],
  ] as const;
  const report = auditGrid(book);

  test('a finding names cell, seen, expected, severity and reason', () => {
    const [group] = report.groups;
    expect(group?.rule).toMatchObject({ id: 'SLIP.TEN' });
    expect(group?.findings[0]).toMatchObject({
      place: { sheet: 'Sheet1', cell: 'E6' },
      severity: 'impossible',
      seen: '820,880',
      proposal: '82,088',
    });
    expect(report.notChecked.find(({ rule }) => rule === 'PH.DOSE')?.because).toContain('no table says');
  });

  test('as sheets: text of a record never becomes a formula', () => {
    const model = findingsWorkbook(report);
    expect(lintWorkbook(model)).toEqual([]);
    const cells = model.sheets.flatMap((sheet) => Object.values(sheet.cells));
    expect(cells.filter(({ formula }) => formula !== undefined)).toEqual([]);
    for (const { value } of cells) if (typeof value === 'string') expect(value).not.toMatch(/^[=+\-@]/);
    expect(harmless('=1+1')).toBe('text =1+1');
    const read = readXlsx(writeXlsx(model));
    expect('model' in read ? read.model.sheets.map(({ name }) => name) : read).toEqual([
      'Check findings',
      'Check reading',
    ]);
  });

  test('marks: one for each cell, with every sentence', () => {
    const marks = marksOf(report);
    expect(new Set(marks.map(({ place }) => place.cell)).size).toBe(marks.length);
    expect(marks.find(({ place }) => place.cell === 'E6')?.note).toMatch(
      /^Spawnbook check\nCannot be right: Number of eggs/,
    );
  });

  test('records for learning carry value, cell and the rules that found something', () => {
    const records = runRecords(report);
    expect(records).toHaveLength(13);
    for (const record of records) expect(RunRecordSchema.safeParse(record).success).toBe(true);
    expect(records[4]).toMatchObject({
      sheet: 'Sheet1',
      row: 6,
      values: { eggWeight: { value: 124, sheet: 'Sheet1', cell: 'C6' } },
      findings: ['SLIP.TEN'],
    });
    expect(records[0]?.findings).toEqual([]);
  });

  test('cancelled: nothing is returned but that', () => {
    const bytes = madeXlsx([{ name: 'A', cells: book.map((row) => [...row]) }]);
    let calls = 0;
    expect(checkFile(bytes, 'a.xlsx', {}, () => ++calls < 3)).toEqual({ isCancelled: true });
    expect(calls).toBe(3);
  });

  test('the sheet is the same after the check', () => {
    const sheet = sheetOf('A', book);
    const before = JSON.stringify(sheet);
    audit([sheet]);
    expect(JSON.stringify(sheet)).toBe(before);
  });
});

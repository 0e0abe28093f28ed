import { freeze, inspect } from '../../../shared/catalogue/sharing';
import { readXlsx } from '../../../shared/files';
import { checkFile } from '../../../shared/records';
import { MAIN, OPTIONS, relations, simpleBook, simpleParts, worksheet, zip } from '../share/support/parts';

/** Run by attacks.test.ts in a process of its own: each attack through Open, Check and Share, with what it cost. */

const plain = worksheet({ A1: { v: 'Run' }, B1: { v: 'Eggs' }, A2: { v: 'R1' }, B2: { v: 84_000 } });
const sheet = (xml: string): Uint8Array => simpleBook({ sheets: { Plan: xml } });
const inside = (data: string, before = '', after = ''): string =>
  `<worksheet xmlns="${MAIN}" xmlns:r="http://schemas.openxmlformats.org/officeDocument/2006/relationships">${before}<sheetData>${data}</sheetData>${after}</worksheet>`;
const many = (count: number, of: (i: number) => string): string =>
  Array.from({ length: count }, (_, i) => of(i)).join('');
const formula = (text: string): Uint8Array =>
  sheet(
    inside(
      `<row r="1"><c r="A1"><f>${text.replaceAll('&', '&amp;').replaceAll('<', '&lt;')}</f><v>1</v></c><c r="C1"><v>4817.25</v></c></row>`,
    ),
  );

const WORDS = ['Constructor', '__proto__', '__defineGetter__', 'toString', 'hasOwnProperty', 'valueOf'];
const withParts = (more: Record<string, string>): Uint8Array =>
  zip({ ...simpleParts({ sheets: { Plan: plain } }), ...more });

const ATTACKS: Readonly<Record<string, () => Uint8Array>> = {
  'headings that name what every object has': () =>
    sheet(
      worksheet(
        Object.fromEntries(
          WORDS.flatMap((word, i) => [
            [`${'ABCDEF'[i] ?? ''}1`, { v: word }],
            [`${'ABCDEF'[i] ?? ''}2`, { v: i }],
          ]),
        ),
      ),
    ),
  'tags that name what every object has': () =>
    sheet(
      inside(
        '<row r="1"><c r="A1"><v>1</v></c></row>',
        '',
        many(200, (i) => `<${WORDS[i % WORDS.length] ?? ''}/>`),
      ),
    ),
  'a column at minus a hundred million': () =>
    sheet(inside('', '<cols><col min="-100000000" max="100" width="5"/></cols>')),
  'rows and panes without end': () =>
    sheet(
      inside(
        '<row r="1" ht="1E300" customHeight="1"/>',
        '<sheetViews><sheetView workbookViewId="0"><pane state="frozen" ySplit="1E18" xSplit="-5"/></sheetView></sheetViews>',
      ),
    ),
  'two hundred thousand > in an attribute': () => sheet(inside(`<row r="1" x="${'>'.repeat(200_000)}"/>`)),
  'a comment that never ends': () => sheet(inside(`<row r="1"/>${'<!--'.repeat(100_000)}`)),
  'texts that never end': () =>
    sheet(inside(`<row r="1"><c r="A1" t="inlineStr"><is>${'<t>'.repeat(100_000)}</is></c></row>`)),
  'many texts in one': () =>
    sheet(
      inside(
        `<row r="1"><c r="A1" t="inlineStr"><is>${'<t>a</t><rPh>'.repeat(100)}${'</rPh>'.repeat(100)}</is></c></row>`,
      ),
    ),
  'a hundred thousand relations': () =>
    withParts({
      'xl/worksheets/_rels/sheet1.xml.rels': relations(
        Array.from(
          { length: 100_000 },
          (_, i) => [`rId${i}`, 'hyperlink', `https://example.org/${i}`, true] as const,
        ),
      ),
    }),
  'five thousand sheets of one part': () =>
    withParts({
      'xl/workbook.xml': `<workbook xmlns="${MAIN}" xmlns:r="http://schemas.openxmlformats.org/officeDocument/2006/relationships"><sheets>${many(5_000, (i) => `<sheet name="s${i}" sheetId="${i + 1}" r:id="rId1"/>`)}</sheets></workbook>`,
    }),
  'two thousand names in a circle': () =>
    simpleBook({
      sheets: {
        Plan: worksheet({ A1: { f: 'n1+n2', v: 1 }, B1: { f: 'SUM(n5)', v: 1 }, C1: { v: 4817.25 } }),
      },
      after: `<definedNames>${many(2_000, (i) => `<definedName name="n${i}">${many(20, (k) => `n${(i * 7 + k * 13 + 1) % 2_000}+`)}Plan!$A$${i + 1}</definedName>`)}</definedNames>`,
    }),
  'a small file of shared formulas': () =>
    sheet(
      inside(
        many(
          60_000,
          (i) =>
            `<row r="${i + 1}"><c r="A${i + 1}"><f t="shared" si="0"${i === 0 ? ` ref="A1:A60000">${'B1+'.repeat(2_700)}1` : '>'}</f><v>1</v></c></row>`,
        ),
      ),
    ),
  'a small file of cells far apart': () =>
    sheet(
      inside(
        many(
          60_000,
          (i) =>
            `<row r="${i + 1}"><c><v>1</v></c>${i % 150 === 0 ? many(390, () => '<c><v>2</v></c>') : ''}</row>`,
        ),
      ),
    ),
  apostrophes: () => formula("'".repeat(200_001)),
  'apostrophes in pairs': () => formula("'a''b".repeat(40_000)),
  brackets: () => formula(`a${'[a'.repeat(100_000)}`),
  'brackets and apostrophes': () => formula("['".repeat(100_000)),
  'words without end': () => formula('A1?'.repeat(60_000)),
  'calls within calls': () => formula(`${'SUM('.repeat(30_000)}1${')'.repeat(30_000)}`),
  'a long sum': () => formula(`${'C1+'.repeat(30_000)}1`),
};

function through(file: Uint8Array): string[] {
  const opened = readXlsx(file);
  const checked = checkFile(file, 'attack.xlsx');
  const seen = inspect(file);
  const copied = freeze(file, { ...OPTIONS, personal: true, blank: ['Plan!C1'] });
  const said = [
    'fault' in opened ? opened.fault : 'read',
    'fault' in checked ? checked.fault : 'read',
    seen.refused ?? 'read',
    copied.kind === 'refused' ? copied.sentence : 'read',
  ];
  return [...new Set(said)];
}

const [, , only] = process.argv;
for (const [name, make] of Object.entries(ATTACKS)) {
  if (only !== undefined && !name.includes(only)) continue;
  const file = make();
  const before = process.cpuUsage();
  let said: string[];
  try {
    said = through(file);
  } catch (error) {
    said = [`thrown: ${error instanceof Error ? error.message : String(error)}`];
  }
  const { user, system } = process.cpuUsage(before);
  process.stdout.write(
    `${JSON.stringify({ name, kilobytes: Math.round(file.length / 1000), seconds: (user + system) / 1e6, megabytes: Math.round(process.resourceUsage().maxRSS / 1024), said })}\n`,
  );
}

import { freeze, inspect, repairCalls, verify } from '../../../shared/catalogue/sharing';
import { HEAD, MAIN, OPTIONS, simpleBook, simpleParts, worksheet, zip } from './support/parts';
import { season } from './support/season';

/** Bad input gets a sentence, from every entry, and is never changed. */
const refusal = (file: Uint8Array): string => {
  const before = file.slice();
  const result = freeze(file, OPTIONS);
  expect(file).toEqual(before);
  if (result.kind !== 'refused') throw new Error(`${result.kind}: not refused`);
  expect(inspect(file).refused).toBe(result.sentence);
  expect(verify(file)).toEqual({ kind: 'refused', sentence: result.sentence });
  expect(repairCalls(file)).toEqual({ kind: 'refused', sentence: result.sentence });
  expect(result.sentence).toMatch(/^[A-Z][^]*\.$/);
  return result.sentence;
};

const plan = (): Record<string, string | Uint8Array> =>
  simpleParts({ sheets: { Plan: worksheet({ A1: { v: 1 } }) } });
const without = (name: string): Record<string, string | Uint8Array> =>
  Object.fromEntries(Object.entries(plan()).filter(([part]) => part !== name));
const utf16 = (text: string): number[] => [...text].flatMap((letter) => [letter.charCodeAt(0), 0]);
const compound = (stream: string): Uint8Array =>
  Uint8Array.from([
    0xd0,
    0xcf,
    0x11,
    0xe0,
    0xa1,
    0xb1,
    0x1a,
    0xe1,
    ...new Array<number>(504).fill(0),
    ...utf16(stream),
  ]);
const patch = (file: Uint8Array, signature: number, offset: number, value: number): Uint8Array => {
  const out = file.slice();
  const view = new DataView(out.buffer);
  for (let i = 0; i + 4 < out.length; i++)
    if (view.getUint32(i, true) === signature) view.setUint32(i + offset, value, true);
  return out;
};

test.each<[string, () => Uint8Array, RegExp]>([
  ['an empty file', () => new Uint8Array(0), /^The file is empty/],
  ['a text', () => new TextEncoder().encode('pH;share\n8;0,05'), /not an Excel workbook/],
  ['a workbook with a password', () => compound('EncryptedPackage'), /password/],
  ['an .xls', () => compound('Workbook'), /old \.xls format/],
  ['a zip of something else', () => zip({ 'a.txt': 'hello' }), /not an Excel workbook/],
  [
    'an .xlsb',
    () =>
      zip({
        ...plan(),
        '_rels/.rels': String(plan()['_rels/.rels']).replace('xl/workbook.xml', 'xl/workbook.bin'),
        'xl/workbook.bin': 'x',
      }),
    /binary workbook/,
  ],
  [
    'a workbook with macros',
    () => zip({ ...plan(), 'xl/vbaProject.bin': 'x' }),
    /holds macros.*not passed on/,
  ],
  [
    'macros by content type only',
    () =>
      zip({
        ...plan(),
        '[Content_Types].xml': String(plan()['[Content_Types].xml']).replace(
          'vnd.openxmlformats-officedocument.spreadsheetml.sheet.main',
          'vnd.ms-excel.sheet.macroEnabled.main',
        ),
      }),
    /holds macros/,
  ],
  [
    'a document type declaration',
    () =>
      zip({
        ...plan(),
        'xl/workbook.xml': `<!DOCTYPE x [<!ENTITY a "b">]>${String(plan()['xl/workbook.xml'])}`,
      }),
    /document type declaration/,
  ],
  [
    'one in a sheet',
    () =>
      zip({
        ...plan(),
        'xl/worksheets/sheet1.xml': `<worksheet xmlns="${MAIN}"><sheetData><!DOCTYPE x></sheetData></worksheet>`,
      }),
    /document type declaration/,
  ],
  [
    'UTF-16',
    () =>
      zip({
        ...plan(),
        'xl/workbook.xml': Uint8Array.from([0xff, 0xfe, ...utf16(String(plan()['xl/workbook.xml']))]),
      }),
    /not written in UTF-8/,
  ],
  [
    'Latin-1',
    () =>
      zip({ ...plan(), 'xl/workbook.xml': String(plan()['xl/workbook.xml']).replace('UTF-8', 'ISO-8859-1') }),
    /not written in UTF-8/,
  ],
  ['zip64', () => patch(season(), 0x02014b50, 20, 0xffffffff), /zip64/],
  ['an encrypted zip', () => patch(season(), 0x02014b50, 8, 0x00080001), /password/],
  [
    'a bomb by ratio',
    () => zip({ ...plan(), 'xl/media/a.bin': new Uint8Array(30_000_000) }),
    /unpacks to far more/,
  ],
  ['a bomb by size', () => patch(season(), 0x02014b50, 24, 0x7fffffff), /larger than 512 MB/],
  ['a wrong checksum', () => patch(season(), 0x02014b50, 16, 0x12345678), /damaged.*cannot be unpacked/],
  ['a cut file', () => season().slice(0, 4000), /cut short/],
  ['a missing sheet', () => zip(without('xl/worksheets/sheet1.xml')), /damaged.*"Plan" is missing/],
  ['no workbook', () => zip(without('xl/workbook.xml')), /not an Excel workbook/],
  [
    'overlapping elements',
    () =>
      zip({
        ...plan(),
        'xl/workbook.xml': String(plan()['xl/workbook.xml']).replace('</sheets>', '</shoots>'),
      }),
    /damaged.*overlap/,
  ],
  [
    'an endless nest',
    () => zip({ ...plan(), 'xl/workbook.xml': `${HEAD}<workbook xmlns="${MAIN}">${'<a>'.repeat(5000)}` }),
    /damaged/,
  ],
  [
    'a cell beyond the sheet',
    () =>
      simpleBook({
        sheets: {
          Plan: `<worksheet xmlns="${MAIN}"><sheetData><row r="1"><c r="ZZZZ1"><v>1</v></c></row></sheetData></worksheet>`,
        },
      }),
    /damaged.*cells/,
  ],
])('%s', (_, file, says) => {
  expect(refusal(file())).toMatch(says);
});

test('two parts of one name', () => {
  const file = season();
  // "sheet2" becomes a second "sheet1" in both lists.
  const out = file.slice();
  const from = new TextEncoder().encode('worksheets/sheet2.xml');
  for (let i = 0; i + from.length < out.length; i++)
    if (from.every((byte, k) => out[i + k] === byte)) out[i + 16] = 0x31;
  expect(refusal(out)).toMatch(/is there twice/);
});

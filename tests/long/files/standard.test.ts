import { readFileSync } from 'node:fs';
import { writeXlsx } from '../../../shared/files';
import { TEMPLATES } from '../../../templates';
import { modelOf } from '../../run/support';
import { standardFaults } from '../../files/support/standard';
import { bookOf, partsOf } from '../../files/support/support';

// The committed files: `npm run check` holds them to what a fresh build gives.
test.each(Object.keys(TEMPLATES))('%s follows the standard', (name) => {
  expect(standardFaults(partsOf(new Uint8Array(readFileSync(`templates/${name}`))))).toEqual([]);
});

test('so does a plan of fry, and a workbook with notes, breaks and a table', () => {
  expect(standardFaults(partsOf(writeXlsx(modelOf({ product: 'fry' }))))).toEqual([]);
  const cells = {
    A1: { value: 'Fish', note: 'counted' },
    B1: { value: 'Share' },
    A2: { value: 3 },
    B2: { formula: '=A2/9', value: 1 / 3, note: 'a & b' },
  };
  expect(
    standardFaults(
      partsOf(
        writeXlsx(
          bookOf(cells, {
            tables: [{ name: 'fish', range: 'A1:B2' }],
            print: { breaksAbove: [2] },
            merges: ['D1:E2'],
          }),
        ),
      ),
    ),
  ).toEqual([]);
});

describe('the rules find what is wrong', () => {
  const parts = partsOf(writeXlsx(modelOf()));
  const sheet = 'xl/worksheets/sheet1.xml';
  const broken = (path: string, from: string | RegExp, to: string): string[] => {
    const changed = (parts[path] ?? '').replace(from, to);
    expect(changed).not.toBe(parts[path]);
    return standardFaults({ ...parts, [path]: changed });
  };
  test.each<[string, string, string | RegExp, string, string]>([
    [
      'an element too late',
      sheet,
      /(<sheetProtection[^>]*>)(<mergeCells.*?<\/mergeCells>)/,
      '$2$1',
      '<sheetProtection> stands too late',
    ],
    [
      'an element that does not belong',
      'xl/styles.xml',
      '<dxfs',
      '<c/><dxfs',
      '<c> may not stand in <styleSheet>',
    ],
    ['a tag not closed', sheet, '</sheetData>', '', 'not well-formed'],
    ['a style that is not there', sheet, / s="\d+"/, ' s="999"', 'no such style'],
    [
      'a part without a content type',
      '[Content_Types].xml',
      /<Override PartName="\/xl\/styles.xml"[^>]*>/,
      '',
      'xl/styles.xml: only the content type of any XML',
    ],
    [
      'a relation that leads nowhere',
      'xl/_rels/workbook.xml.rels',
      'styles.xml',
      'style.xml',
      'xl/style.xml is not in the package',
    ],
    [
      'two merged ranges that overlap',
      sheet,
      /<mergeCell ref="C4:D4"\/>/,
      '<mergeCell ref="C4:D5"/>',
      'merged cells overlap',
    ],
    ['rows out of order', sheet, '<row r="2"', '<row r="99"', 'out of order'],
  ])('%s', (_title, path, from, to, fault) => {
    expect(broken(path, from, to).join('\n')).toContain(fault);
  });
});

test('a formula inside the spilled range of another is found; beside it, it may stand', () => {
  const cells = { A1: { formula: '=SUM(B1:B2*2)', value: 6 }, A2: { formula: '=1+2', value: 3 } };
  const parts = partsOf(writeXlsx(bookOf(cells)));
  expect(standardFaults(parts)).toEqual([]);
  const path = 'xl/worksheets/sheet1.xml';
  const wider = (parts[path] ?? '').replace('t="array" ref="A1"', 't="array" ref="A1:A2"');
  expect(standardFaults({ ...parts, [path]: wider })).toEqual([
    `${path}: formulas inside the spilled range A1:A2`,
  ]);
});

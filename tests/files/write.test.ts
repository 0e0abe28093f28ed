import { SERIES_COLORS } from '../../shared/sheet/workbook/styles';
import fc from 'fast-check';
import { readXlsx as readWithHucre } from 'hucre/xlsx';
import { readXlsx, writeXlsx } from '../../shared/files';
import type { CellModel } from '../../shared/sheet/workbook/model';
import { seasonPlanTemplate } from '../../templates/season-plan.template';
import { bookOf, cellsOf, partsOf, readable } from './support/support';

const sheetOf = (cells: Readonly<Record<string, CellModel>>): string =>
  partsOf(writeXlsx(bookOf(cells)))['xl/worksheets/sheet1.xml'] ?? '';
const cellXml = (cell: CellModel): string =>
  /<c r="A1".*?(?:\/>|<\/c>)/.exec(sheetOf({ A1: cell }))?.[0] ?? '';

/** Built once: it is planned and calculated whole. */
const TEMPLATE = seasonPlanTemplate();

describe('how a cell is stored', () => {
  test.each<[string, CellModel, string]>([
    [
      'a custom function with a number',
      { formula: '=SPAWN.AMMONIA.SHARE(8,25)', value: 0.05 },
      '<c r="A1" cm="1"><f t="array" ref="A1">_xldudf_SPAWN_AMMONIA_SHARE(8,25)</f><v>0.05</v></c>',
    ],
    [
      'with a text',
      { formula: '=SPAWN.CHAIN.START(1,1)', value: 'a<b' },
      '<c r="A1" t="str" cm="1"><f t="array" ref="A1">_xldudf_SPAWN_CHAIN_START(1,1)</f><v>a&lt;b</v></c>',
    ],
    [
      'with a truth value',
      { formula: '=SPAWN.CHAIN.START(1,1)', value: true },
      '<c r="A1" t="b" cm="1"><f t="array" ref="A1">_xldudf_SPAWN_CHAIN_START(1,1)</f><v>1</v></c>',
    ],
    [
      'with an error',
      { formula: '=SPAWN.CHAIN.START(1,1)', value: { error: '#N/A', message: 'why' } },
      '<c r="A1" t="e" cm="1"><f t="array" ref="A1">_xldudf_SPAWN_CHAIN_START(1,1)</f><v>#N/A</v></c>',
    ],
    [
      'with an error the format does not know',
      { formula: '=1', value: { error: '#SPILL!' } },
      '<c r="A1" t="e"><f>1</f><v>#VALUE!</v></c>',
    ],
    [
      'a native formula',
      { formula: '=IF(B1>2,"a","b")', value: 'a' },
      '<c r="A1" t="str"><f>IF(B1&gt;2,"a","b")</f><v>a</v></c>',
    ],
    [
      'a spilled answer',
      { formula: '=SPAWN.HORMONE.VOLUME(B1:B3)', spill: [3, 1], value: 1 },
      '<c r="A1" cm="1"><f t="array" ref="A1:A3">_xldudf_SPAWN_HORMONE_VOLUME(B1:B3)</f><v>1</v></c>',
    ],
    ['a number that is none', { value: NaN }, '<c r="A1" t="e"><v>#NUM!</v></c>'],
    ['a formula nobody calculated has no value', { formula: '=1+1' }, '<c r="A1"><f>1+1</f></c>'],
  ])('%s', (_title, cell, xml) => {
    expect(cellXml(cell)).toBe(xml);
  });

  test('cells under a spilled answer hold only values', () => {
    const xml = sheetOf({
      A1: { formula: '=SPAWN.HORMONE.VOLUME(B1:B2)', spill: [2, 1], value: 1 },
      A2: { value: 2 },
    });
    expect(xml).toContain('<c r="A2"><v>2</v></c>');
  });
});

describe('the file as a whole', () => {
  const parts = partsOf(writeXlsx(TEMPLATE));

  test('nothing is calculated on opening, and no chain of calculation is promised', () => {
    expect(parts['xl/workbook.xml']).toContain('<calcPr calcId="191029"/>');
    expect(parts['xl/workbook.xml']).not.toContain('fullCalcOnLoad');
    expect(Object.keys(parts)).not.toContain('xl/calcChain.xml');
  });

  test('no formula names a function the way Excel cannot find it', () => {
    for (const [path, xml] of Object.entries(parts)) {
      for (const [, formula = ''] of xml.matchAll(/<(?:f|formula\d?|definedName)\b[^>]*>([^<]*)</g))
        expect([path, /\bSPAWN\./i.test(formula)]).toEqual([path, false]);
    }
  });

  test('every dynamic array has its metadata, and there is metadata only then', () => {
    expect(parts['xl/metadata.xml']).toContain('XLDAPR');
    expect(Object.keys(partsOf(writeXlsx(bookOf({ A1: { formula: '=1+1', value: 2 } }))))).not.toContain(
      'xl/metadata.xml',
    );
  });

  test('every formula has a value; rules hold no custom function', () => {
    for (const [path, xml] of Object.entries(parts)) {
      if (!path.startsWith('xl/worksheets/')) continue;
      const cells = [...xml.matchAll(/<c r="([A-Z]+\d+)"[^>]*>(?:(?!<\/c>).)*<\/c>/g)].filter(([cell]) =>
        cell.includes('<f'),
      );
      expect(
        cells
          .filter(([cell]) => !/<v>[^<]/.test(cell) && !/t="str".*<v><\/v>/.test(cell))
          .map(([, address]) => `${path} ${address ?? ''}`),
      ).toEqual([]);
      for (const [, formula = ''] of xml.matchAll(/<formula\d?>([^<]*)</g))
        expect(formula).not.toContain('_xldudf_');
    }
  });

  test('the same model gives the same bytes, with no clock in them', () => {
    const [first, second] = [writeXlsx(TEMPLATE), writeXlsx(seasonPlanTemplate())];
    expect(Buffer.from(first).equals(Buffer.from(second))).toBe(true);
    expect(parts['docProps/core.xml']).not.toMatch(/\d{4}-\d{2}-\d{2}T/);
  });

  test('charts carry the values they show', () => {
    const chart =
      Object.entries(parts).find(
        ([path, xml]) => path.startsWith('xl/charts/') && xml.includes('Money left by week'),
      )?.[1] ?? '';
    expect((chart.match(/<c:pt /g) ?? []).length).toBeGreaterThan(20);
    expect(chart).toContain('<c:dateAx>');
  });
});

/** Another reader, written by other people, must see what we wrote. */
test('an independent reader finds the same values and formulas', async () => {
  const model = TEMPLATE;
  const other = await readWithHucre(writeXlsx(model), { readStyles: true });
  expect(other.sheets.map(({ name }) => name)).toEqual(model.sheets.map(({ name }) => name));
  let compared = 0;
  model.sheets.forEach((sheet, i) => {
    const cells = other.sheets[i]?.cells ?? new Map<string, { value: unknown; formula?: string }>();
    for (const [address, cell] of Object.entries(sheet.cells)) {
      if (typeof cell.value !== 'string' || cell.formula !== undefined) continue;
      const [, letters = '', row = ''] = /^([A-Z]+)(\d+)$/.exec(address) ?? [];
      const column = [...letters].reduce((n, c) => n * 26 + c.charCodeAt(0) - 64, 0) - 1;
      const found =
        cells.get(`${Number(row) - 1},${column}`)?.value ?? other.sheets[i]?.rows[Number(row) - 1]?.[column];
      expect([sheet.name, address, found]).toEqual([sheet.name, address, cell.value]);
      compared++;
    }
  });
  expect(compared).toBeGreaterThan(300);
});

describe('written and read again', () => {
  test('the season plan comes back whole: cells, looks, rules, tables, charts, names, print set-up', () => {
    const model = TEMPLATE;
    const { model: back, lost } = readable(readXlsx(writeXlsx(model)));
    expect(lost).toEqual([]);
    expect(back.title).toBe(model.title);
    const plain = (value: unknown): unknown =>
      JSON.parse(
        JSON.stringify(value, (key, v: unknown) =>
          (key === 'message' && typeof v === 'string' && v.startsWith('#')) ||
          (key === 'landscape' && v === false) ||
          // The colour a series has anyway is not read as a wish.
          (key === 'color' && typeof v === 'string' && (SERIES_COLORS as readonly string[]).includes(v)) ||
          // A print area is written and read by spreadsheets, our reader passes over it.
          (key === 'area' && typeof v === 'string')
            ? undefined
            : v,
        ),
      );
    model.sheets.forEach((sheet, i) => {
      expect(plain(back.sheets[i])).toEqual(plain(sheet));
    });
    const sorted = (names: readonly { readonly name: string }[]): unknown =>
      [...names].sort((a, b) => (a.name < b.name ? -1 : 1));
    expect(sorted(back.names)).toEqual(sorted(model.names));
  });

  const value = fc.oneof(
    fc.double({ noNaN: true, noDefaultInfinity: true }).map((n) => (n === 0 ? 0 : n)),
    fc.boolean(),
    fc.string({ unit: 'grapheme', minLength: 1, maxLength: 40 }),
    fc.string({ unit: 'binary', minLength: 1, maxLength: 20 }),
    fc.constantFrom(
      '_x0041_',
      '_x005F_',
      ' lead',
      'a\r\nb',
      '\t',
      ']]>',
      '<&>"\'',
      '\u0001',
      '=1+1',
      '#N/A',
      'TRUE',
      '007',
    ),
    fc
      .constantFrom(...(['#VALUE!', '#N/A', '#NUM!', '#DIV/0!', '#REF!', '#NAME?', '#NULL!'] as const))
      .map((error) => ({ error })),
  );
  test('any value survives', () => {
    fc.assert(
      fc.property(value, (v) => {
        expect(cellsOf(readXlsx(writeXlsx(bookOf({ B3: { value: v } }))))['B3']).toEqual({
          value: typeof v === 'string' ? lonely(v) : v,
        });
      }),
      { seed: 7, numRuns: 300 },
    );
  });
  test('any result of a formula survives', () => {
    fc.assert(
      fc.property(value, (v) => {
        expect(cellsOf(readXlsx(writeXlsx(bookOf({ B3: { formula: '=A1', value: v } }))))['B3']).toEqual({
          formula: '=A1',
          value: typeof v === 'string' ? lonely(v) : v,
        });
      }),
      { seed: 8, numRuns: 300 },
    );
  });

  test('notes, merged cells, heights and formats', () => {
    const cells = {
      A1: { value: 46508, format: 'd mmm yyyy', note: 'Counted twice,\nby two people' },
      B2: { value: 0.59, format: '0.0%' },
      C3: { note: 'nothing but a note' },
    };
    const model = bookOf(cells, {
      merges: ['A5:C6'],
      heights: { 5: 30 },
      widths: [10, 20.5],
      freeze: { rows: 1, columns: 2 },
      tab: 'AABBCC',
    });
    const { model: back } = readable(readXlsx(writeXlsx(model)));
    expect(back.sheets).toEqual(model.sheets);
  });
});

/** Half a surrogate pair cannot be written in any encoding of XML. */
const lonely = (text: string): string =>
  text.replace(/[\uD800-\uDBFF](?![\uDC00-\uDFFF])|(?<![\uD800-\uDBFF])[\uDC00-\uDFFF]/g, '\uFFFD');

test('a workbook without a sheet cannot be', () => {
  expect(() => writeXlsx({ title: '', sheets: [], names: [] })).toThrow('at least one sheet');
});

test.each([
  [[], null],
  [[6], '<rowBreaks count="1" manualBreakCount="1"><brk id="5" max="16383" man="1"/></rowBreaks>'],
])('pages begin anew above lines %j', (breaksAbove, xml) => {
  const book = bookOf({ A1: { value: 1 }, A9: { value: 2 } });
  const sheets = book.sheets.map((sheet) => ({ ...sheet, print: { breaksAbove } }));
  const part = partsOf(writeXlsx({ ...book, sheets }))['xl/worksheets/sheet1.xml'] ?? '';
  expect(/<rowBreaks.*<\/rowBreaks>/.exec(part)?.[0] ?? null).toBe(xml);
});

import { createExecutor, createOffice, installOffice } from '../../src/officeStandIn';
import { createMemoryBook } from '../../src/officeStandIn/memoryBook';
import { auditSheets, findingsWorkbook, marksOf, runRecords, sheetFromRange } from '../../shared/records';
import type { AuditReport } from '../../shared/records';
import { learnRates, trendsOf } from '../../shared/learn';
import { ratesWorkbook, trendsWorkbook } from '../../shared/books/learn';
import { addressOf } from '../../shared/sheet/formula/address';
import type { WorkbookModel } from '../../shared/sheet/workbook/model';
import type { Cell } from '../../shared/base/values';
import { officePort } from '../../taskpane/host/office';
import { finish } from '../records/support/grid';
import { CLIENTS } from './support/clients';

/** What a check writes into the open workbook: texts of the records stay texts, whatever they begin with. */

const TRAPS = [
  '=HYPERLINK("http://example.org","see")',
  '+1+1',
  '-2+3',
  '@SUM(A1:A9)',
  "=cmd|'/c calc'!A1",
  '\t=1+1',
  '=1+',
  "'=1",
];
const HEADINGS = ['Run', 'Date', 'Female', 'Eggs', 'Hatched', '=1+1', '@note'];
const ROWS: Cell[][] = [
  HEADINGS,
  ...Array.from({ length: 24 }, (_, i): Cell[] => [
    `${TRAPS[i % TRAPS.length] ?? ''}${i}`,
    46_000 + 9 * i,
    TRAPS[i % TRAPS.length] ?? null,
    i % 5 === 0 ? (TRAPS[i % TRAPS.length] ?? null) : 81_233 + 137 * i * i,
    i === 2 ? 999_999 : 40_117 + 91 * i * i,
    '=2*3',
    '-',
  ]),
];
/** A legal name of a sheet, and a formula to whoever is careless. */
const SHEET = '=A1+B1';
const report: AuditReport = finish(
  auditSheets([sheetFromRange({ name: SHEET, top: 0, left: 0, values: ROWS }, () => false)]),
);
const records = runRecords(report).map((one) => ({ ...one, findings: [] }));
const MODELS: readonly (readonly [string, WorkbookModel])[] = [
  ['findings', findingsWorkbook(report)],
  ['trends', trendsWorkbook(trendsOf(records))],
  ['rates', ratesWorkbook(learnRates(records))],
];

test('the records are as nasty as meant', () => {
  expect(report.found).toBeGreaterThan(2);
  const texts = MODELS.map(([, { sheets }]) => JSON.stringify(sheets));
  expect(texts[0]).toContain('HYPERLINK');
  expect(texts[1]).toContain('HYPERLINK');
});

describe.each(CLIENTS)('$name', (client) => {
  beforeEach(() => {
    const executor = createExecutor(createMemoryBook());
    const globals = createOffice({ executor });
    installOffice(globals);
    // The library kept for tests is of 2025 and knows no notes.
    const isSetSupported = (name: string, version?: string): boolean =>
      client !== CLIENTS[0] && globals.Office.context.requirements.isSetSupported(name, version);
    Object.assign(globalThis, {
      Excel: client.connect(executor),
      Office: { ...globals.Office, context: { ...globals.Office.context, requirements: { isSetSupported } } },
    });
  });

  test.each(MODELS)(
    '%s: every text arrives as it is, and no cell became a formula that was none',
    async (_, model) => {
      expect(await officePort.writeWorkbook(model, '', () => undefined)).toMatchObject({ kind: 'written' });
      for (const { name, cells } of model.sheets) {
        const { values, formulas } = await Excel.run(async (context) => {
          const range = context.workbook.worksheets.getItem(name).getRange('A1:Z120').load('values,formulas');
          await context.sync();
          return { values: range.values as unknown[][], formulas: range.formulas as unknown[][] };
        });
        const wrong: string[] = [];
        for (let r = 0; r < 120; r++)
          for (let c = 0; c < 26; c++) {
            const cell = cells[addressOf(r, c)];
            if (cell?.formula !== undefined) continue;
            const [value, formula] = [values[r]?.[c], formulas[r]?.[c]];
            if (
              typeof cell?.value === 'string'
                ? value !== cell.value || formula !== value
                : typeof formula === 'string' && formula !== ''
            )
              wrong.push(
                `${addressOf(r, c)}: ${JSON.stringify(cell?.value)} became ${JSON.stringify(formula)}, shown ${JSON.stringify(value)}`,
              );
          }
        expect(wrong).toEqual([]);
      }
    },
    60_000,
  );

  test('a note says the same text, and is no formula either', async () => {
    const sheet = await Excel.run(async (context) => {
      const one = context.workbook.worksheets.add(SHEET);
      await context.sync();
      one.getRange('A1').values = [["'=1+1"]];
      await context.sync();
      return SHEET;
    });
    const marks = marksOf(report)
      .filter(({ place }) => place.sheet === sheet)
      .map(({ place, note }) => ({ ...place, address: place.cell, fill: '#F9DEDC', note }));
    expect(marks.length).toBeGreaterThan(0);
    const { marked, left } = await officePort.mark(marks, () => undefined);
    expect([marked.length, left]).toEqual([marks.length, []]);
    expect((await officePort.unmark(marked, () => undefined)).restored).toBe(marks.length);
  });

  test('a sheet of that name is there: nothing is written', async () => {
    const [, model] = MODELS[0] ?? [];
    if (!model) throw new Error('no model');
    await Excel.run(async (context) => {
      context.workbook.worksheets.add('Check reading').getRange('A1').values = [['mine']];
      await context.sync();
    });
    expect(await officePort.writeWorkbook(model, '', () => undefined)).toMatchObject({
      kind: 'taken',
      sheets: ['Check reading'],
    });
    const names = await Excel.run(async (context) => {
      const { worksheets } = context.workbook;
      worksheets.load('items/name');
      await context.sync();
      return worksheets.items.map(({ name }) => name);
    });
    expect(names).toEqual(['Sheet1', 'Check reading']);
  });
});

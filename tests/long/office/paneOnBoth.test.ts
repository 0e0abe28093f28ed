import { createExecutor, createOffice, installOffice } from '../../../src/officeStandIn';
import type { StandInBook } from '../../../src/officeStandIn';
import type { MemoryBook } from '../../../src/officeStandIn/memoryBook';
import { createMemoryBook } from '../../../src/officeStandIn/memoryBook';
import { officePort } from '../../../taskpane/host/office';
import { seasonModel } from '../../taskpane/support/seasonModel';
import { calculating } from '../../office/calculating';
import type { Client } from '../../office/support/clients';
import { CLIENTS } from '../../office/support/clients';

/**
 * The pane's own door to the workbook, run through the real client library and through ours: both must leave
 * the same workbook.
 */
function open(client: Client): MemoryBook {
  const book = createMemoryBook(calculating);
  const executor = createExecutor(book);
  const globals = createOffice({ executor });
  installOffice(globals);
  const Excel = client.connect(executor);
  // The library kept for tests is of 2025: what came later is not asked of either.
  const isSetSupported = (name: string, version?: string): boolean =>
    Number((version ?? '1.1').split('.')[1]) <= 14 &&
    globals.Office.context.requirements.isSetSupported(name, version);
  Object.assign(globalThis, {
    Excel,
    Office: { ...globals.Office, context: { ...globals.Office.context, requirements: { isSetSupported } } },
  });
  return book;
}

async function everything(book: StandInBook): Promise<unknown> {
  const sheets = await book.sheets();
  const looked = await Promise.all(
    sheets.map(async ({ id, ...sheet }) => {
      const area = await book.usedArea(id, false);
      const cells = area && {
        formulas: await book.read(id, area, 'formulas'),
        values: await book.read(id, area, 'values'),
        formats: await book.read(id, area, 'formats'),
        looks: await Promise.all(
          Array.from({ length: area.rows * area.columns }, async (_, i) => {
            const cell = {
              row: area.row + Math.floor(i / area.columns),
              column: area.column + (i % area.columns),
              rows: 1,
              columns: 1,
            };
            return [
              await book.format(id, cell),
              await book.validation(id, cell),
              await book.border(id, cell, 'EdgeBottom'),
            ];
          }),
        ),
      };
      return {
        sheet,
        area,
        cells,
        charts: await book.charts(id),
        conditionals: await book.conditionals(id),
        freeze: await book.freeze(id),
        protection: await book.protection(id),
        page: await book.page(id),
        merges: await book.merges(id),
      };
    }),
  );
  return { looked, names: await book.names(), tables: await book.tables() };
}

const quiet = (): void => undefined;

async function work(client: Client): Promise<unknown> {
  const book = open(client);
  const written = await officePort.writeWorkbook(seasonModel(), '', quiet);
  const again = await officePort.writeWorkbook(seasonModel(), '', quiet);
  const taken = await officePort.writeWorkbook(seasonModel(), ' 2', quiet);
  await book.select((await book.sheets())[0]?.id ?? '', { row: 0, column: 0, rows: 2, columns: 2 });
  const inserted = await officePort.insertFormula({
    formula: '=SPAWN.AMMONIA.SHARE(8, 25)',
    rows: 1,
    columns: 1,
    formats: ['0.0%'],
    hasHeadings: false,
    mayReplace: false,
  });
  const refused = await officePort.insertFormula({
    formula: '=1',
    rows: 1,
    columns: 1,
    formats: [],
    hasHeadings: false,
    mayReplace: false,
  });
  const reading = await officePort.readSelection();
  const scan = await officePort.scanCalls(quiet);
  return {
    written,
    again,
    taken,
    inserted,
    refused,
    reading,
    calls: scan.calls,
    book: await everything(book),
  };
}

test('the pane leaves the same workbook through the real client library and through ours', async () => {
  const [real, ours] = CLIENTS;
  if (!real || !ours) throw new Error('two clients are needed');
  const through = await work(ours);
  expect(JSON.parse(JSON.stringify(await work(real)))).toEqual(JSON.parse(JSON.stringify(through)));
  expect(through).toMatchObject({
    written: { kind: 'written' },
    again: { kind: 'taken' },
    inserted: { kind: 'inserted' },
    refused: { kind: 'occupied' },
  });
});

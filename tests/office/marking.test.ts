import { createExecutor, createOffice, installOffice } from '../../src/officeStandIn';
import { createMemoryBook } from '../../src/officeStandIn/memoryBook';
import type { MemoryBook } from '../../src/officeStandIn/memoryBook';
import { officePort } from '../../taskpane/host/office';
import type { CellMark } from '../../taskpane/host/port';
import type { Client } from './support/clients';
import { CLIENTS } from './support/clients';

/**
 * Reading records, marking cells and taking the marks away, through the real client library and through ours.
 */
const quiet = (): void => undefined;
const goOn = (): boolean => false;

async function open(client: Client): Promise<{ book: MemoryBook; id: string; name: string }> {
  const book = createMemoryBook();
  const executor = createExecutor(book);
  const globals = createOffice({ executor });
  installOffice(globals);
  // The library kept for tests is of 2025: what came later is not asked of it. Ours is asked for notes too.
  const isOld = client === CLIENTS[0];
  const isSetSupported = (name: string, version?: string): boolean =>
    (!isOld || Number((version ?? '1.1').split('.')[1]) <= 14) &&
    globals.Office.context.requirements.isSetSupported(name, version);
  Object.assign(globalThis, {
    Excel: client.connect(executor),
    Office: { ...globals.Office, context: { ...globals.Office.context, requirements: { isSetSupported } } },
  });
  const [sheet] = await book.sheets();
  if (!sheet) throw new Error('no sheet');
  return { book, id: sheet.id, name: sheet.name };
}
const at = (row: number, column: number) => ({ row, column, rows: 1, columns: 1 });

test.each(CLIENTS.map((client) => [client.name, client] as const))(
  '%s: the fill of before comes back, a colour of the user stays',
  async (_, client) => {
    const { book, id, name } = await open(client);
    await Excel.run(async (context) => {
      const sheet = context.workbook.worksheets.getItem(name);
      sheet.getRange('B2:C3').values = [
        ['Eggs', 'Hatched'],
        [100, 200],
      ];
      sheet.getRange('B3').format.fill.color = '#AABBCC';
      await context.sync();
    });
    const reading = await officePort.readCells('sheet', quiet, goOn);
    expect(reading).toMatchObject({
      sheets: [
        {
          name,
          top: 1,
          left: 1,
          values: [
            ['Eggs', 'Hatched'],
            [100, 200],
          ],
        },
      ],
      again: { sheet: name },
    });
    const wanted: CellMark[] = ['B3', 'C3', 'C2'].map((address) => ({
      sheet: name,
      address,
      fill: '#F9DEDC',
      note: 'Spawnbook check\nnot right',
    }));
    const { marked, left } = await officePort.mark(wanted, quiet);
    expect([marked.map(({ was }) => was.toUpperCase()), left]).toEqual([
      ['#AABBCC', '#FFFFFF', '#FFFFFF'],
      [],
    ]);
    const fill = async (row: number, column: number): Promise<unknown> =>
      (await book.format(id, at(row, column))).fill?.toUpperCase();
    expect([await fill(2, 1), await fill(2, 2)]).toEqual(['#F9DEDC', '#F9DEDC']);
    await book.setFormat(id, at(1, 2), { fill: '#00FF00' });
    expect(await officePort.unmark(marked, quiet)).toEqual({ restored: 2, changed: 1, stuck: [], left: [] });
    expect([await fill(2, 1), await fill(2, 2), await fill(1, 2)]).toEqual(['#AABBCC', '', '#00FF00']);
    expect([await book.note(id, 2, 1), await book.note(id, 2, 2)]).toEqual(['', '']);
  },
);

test.each(CLIENTS.map((client) => [client.name, client] as const))(
  '%s: a protected sheet is left alone with a sentence, before and after',
  async (_, client) => {
    const { name } = await open(client);
    const wanted: CellMark[] = [
      { sheet: name, address: 'A1', fill: '#F9DEDC', note: 'Spawnbook check\nnot right' },
    ];
    const { marked } = await officePort.mark(wanted, quiet);
    expect(marked).toHaveLength(1);
    await Excel.run(async (context) => {
      context.workbook.worksheets.getItem(name).protection.protect({});
      await context.sync();
    });
    const again = await officePort.mark(wanted, quiet);
    expect(again.marked).toEqual([]);
    expect(again.left.join()).toMatch(/is protected/);
    expect((await officePort.unmark(marked, quiet)).stuck).toEqual(marked);
  },
);

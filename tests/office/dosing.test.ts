import { dosingTemplate } from '../../templates/dosing.template';
import { parseArea } from '../../shared/sheet/formula/address';
import { officePort } from '../../taskpane/host/office';
import { createExecutor, createOffice, installOffice } from '../../src/officeStandIn';
import type { MemoryBook } from '../../src/officeStandIn/memoryBook';
import { createMemoryBook } from '../../src/officeStandIn/memoryBook';
import type { Cell } from '../../shared/base/values';
import { calculating } from './calculating';
import type { Client } from './support/clients';
import { CLIENTS } from './support/clients';

function open(client: Client): MemoryBook {
  const book = createMemoryBook(calculating);
  const executor = createExecutor(book);
  const globals = createOffice({ executor });
  installOffice(globals);
  // The library kept for tests is of 2025: what came later is not asked of it.
  const isSetSupported = (name: string, version?: string): boolean =>
    Number((version ?? '1.1').split('.')[1]) <= 14 &&
    globals.Office.context.requirements.isSetSupported(name, version);
  Object.assign(globalThis, {
    Excel: client.connect(executor),
    Office: { ...globals.Office, context: { ...globals.Office.context, requirements: { isSetSupported } } },
  });
  return book;
}

describe.each(CLIENTS)('the dosing sheet through $name', (client) => {
  const model = dosingTemplate();
  const [sheet] = model.sheets;
  const quiet = (): void => undefined;

  async function written(): Promise<{
    book: MemoryBook;
    id: string;
    value: (address: string) => Promise<Cell>;
  }> {
    const book = open(client);
    expect(await officePort.writeWorkbook(model, '', quiet)).toEqual({ kind: 'written', sheets: ['Dosing'] });
    const id = (await book.sheets()).find(({ name }) => name === 'Dosing')?.id ?? '';
    const value = async (address: string): Promise<Cell> => {
      const at = parseArea(address);
      const [[cell = null] = []] = at
        ? await book.read(id, { row: at.top, column: at.left, rows: 1, columns: 1 }, 'values')
        : [];
      return cell;
    };
    return { book, id, value };
  }

  // The sentences above the table are checked on the model and in a browser: the calculator of these tests
  // takes cells in one order only.
  test('the table calculates to the values the model carries', async () => {
    const { value } = await written();
    for (const address of ['B32', 'D32', 'H32', 'F33'])
      expect([address, await value(address)]).toEqual([address, sheet?.cells[address]?.value ?? null]);
  });

  test('one formula spills the steps; nothing is written under it', async () => {
    const { book, id } = await written();
    const formulas = await book.read(id, { row: 31, column: 1, rows: 9, columns: 9 }, 'formulas');
    expect(formulas.flat().filter((cell) => typeof cell === 'string' && cell.startsWith('='))).toHaveLength(
      1,
    );
  });

  test('is locked but for its inputs, drawn and printed on a page of its own', async () => {
    const { book, id } = await written();
    expect((await book.protection(id)).isOn).toBe(true);
    expect((await book.charts(id)).map(({ series }) => series.length)).toEqual([6]);
    expect(await book.conditionals(id)).toHaveLength(sheet?.conditionals?.length ?? 0);
  });

  test('a second one stands beside the first and follows its own readings', async () => {
    await written();
    expect(await officePort.writeWorkbook(model, '', quiet)).toMatchObject({
      kind: 'taken',
      sheets: ['Dosing'],
    });
    expect(await officePort.writeWorkbook(model, ' 2', quiet)).toEqual({
      kind: 'written',
      sheets: ['Dosing 2'],
    });
  });
});

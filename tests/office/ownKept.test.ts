import { createExecutor, createOffice, installOffice } from '../../src/officeStandIn';
import { createMemoryBook } from '../../src/officeStandIn/memoryBook';
import { learnRates, ratesFromCells } from '../../shared/learn';
import { ratesWorkbook } from '../../shared/books/learn';
import { officePort } from '../../taskpane/host/office';
import { demoFarm } from '../learn/demoFarm';
import { CLIENTS } from './support/clients';

/**
 * What the workbook keeps for the check: meanings of columns and the sheet of own rates, through the real
 * client library and ours.
 */
const quiet = (): void => undefined;

describe.each(CLIENTS)('$name', (client) => {
  beforeEach(() => {
    const executor = createExecutor(createMemoryBook());
    installOffice(createOffice({ executor }));
    Object.assign(globalThis, { Excel: client.connect(executor) });
  });

  test('kept, replaced, read back, taken away; on a protected sheet too', async () => {
    expect(await officePort.recall()).toBeUndefined();
    await officePort.remember(undefined);
    await officePort.remember('{"version":1}');
    await Excel.run(async (context) => {
      context.workbook.worksheets.getActiveWorksheet().protection.protect({});
      await context.sync();
    });
    await officePort.remember('{"version":1,"columns":[]}');
    expect(await officePort.recall()).toBe('{"version":1,"columns":[]}');
    await officePort.remember(undefined);
    expect(await officePort.recall()).toBeUndefined();
  });

  test('a sheet of rates comes back as the figures that were written, renamed or not', async () => {
    expect(await officePort.readRates()).toBeUndefined();
    const learned = learnRates(demoFarm(6));
    expect(await officePort.writeWorkbook(ratesWorkbook(learned), '', quiet)).toMatchObject({
      kind: 'written',
    });
    const values = learned.rates.map(({ key, kind, value, runs }) => ({ key, kind, value, runs }));
    const read = async () => {
      const cells = await officePort.readRates();
      const { rates, leftOut } = ratesFromCells(cells ?? { name: '', top: 0, left: 0, values: [] });
      expect(leftOut).toEqual([]);
      return {
        sheet: cells?.name,
        values: rates.map(({ key, kind, value, runs }) => ({ key, kind, value, runs })),
      };
    };
    expect(await read()).toEqual({ sheet: 'Rates', values });
    await Excel.run(async (context) => {
      context.workbook.worksheets.getItem('Rates').name = 'Our figures';
      // Excel lets names follow a renamed sheet; the book in memory does not.
      context.workbook.names.getItem('rate_latency_offset').formula = "='Our figures'!$D$5";
      await context.sync();
    });
    expect(await read()).toEqual({ sheet: 'Our figures', values });
  }, 60_000);

  test('a sheet called Rates that holds nothing, or is far too big, is none', async () => {
    await Excel.run(async (context) => {
      context.workbook.worksheets.add('Rates');
      await context.sync();
    });
    expect(await officePort.readRates()).toBeUndefined();
    await Excel.run(async (context) => {
      context.workbook.worksheets.getItem('Rates').getRange('A1').values = [['x']];
      context.workbook.worksheets.getItem('Rates').getRange('XFD90000').values = [['y']];
      await context.sync();
    });
    expect(await officePort.readRates()).toBeUndefined();
  });
});

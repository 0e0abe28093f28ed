import { strFromU8, unzipSync } from 'fflate';
import { writeXlsx } from '../../shared/files';
import { SETTINGS_PART } from '../../shared/files/settings';
import { createExecutor, createOffice, installOffice } from '../../src/officeStandIn';
import { createMemoryBook } from '../../src/officeStandIn/memoryBook';
import { learnRates, ratesFromCells } from '../../shared/learn';
import { ratesWorkbook } from '../../shared/books/learn';
import { officePort } from '../../taskpane/host/office';
import { demoFarm } from '../learn/support/demoFarm';
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

  test('settings that a file of the local sheet brings become those of the workbook; newer ones stay', async () => {
    let parts = [{ id: '{part}', namespace: 'urn:spawnbook:settings', xml: '' }];
    const book = Object.assign(createMemoryBook(), {
      xmlParts: () => parts,
      deleteXmlPart: (id: string) => {
        parts = parts.filter((part) => part.id !== id);
      },
    });
    Object.assign(globalThis, { Excel: client.connect(createExecutor(book)) });
    const kept = { 'spawnbook.pane': '{"vats":"4 × 600 L & <one>"}', 'spawnbook.columns': '{"version":1}' };
    // As the file holds it: written by our writer, taken out of the package.
    const sheets = [{ name: 'Log', widths: [10], cells: { A1: { value: 1 } } }];
    const file = unzipSync(writeXlsx({ title: 'Log', names: [], sheets, settings: kept }));
    parts = parts.map((part) => ({ ...part, xml: strFromU8(file[SETTINGS_PART] ?? new Uint8Array()) }));
    await officePort.remember('{"version":2}');
    expect(await officePort.recallPane()).toBe(kept['spawnbook.pane']);
    expect(parts).toEqual([]);
    expect(await officePort.recallPane()).toBe(kept['spawnbook.pane']);
    expect(await officePort.recall()).toBe('{"version":2}');
    // Taken away, it does not come back from the file.
    await officePort.remember(undefined);
    expect(await officePort.recall()).toBeUndefined();
    // Something else under that name is left alone.
    parts = [{ id: '{other}', namespace: 'urn:spawnbook:settings', xml: '<settings>' }];
    expect(await officePort.recallText('other')).toBeUndefined();
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

import { createExecutor, createOffice, installOffice } from '../../src/officeStandIn';
import { createMemoryBook } from '../../src/officeStandIn/memoryBook';
import { LOG_COLUMNS, LOG_SHEET, readLog } from '../../shared/dosing/log';
import { officePort } from '../../taskpane/host/office';

/** What is written down at a vat is read back as the same vat, whatever its name looks like. */

test.each(['Vat 1', '7', '1-2', 'true', '=A1', "'quoted"])('a vat named %s', async (vat) => {
  installOffice(createOffice({ executor: createExecutor(createMemoryBook()) }));
  const headings = LOG_COLUMNS.map(({ heading }) => heading);
  const row = LOG_COLUMNS.map(({ key }) =>
    key === 'at' ? 46_500.5 : key === 'vat' ? vat : key === 'what' ? 'dead' : key === 'number' ? 12 : null,
  );
  const log = {
    sheet: LOG_SHEET,
    headings,
    formats: LOG_COLUMNS.map(({ format }) => format),
    widths: LOG_COLUMNS.map(({ width }) => width),
    rows: [row],
  };
  const { row: line } = await officePort.appendLines(log);
  const { lines } = readLog(await officePort.readLines({ sheet: LOG_SHEET, headings }));
  expect(lines.map((one) => [one.vat, one.what, one.number])).toEqual([[vat, 'dead', 12]]);
  expect(await officePort.removeLine(log, line)).toBe(true);
});

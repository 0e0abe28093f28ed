import { strFromU8, unzipSync } from 'fflate';
import { freeze } from '../../shared/catalogue/sharing';
import { calculate } from '../../shared/catalogue/calculation';
import { isUnreadable, readXlsx, writeXlsx } from '../../shared/files';
import type { WorkbookModel } from '../../shared/sheet/workbook/model';
import { OPTIONS } from './share/support/parts';

const settings = {
  'spawnbook.pane': '{"buyer":"Ama & Söhne <1>","prices":[4817.25]}',
  'spawnbook.columns': 'line\nbreak\u0001 ]]> "quoted"',
};
const model: WorkbookModel = calculate({
  title: 'Log',
  names: [],
  sheets: [
    {
      name: 'Vat log',
      widths: [10],
      cells: { A1: { value: 8 }, B1: { formula: '=SPAWN.AMMONIA.SHARE(A1,25)' } },
    },
  ],
}).model;
const written = writeXlsx({ ...model, settings: { ...settings, 'other.program': 'not ours' } });

test('what the pane keeps goes into the file and comes back, whatever is in it; nothing else does', () => {
  const read = readXlsx(written);
  if (isUnreadable(read)) throw new Error(read.fault);
  expect(read.model.settings).toEqual(settings);
});

test('a workbook that keeps nothing has no such part', () => {
  expect(Object.keys(unzipSync(writeXlsx(model))).filter((name) => name.startsWith('customXml'))).toEqual([]);
  const read = readXlsx(writeXlsx(model));
  expect('model' in read && read.model.settings).toBeUndefined();
});

test('a shared copy holds none of it, and says so', () => {
  const copy = freeze(written, OPTIONS);
  if (copy.kind !== 'made') throw new Error(copy.kind);
  const parts = unzipSync(copy.bytes);
  expect(Object.keys(parts).filter((name) => name.startsWith('customXml'))).toEqual([]);
  expect(
    Object.values(parts)
      .map((bytes) => strFromU8(bytes))
      .join(''),
  ).not.toMatch(/4817|Söhne|spawnbook\.pane/);
  expect(copy.report.removed.join(' ')).toContain('pane keeps in the workbook');
});

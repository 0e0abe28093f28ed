import { EMPTY_LINE } from '../../../shared/dosing/log';
import { lineOfEntry } from '../../../taskpane/screens/vat/state/notebook';

test.each([
  [{ what: 'filled', litres: 800 }, 800, 'L'],
  [{ what: 'air on' }, null, ''],
  [{ what: 'reading', ph: 6.8 }, 6.8, ''],
  [{ what: 'reading', celsius: 26 }, 26, '°C'],
  [{ what: 'dose', grams: 4 }, 4, 'g'],
  [{ what: 'died', number: 12, unit: 'larvae' }, 12, 'larvae'],
])('a line of the workbook’s log %j is shown with its figure and unit', (entry, value, unit) => {
  const line = lineOfEntry({ ...EMPTY_LINE, vat: '1', at: 46_000, ...entry, row: 7 }, 3, 46_000);
  expect([line.value, line.unit, line.row]).toEqual([value, unit, 7]);
});

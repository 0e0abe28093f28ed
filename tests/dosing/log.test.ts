import type { Cell } from '../../shared/base/values';
import { dosingOf, eventsOf, meterChecks } from '../../shared/dosing/events';
import type { LogLine } from '../../shared/dosing/log';
import { EMPTY_LINE, LOG_COLUMNS, logRow, readLog } from '../../shared/dosing/log';

const line = (more: Partial<LogLine>): LogLine => ({ ...EMPTY_LINE, ...more });
const HEAD: Cell[] = LOG_COLUMNS.map(({ heading }) => heading);
const LINES = [
  line({ at: 46_000.3, vat: '1', what: 'filled', product: 'soda ash', litres: 600, who: 'Ama' }),
  line({ at: 46_000.31, vat: '1', what: 'reading', ph: 5.1, again: 5.2, celsius: 26 }),
  line({ at: 46_000.32, vat: '2', what: 'feed given', number: 12, unit: 'g', note: '=not a formula' }),
  line({ at: 46_000.4, vat: '1', what: 'dose', product: 'soda ash', grams: 0 }),
];

test('what is written is read back, line for line', () => {
  const { lines, faults } = readLog([HEAD, ...LINES.map(logRow)]);
  expect(faults).toEqual([]);
  expect(lines.map(({ row, ...rest }) => [row, rest])).toEqual(LINES.map((one, i) => [i + 2, one]));
});

test('other columns, another order, a title above and blank rows between make no difference', () => {
  const order = [...LOG_COLUMNS.keys()].reverse();
  const shuffled = [HEAD, ...LINES.map(logRow)].map((row) => ['x', ...order.map((i) => row[i] ?? null)]);
  const { lines } = readLog([['Our log'], [], ...shuffled.slice(0, 3), [], ...shuffled.slice(3)]);
  expect(lines).toEqual(LINES.map((one, i) => ({ ...one, row: [4, 5, 7, 8][i] })));
});

test('a notebook of date, vat, pH, g is a log too: texts, commas and both written orders of a date', () => {
  const { lines, faults } = readLog([
    ['Date', 'Vat', 'pH', 'g'],
    ['2026-01-05 07:30', 1, '5,1', null],
    ['05.01.2026 08:45', 1, 6.9, ''],
    ['5/1/2026', 1, 6.9, ''],
    [46_027, 1, 'six', ''],
  ]);
  // Serials as any spreadsheet has them: 5 January 2026 is 46 027.
  expect(lines.map(({ at, vat, ph }) => [at, vat, ph])).toEqual([
    [46_027 + 7.5 / 24, '1', 5.1],
    [46_027 + 8.75 / 24, '1', 6.9],
  ]);
  expect(faults.map(({ row }) => row)).toEqual([4, 5]);
  expect(faults[1]?.sentence).toContain('expected a number, got “six”');
});

test('a sheet without the headings holds no log', () => {
  expect(
    readLog([
      ['Date', 'Fish'],
      [1, 2],
    ]),
  ).toEqual({ lines: [], faults: [] });
  expect(readLog([])).toEqual({ lines: [], faults: [] });
});

test('events stand in the order of time; other work is left out; a new filling begins anew', () => {
  const events = eventsOf([
    line({ at: 3, vat: '1', what: 'reading', ph: 6 }),
    line({ at: 1, vat: '1', what: 'filled' }),
    line({ at: 2, vat: '1', what: 'dead', number: 4 }),
    line({ at: 2, vat: '1', ph: 5.5 }),
    line({ at: 0, vat: '1', what: 'pH', ph: 4.9 }),
    line({ at: 4, vat: '2', grams: 3 }),
    line({ at: 5, what: 'meter check', number: 6.9, unit: 'buffer 6,86' }),
  ]);
  expect(dosingOf(events, '1').map(({ what, at }) => [what, at])).toEqual([
    ['filled', 1],
    ['reading', 2],
    ['reading', 3],
  ]);
  expect(dosingOf(events, '2').map(({ what }) => what)).toEqual(['dose']);
  expect(meterChecks(events)).toEqual([{ at: 5, shown: 6.9, buffer: 6.86 }]);
});

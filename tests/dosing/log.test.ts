import type { Cell } from '../../shared/base/values';
import { dosingOf, eventsOf, meterChecks } from '../../shared/dosing/events';
import type { LogLine } from '../../shared/dosing/log';
import { EMPTY_LINE, LOG_COLUMNS, LOG_SHEET, logRow, readLog } from '../../shared/dosing/log';
import { LOG_LANGUAGES } from '../../shared/dosing/logWords';
import { VAT_WHATS } from '../../shared/dosing/events';
import { WHAT } from '../../taskpane/screens/vat/state/notebook';
import { fr } from '../../shared/books/words/fr';

const line = (more: Partial<LogLine>): LogLine => ({ ...EMPTY_LINE, ...more });
const HEAD: Cell[] = LOG_COLUMNS.map(({ heading }) => heading);
const LINES = [
  line({ at: 46_000.3, vat: '1', what: 'filled', product: 'soda ash', litres: 600, who: 'Ama' }),
  line({ at: 46_000.31, vat: '1', what: 'reading', ph: 5.1, again: 5.2, celsius: 26 }),
  line({ at: 46_000.32, vat: '2', what: 'feed given', number: 12, unit: 'g', note: '=not a formula' }),
  line({ at: 46_000.4, vat: '1', what: 'dose', product: 'soda ash', grams: 0 }),
];

test('what is written is read back, line for line', () => {
  const { lines, faults } = readLog([HEAD, ...LINES.map((one) => logRow(one))]);
  expect(faults).toEqual([]);
  expect(lines.map(({ row, ...rest }) => [row, rest])).toEqual(LINES.map((one, i) => [i + 2, one]));
});

test('other columns, another order, a title above and blank rows between make no difference', () => {
  const order = [...LOG_COLUMNS.keys()].reverse();
  const shuffled = [HEAD, ...LINES.map((one) => logRow(one))].map((row) => [
    'x',
    ...order.map((i) => row[i] ?? null),
  ]);
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

describe.each(Object.entries(LOG_LANGUAGES))('the log in %s', (_, words) => {
  const whats = [...new Set([...VAT_WHATS, ...Object.values(WHAT)])].filter((what) => what !== 'pH');
  const head = LOG_COLUMNS.map(({ key }) => words.headings[key]);

  test('is read back as the same lines, also where a word was typed in small or large letters', () => {
    const lines = [
      ...LINES,
      ...whats.map((what) => line({ at: 46_000.5, vat: '3', what, unit: 'buffer 6.86', number: 1 })),
    ];
    const rows = lines.map((one) => logRow(one, words));
    const loud = rows.map((row) => row.map((cell) => (typeof cell === 'string' ? cell.toUpperCase() : cell)));
    const plain = readLog([head, ...rows]);
    expect(plain.faults).toEqual([]);
    expect(plain.lines.map(({ row, ...rest }) => [row, rest])).toEqual(lines.map((one, i) => [i + 2, one]));
    expect(readLog([head, ...loud]).lines.map(({ what, product }) => [what, product])).toEqual(
      lines.map(({ what, product }) => [what, product]),
    );
  });

  test('has a word of its own for each thing noted, and two mean two things', () => {
    expect(whats.filter((what) => words.words[what] === undefined)).toEqual([]);
    const own = Object.values(words.words);
    expect(new Set(own).size).toBe(own.length);
    expect(new Set(head).size).toBe(head.length);
  });
});

test('the French log is called as the books call it', () => {
  expect(LOG_LANGUAGES.fr?.sheet).toBe(fr.sheets[LOG_SHEET]);
  expect(LOG_COLUMNS.map(({ heading, key }) => [fr.phrases[heading] ?? heading, key])).toEqual(
    LOG_COLUMNS.map(({ key }) => [LOG_LANGUAGES.fr?.headings[key], key]),
  );
});

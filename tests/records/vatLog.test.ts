import type { Cell } from '../../shared/base/values';
import type { LogLine } from '../../shared/dosing/log';
import { EMPTY_LINE, LOG_COLUMNS, logRow } from '../../shared/dosing/log';
import type { LogWords } from '../../shared/dosing/logWords';
import { LOG_LANGUAGES } from '../../shared/dosing/logWords';
import { auditGrid } from './support/grid';

/** The log of everything noted at the vat, as the pane writes it, read by the check. */

const DAY = 46_000;
const line = (hour: number, vat: string, what: string, more: Partial<LogLine>): LogLine => ({
  ...EMPTY_LINE,
  at: DAY + hour / 24,
  vat,
  what,
  who: 'Ama',
  ...more,
});
const soda = { product: 'soda ash' };
/** Three vats of one water, dosed after an hour of air; feed and deaths between. */
const LINES: readonly LogLine[] = ['1', '2', '3'].flatMap((vat, i) => [
  line(7 + i / 4, vat, 'filled', { ...soda, litres: 600 }),
  line(7.1 + i / 4, vat, 'reading', { ...soda, ph: 5.1 + i / 20, again: 5.15 + i / 20, celsius: 26 + i / 5 }),
  line(8.2 + i / 4, vat, 'aired', { ...soda, ph: 5.45 + i / 50, again: 5.5, celsius: 26.2 + i / 7 }),
  line(8.3 + i / 4, vat, 'dose', { ...soda, grams: 1.25 + i / 4, note: '1¼ level spoons of 1 g' }),
  line(8.6 + i / 4, vat, 'reading', { ...soda, ph: 6.15 + i / 30, celsius: 26.3 }),
  line(9.1 + i / 4, vat, 'feed given', { number: 12 + i, unit: 'g' }),
  line(9.2 + i / 4, vat, 'dead', { number: i }),
  line(10 + i / 4, vat, 'reading', { ...soda, ph: 6.85 + i / 25, again: 6.9, celsius: 26.8 - i / 9 }),
]);
const rowsOf = (lines: readonly LogLine[], words?: LogWords): Cell[][] => [
  LOG_COLUMNS.map(({ heading, key }) => words?.headings[key] ?? heading),
  ...lines.map((one) => logRow(one, words)),
];
const EACH: readonly (readonly [string, LogWords | undefined])[] = [
  ['en', undefined],
  ...Object.entries(LOG_LANGUAGES),
];
const findings = (rows: readonly (readonly Cell[])[]) =>
  auditGrid(rows as never)
    .groups.flatMap(({ findings: all }) => all)
    .map(({ rule, place, sentence }) => `${rule} ${place.cell} ${sentence}`);

describe.each(EACH)('in %s', (_, words) => {
  const rows = rowsOf(LINES, words);
  const heading = (key: keyof LogLine): string =>
    words?.headings[key] ?? LOG_COLUMNS.find((one) => one.key === key)?.heading ?? '';

  test('its columns are read for what they are', () => {
    const [table] = auditGrid(rows as never).tables;
    const fields = Object.fromEntries((table?.mapping ?? []).map(({ header, field }) => [header, field]));
    expect(fields[heading('ph')]).toMatch(/^ph/);
    expect(
      (['product', 'note', 'celsius', 'grams', 'who'] as const).map((key) => fields[heading(key)]),
    ).toEqual(['material', 'note', 'temperature', 'materialDose', 'operator']);
  });

  test('a clean log has no finding', () => {
    expect(findings(rows)).toEqual([]);
  });
});

describe.each(EACH)('in %s', (_, words) => {
  test.each([
    ['pH 61 for 6.1', 5, 'ph', 61],
    ['262 °C for 26.2', 3, 'celsius', 262],
    ['a pH as a word', 2, 'ph', 'sour'],
  ])('%s is found', (_name, row, key, value) => {
    const rows = rowsOf(LINES, words);
    const at = LOG_COLUMNS.findIndex((column) => column.key === key);
    const target = rows[row];
    if (!target) throw new Error('no row');
    target[at] = value as Cell;
    const cell = `${String.fromCharCode(65 + at)}${row + 1}`;
    expect(findings(rows).some((one) => one.includes(` ${cell} `))).toBe(true);
  });
});

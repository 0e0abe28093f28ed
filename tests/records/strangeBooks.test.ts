/**
 * Sheets nobody should hand over, and do: each gives a sentence or a quiet report, and no cell is changed. The books
 * are of our own invention.
 */
import { auditGrid } from './support/grid';
import { checkFile, notReadSentence, readingShare } from '../../shared/records';
import type { AuditReport } from '../../shared/records';
import type { Made } from './support/file';
import { madeXlsx } from './support/file';

type Cells = readonly (readonly Made[])[];
const checked = (...sheets: readonly Cells[]) =>
  checkFile(madeXlsx(sheets.map((cells, i) => ({ name: `S${i + 1}`, cells }))), 'book.xlsx');
function report(...sheets: readonly Cells[]): AuditReport {
  const done = checked(...sheets);
  if (!('report' in done)) throw new Error(JSON.stringify(done));
  return done.report;
}
const accusing = ({ groups }: AuditReport): string[] =>
  groups
    .flatMap(({ findings }) => findings)
    .filter(({ severity }) => severity !== 'look')
    .map(({ place, sentence }) => `${place.cell} ${sentence}`);
const saidOf = (...sheets: readonly Cells[]): string => {
  const done = checked(...sheets);
  return 'fault' in done
    ? done.fault
    : 'report' in done
      ? notReadSentence(readingShare(done.report.tables))
      : '';
};
const SENTENCE = /^[A-Z0-9].*\.$/s;

const run = (i: number): readonly Made[] => [i + 1, `${3 + i}/04/2025`, 84_000 + 137 * i, 43_000 + 71 * i];
const HEAD: readonly Made[] = ['Run', 'Date', 'Eggs', 'Larvae'];

test('sheets with nothing in them: a sentence; beside a sheet of records they are passed over', () => {
  expect(saidOf([])).toMatch(SENTENCE);
  expect(saidOf([[null, null]], [['']])).toMatch(SENTENCE);
  const one = report([HEAD, ...Array.from({ length: 8 }, (_, i) => run(i))], [], [[null]]);
  expect(one.records).toBe(8);
  expect(accusing(one)).toEqual([]);
});

test("a photograph's worth of text in one cell, and a page of prose", () => {
  const prose = 'Le bac était plein et personne ne savait pourquoi. '.repeat(600);
  expect(saidOf([[prose]])).toMatch(SENTENCE);
  expect(saidOf(Array.from({ length: 60 }, (_, i) => [`${i}. ${prose.slice(0, 400)}`]))).toMatch(SENTENCE);
  const one = report([[prose.slice(0, 30_000)], [], HEAD, ...Array.from({ length: 8 }, (_, i) => run(i))]);
  expect([one.records, accusing(one)]).toEqual([8, []]);
});

test('a pivot: labels on two levels, gaps, subtotals, a grand total', () => {
  const months = ['Jan', 'Feb', 'Mar', 'Apr'];
  const line = (name: string, of: readonly number[]): readonly Made[] => [
    name,
    ...of,
    of.reduce((sum, x) => sum + x, 0),
  ];
  const one = [12, 15, 9, 22];
  const two = [31, 28, 30, 41];
  const cells: Cells = [
    ['Sum of Dead', 'Column Labels', null, null, null, null],
    ['Row Labels', ...months, 'Grand Total'],
    line('Vat 1', one),
    line('Vat 2', two),
    line(
      'Grand Total',
      one.map((x, i) => x + (two[i] ?? 0)),
    ),
  ];
  const done = checked(cells);
  if ('report' in done) expect(accusing(done.report)).toEqual([]);
  else expect(saidOf(cells)).toMatch(SENTENCE);
});

test('a thousand columns: those that are known are read, the others are said', () => {
  const names = Array.from({ length: 1000 }, (_, c) => (c < 4 ? (HEAD[c] ?? null) : `Zq${c}`));
  const rows = Array.from({ length: 12 }, (_, i) => [
    ...run(i),
    ...Array.from({ length: 996 }, (_c, c) => ((i * 7919 + c * 104_729) % 9973) + 1),
  ]);
  const done = checked([names, ...rows]);
  if (!('report' in done)) throw new Error(JSON.stringify(done));
  const { report: one, notes } = done;
  const share = readingShare(one.tables);
  expect([one.records, share.columns]).toEqual([12, 400]);
  // OJ is the 400th column.
  expect(notes).toEqual(['S1: Cells to the right of column OJ were not read.']);
  expect(one.tables[0]?.mapping.slice(0, 4).map(({ field }) => field)).toEqual([
    'run',
    'date',
    'eggs',
    'hatched',
  ]);
  expect(notReadSentence(share)).toMatch(/^3\d\d of 400 columns were not read\.$/);
  expect(share.isEnough).toBe(false);
});

test.each([
  ['day first', ['13/04/2025', '14/04/2025', '05/05/2025', '23/05/2025']],
  ['month first', ['04/13/2025', '04/14/2025', '05/05/2025', '05/23/2025']],
  ['year first', ['2025/04/13', '2025-04-14', '2025/05/05', '2025-05-23']],
])('dates as text, %s: the same days', (_order, dates) => {
  const one = report([HEAD, ...dates.map((date, i) => [i + 1, date, 84_000 + 137 * i, 43_000 + 71 * i])]);
  // 13 April 2025 is day 45,760 of the spreadsheet's calendar.
  expect([...(one.tables[0]?.numbers.date ?? [])]).toEqual([45_760, 45_761, 45_782, 45_800]);
  expect(accusing(one)).toEqual([]);
});

test('all three orders in one column: each date is read or asked, none is silently another day', () => {
  const dates = ['13/04/2025', '2025-04-15', '04/17/2025', '19/04/2025', '21/04/2025', '23/04/2025'];
  const one = report([HEAD, ...dates.map((date, i) => [i + 1, date, 84_000 + 137 * i, 43_000 + 71 * i])]);
  const read = [...(one.tables[0]?.numbers.date ?? [])];
  const right = [45_760, 45_762, 45_764, 45_766, 45_768, 45_770];
  read.forEach((day, i) => expect([day, NaN]).toContainEqual(Number.isNaN(day) ? NaN : (right[i] ?? NaN)));
  expect(read.filter((day) => !Number.isNaN(day)).length).toBeGreaterThanOrEqual(5);
});

test('headings in Arabic, Latin and Thai letters, digits of two scripts', () => {
  const one = report([
    ['رقم الدفعة', 'Date', 'Œufs', 'จำนวนลูกปลา'],
    ...Array.from({ length: 8 }, (_, i): readonly Made[] => [
      i + 1,
      `${13 + i}/04/2025`,
      i % 2 ? '٨٤٠٠٠' : 84_000 + 137 * i,
      43_000 + 71 * i,
    ]),
  ]);
  const [table] = one.tables;
  expect(table?.numbers.eggs?.[1]).toBe(84_000);
  expect(accusing(one)).toEqual([]);
});

test('checking changes no byte of the file', () => {
  const bytes = madeXlsx([{ name: 'A', cells: [HEAD, ...Array.from({ length: 8 }, (_, i) => run(i))] }]);
  const before = bytes.slice();
  checkFile(bytes, 'book.xlsx');
  expect(bytes).toEqual(before);
});

test('a day without its hour among moments is no midnight: only the strip ten hours late is named', () => {
  const stamp = (day: number, clock: string): string => `2025-04-${String(day).padStart(2, '0')}${clock}`;
  const report = auditGrid([
    ['Run', 'Injected', 'Stripped'],
    ...Array.from({ length: 20 }, (_, i): readonly string[] =>
      i < 3
        ? [`R${i}`, stamp(i + 1, ''), stamp(i + 2, '')]
        : [`R${i}`, stamp(i + 1, ' 20:15'), stamp(i + 2, ` ${i === 18 ? '17' : '07'}:${10 + 2 * i}`)],
    ),
  ]);
  const late = report.groups.flatMap(({ findings }) => findings).filter(({ rule }) => rule === 'WHOLE.SPAN');
  expect(late.map(({ place }) => place.cell)).toEqual(['C20']);
});

test('a line of a form whose figures count on is no heading of a table', () => {
  const report = auditGrid([
    ['Female weight (kg)', 1.2, 1.5],
    ['Egg weight (g)', 140, 171],
    ['Eggs per gram', 655, 690],
    ['Males', 3, 4],
    ['Temperature (°C)', 26, 27],
  ]);
  expect(report.tables.map(({ layout, length, mapping }) => [layout, length, mapping.length])).toEqual([
    ['forms', 2, 5],
  ]);
});

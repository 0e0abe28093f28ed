import { readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { checkFile, readingShare } from '../../shared/records';
import type { AuditReport } from '../../shared/records';
import type { ExampleCell } from '../../shared/records/rules/rule';
import { foreignBooks } from './support/foreign';
import type { MadeBook } from './support/foreign';
import { audit, sheetOf } from './support/grid';

/**
 * Books in French, Portuguese, Spanish, Indonesian and Swahili with English: tables, forms and matrices with
 * headings chosen from memory. What they mean is known because they were made; the check is not told.
 */
const BOOKS = foreignBooks(101).map((book) => ({
  book,
  report: audit([sheetOf('Sheet1', book.cells, book.formats)]),
}));
const accusing = (report: AuditReport): string[] =>
  report.groups
    .flatMap(({ findings }) => findings)
    .filter(({ severity }) => severity !== 'look')
    .map(({ rule, place, sentence }) => `${rule} ${place.cell} ${sentence}`);

function readings({
  book,
  report,
}: {
  readonly book: MadeBook;
  readonly report: AuditReport;
}): [number, number] {
  let [right, all] = [0, 0];
  for (const { field, column, top } of book.columns) {
    if (!field) continue;
    all++;
    const isRight = report.tables.some((table) =>
      table.mapping.some(
        ({ field: read }, i) =>
          read === field &&
          Array.from({ length: table.length }, (_, record) => table.columns[i]?.spot(record)).some(
            (spot) => spot?.column === column && spot.sheet.rows[spot.position] === top,
          ),
      ),
    );
    if (isRight) right++;
  }
  return [right, all];
}

test('at least nineteen columns in twenty are read as what they are', () => {
  const counts = BOOKS.map(readings);
  const [right, all] = [0, 1].map((i) => counts.reduce((sum, one) => sum + (one[i] ?? 0), 0));
  expect((right ?? 0) / (all ?? 1)).toBeGreaterThanOrEqual(0.95);
});

test('clean books: at most two false alarms in a thousand cells', () => {
  const cells = BOOKS.reduce(
    (sum, { book }) => sum + book.cells.flat().filter((cell) => cell !== null).length,
    0,
  );
  const alarms = BOOKS.flatMap(({ report }) => accusing(report));
  expect(alarms.slice(0, 5)).toEqual(alarms.length > (2 * cells) / 1000 ? [] : alarms.slice(0, 5));
  expect(alarms.length / cells).toBeLessThanOrEqual(0.002);
});

test.each(BOOKS.map((one) => [one.book.name, one] as const))('%s: enough was read', (_name, { report }) => {
  const share = readingShare(report.tables);
  expect(share.isEnough).toBe(true);
});

/** One fault in one book: ten times too much in a numeric column, in a line in the middle. */
const slips: readonly { readonly kind: string; readonly make: (value: number) => ExampleCell }[] = [
  { kind: 'a nought too many', make: (value) => 10 * value },
  { kind: 'a minus sign', make: (value) => -value },
  { kind: 'a word', make: () => 'abc' },
];
test.each(slips)('$kind in a column of numbers is found in four books of five', ({ make }) => {
  let [found, all] = [0, 0];
  for (const { book } of BOOKS.filter((_, i) => i % 2 === 0)) {
    const target = book.columns.find(
      ({ field, rows }) =>
        rows > 8 &&
        field !== undefined &&
        ['eggs', 'amount', 'closing', 'biomass', 'oxygen', 'balance'].includes(field),
    );
    if (!target) continue;
    const row = target.top + Math.floor(target.rows / 2);
    const value = book.cells[row]?.[target.column];
    if (typeof value !== 'number' || value === 0) continue;
    all++;
    const cells = book.cells.map((line, r) =>
      r === row ? line.map((cell, c) => (c === target.column ? make(value) : cell)) : line,
    );
    const report = audit([sheetOf('Sheet1', cells, book.formats)]);
    const hits = report.groups
      .flatMap(({ findings }) => findings)
      .filter(({ severity }) => severity !== 'look');
    const letter = String.fromCharCode(65 + target.column);
    if (
      hits.some(({ place, or }) => [place, ...(or ?? [])].some(({ cell }) => cell === `${letter}${row + 1}`))
    )
      found++;
  }
  expect(all).toBeGreaterThan(8);
  expect(found / all).toBeGreaterThanOrEqual(0.8);
});

const templates = join(__dirname, '..', '..', 'templates');
test.each(readdirSync(templates).filter((name) => name.endsWith('.xlsx') && !name.includes('commercial')))(
  'what Spawnbook writes itself passes its own check: %s',
  (name) => {
    const checked = checkFile(new Uint8Array(readFileSync(join(templates, name))), name);
    if (!('report' in checked)) throw new Error(JSON.stringify(checked));
    expect(accusing(checked.report)).toEqual([]);
  },
);

test('headings and tags that are names of the language harm nothing', () => {
  const report = audit([
    sheetOf('S', [
      ['Constructor', '__proto__', 'toString', 'Eggs'],
      ['__defineGetter__', 1, 2, 30_000],
      ['hasOwnProperty', 2, 3, 32_000],
      ['valueOf', 3, 4, 31_000],
    ]),
  ]);
  expect(report.tables.length).toBeGreaterThan(0);
});

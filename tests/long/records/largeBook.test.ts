import type { ExampleCell } from '../../../shared/records/rules/rule';
import { checkFile } from '../../../shared/records';
import { largeBook } from '../../bench/audit';
import { auditGrid } from '../../records/support/grid';

test('50,000 clean rows × 20 columns: every row read, progress reported, few false alarms', () => {
  let reports = 0;
  const checked = checkFile(largeBook(), 'book.xlsx', {}, () => {
    reports++;
    return true;
  });
  if (!('report' in checked)) throw new Error(JSON.stringify(checked));
  const { report } = checked;
  expect(report.records).toBe(50_000);
  expect(report.tables[0]?.mapping.filter(({ field }) => field !== undefined)).toHaveLength(20);
  expect(reports).toBeGreaterThan(20);
  expect(report.found / report.records).toBeLessThanOrEqual(1 / 200);
});

/**
 * Books made to hang a reader: formulas full of links, one word a thousand times, cells of thirty thousand letters,
 * labels that never start over, three hundred columns that are multiples of each other. Measured: 5 s of processor
 * time together; once one took 26 s.
 */
test('hostile books: each is done in seconds of processor time', () => {
  const links = `=${'aaaaaaaaa.xx!SPAWN.'.repeat(430)}`;
  const books: readonly (readonly (readonly ExampleCell[])[])[] = [
    [
      ['Run', 'Eggs', 'x'],
      ...Array.from({ length: 300 }, (_, i): ExampleCell[] => [i + 1, 5000 + i, [1, links]]),
    ],
    Array.from({ length: 3000 }, (_, i): ExampleCell[] => ['Eggs', 'Eggs', i % 2 ? 'Eggs' : null]),
    [
      ['Run', 'Eggs'],
      ...Array.from({ length: 200 }, (): ExampleCell[] => ['1,'.repeat(15_000), '(('.repeat(15_000)]),
    ],
    Array.from({ length: 3000 }, (_, i): ExampleCell[] => [`Label ${i % 2999}`, i]),
    [
      Array.from({ length: 300 }, (_, c): ExampleCell => `Eggs ${c}`),
      ...Array.from({ length: 60 }, (_, r) =>
        Array.from({ length: 300 }, (_c, c): ExampleCell => (r * c) % 97),
      ),
    ],
  ];
  for (const cells of books) {
    const from = process.cpuUsage();
    auditGrid(cells);
    const { user, system } = process.cpuUsage(from);
    console.log(`${((user + system) / 1e6).toFixed(2)} s of processor time`);
    expect((user + system) / 1e6).toBeLessThan(15);
  }
});

import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { writeXlsx } from '../../../shared/files';
import { livingBook } from '../../../shared/books/living';
import { planBatches } from '../../../shared/season/batches';
import { planSchema } from '../../../shared/season/batches/answer/schema';
import { breachesOf } from '../../season/support/batchRules';
import { BOOK, bookOf } from '../../season/support/support';

/** The terminal command, as a user types it. */
const root = join(__dirname, '../../..');
const folder = mkdtempSync(join(tmpdir(), 'spawnbook-season-'));
const season = (...args: readonly string[]): { code: number | null; out: string; err: string } => {
  const run = spawnSync(process.execPath, ['src/build/run.mjs', 'src/cli/season.ts', ...args], {
    cwd: root,
    encoding: 'utf8',
    maxBuffer: 64e6,
  });
  return { code: run.status, out: run.stdout, err: run.stderr };
};
const file = (name: string, content: string | Uint8Array): string => {
  const path = join(folder, name);
  writeFileSync(path, content);
  return path;
};
afterAll(() => {
  rmSync(folder, { recursive: true, force: true });
});

test('the plan in words and as JSON, which has the form that is printed', () => {
  const path = file('book.json', JSON.stringify(BOOK));
  const words = season(path);
  expect(words).toMatchObject({ code: 0, err: '' });
  expect(words.out).toMatch(
    /^Heron Reach Hatchery, planned on 2027-01-10, to be 80 % sure\.\nPromise [\d,]+ fish, hope for [\d,]+\./,
  );
  const json = season(path, '--json', '--certainty', '60 %');
  const plan: unknown = JSON.parse(json.out);
  const read = planSchema.safeParse(plan);
  expect(read.success ? [] : read.error.issues).toEqual([]);
  expect(breachesOf(bookOf({ certainty: 0.6 }), plan as never)).toEqual([]);
  const out = join(folder, 'plan.json');
  expect(season(path, '--json', '--certainty', '0.6', '--out', out).code).toBe(0);
  expect(readFileSync(out, 'utf8')).toBe(json.out);
}, 60_000);

test('the forms of both', () => {
  const { code, out } = season('--schema');
  const { book, plan } = JSON.parse(out) as { book: { required: string[] }; plan: { required: string[] } };
  expect(code).toBe(0);
  expect(book.required.sort()).toEqual(['females', 'males', 'orders', 'plannedOn', 'temperatures', 'vats']);
  expect(plan.required).toContain('allocations');
}, 60_000);

test('a season’s workbook is planned again', () => {
  const bytes = writeXlsx(livingBook(bookOf(), planBatches(bookOf(), { draws: 200 })));
  const { code, out, err } = season(file('season.xlsx', bytes), '--today', '12 Jan 2027');
  expect({ code, err }).toEqual({ code: 0, err: '' });
  expect(out).toContain('planned on 2027-01-12');
}, 60_000);

test.each([
  ['nothing.json', undefined, /nothing\.json: the file cannot be read/],
  ['half.json', '{"orders":', /half\.json: is no JSON/],
  ['list.json', '[1]', /expected an order book/],
  ['empty.json', '{}', /orders: Orders: expected a list\./],
  ['two.json', JSON.stringify({ ...BOOK, vats: [] }), /vats: Vats: the list is empty/],
  [
    'open.json',
    JSON.stringify({ ...BOOK, orders: [{ ...BOOK.orders[0], price: '1,250' }] }),
    /can be 1\u202f250 or 1\.25/,
  ],
  ['no.xlsx', 'PK', /no\.xlsx: /],
])(
  '%s: sentences and exit code 2',
  (name, content, sentence) => {
    const { code, out, err } = season(content === undefined ? join(folder, name) : file(name, content));
    expect({ code, out }).toEqual({ code: 2, out: '' });
    expect(err).toMatch(sentence);
  },
  60_000,
);

test('a buyer with two orders is planned; the same line twice is said', () => {
  const [order] = BOOK.orders;
  const orders = [order, { ...order, due: '2027-05-20' }, order].map((one) => ({ ...one, number: 900 }));
  const path = file('twice.json', JSON.stringify({ ...BOOK, orders }));
  const { code, out, err } = season(path);
  expect({ code, err }).toEqual({ code: 0, err: '' });
  expect(out).toMatch(
    / {2}O1 Lake farms, 2027-03-31: [^]* {2}O2 Lake farms, 2027-05-20: [^]* {2}O3 Lake farms, 2027-03-31: /,
  );
  expect(out).toContain(
    'O3 Lake farms: says the same as O1, 900 fingerlings for 2027-03-31. If it was typed twice, cancel one.',
  );
}, 60_000);

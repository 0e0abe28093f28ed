import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { z } from 'zod';

/** The terminal command, as a user types it. */
const root = join(__dirname, '../../..');
const folder = mkdtempSync(join(tmpdir(), 'spawnbook-records-'));
const records = (...args: readonly string[]): { code: number | null; out: string } => {
  const run = spawnSync(process.execPath, ['src/build/run.mjs', 'src/cli/records.ts', ...args], {
    cwd: root,
    encoding: 'utf8',
    maxBuffer: 64e6,
  });
  return { code: run.status, out: run.stdout };
};
const file = (name: string, content: string | Uint8Array): string => {
  const path = join(folder, name);
  writeFileSync(path, content);
  return path;
};
afterAll(() => {
  rmSync(folder, { recursive: true, force: true });
});

const GRAMS = [120, 135, 98, 142, 110, 126, 131, 104];
const book = (eggs: (grams: number, line: number) => number): string =>
  [
    'Run,Date,Female weight (kg),Egg weight (g),Eggs per gram,Eggs,Eggs checked,Good eggs',
    ...GRAMS.map((g, i) =>
      [
        `R${i + 1}`,
        `2026-03-${String(3 + 3 * i).padStart(2, '0')}`,
        (g / 110).toFixed(2),
        g,
        640 + i,
        eggs(g, i),
        100,
        78 + i,
      ].join(','),
    ),
  ].join('\n');
const right = (g: number, i: number): number => g * (640 + i);

/** The neutral form of a checked book, as an independent scorer of record books asked for it. */
const Neutral = z.strictObject({
  books: z.array(
    z.strictObject({
      file: z.string(),
      refused: z.union([z.literal(false), z.string().min(1)]),
      notRead: z.string().optional(),
      tables: z.array(
        z.strictObject({
          sheet: z.string(),
          row: z.int().positive().optional(),
          columns: z.array(
            z
              .strictObject({
                col: z
                  .string()
                  .regex(/^[A-Z]{1,3}$/)
                  .optional(),
                cell: z
                  .string()
                  .regex(/^[A-Z]{1,3}\d+$/)
                  .optional(),
                is: z.union([z.string(), z.array(z.string()).max(3)]),
                unit: z.string().optional(),
                sureness: z.number().min(0).max(1),
              })
              .refine((one) => (one.col === undefined) !== (one.cell === undefined)),
          ),
        }),
      ),
      findings: z.array(
        z.strictObject({
          sheet: z.string(),
          cell: z.string().regex(/^[A-Z]{1,3}\d+$/),
          cells: z.array(z.string()).optional(),
          level: z.enum(['info', 'warning', 'error']),
          kind: z.string(),
          text: z.string().regex(/[.?!]$/),
        }),
      ),
      rates: z.array(
        z.strictObject({
          rate: z.string(),
          unit: z.string(),
          value: z.number(),
          low: z.number(),
          high: z.number(),
          runs: z.int().positive(),
        }),
      ),
    }),
  ),
});

test('nothing found: exit 0, tables and rates in words', () => {
  const { code, out } = records(file('clean.csv', book(right)));
  expect([code, out]).toEqual([0, expect.stringMatching(/egg_weight/)]);
  expect(out).toMatch(/Own rate: .*\(8 runs/);
});

test('something found: exit 1, cell and reason; as JSON in the neutral form', () => {
  const path = file(
    'faulty.csv',
    book((g, i) => (i === 4 ? 10 : 1) * right(g, i)),
  );
  const words = records(path);
  expect(words.code).toBe(1);
  expect(words.out).toMatch(/!F6 \[(?:warning|error)\]/);
  const json = records(path, '--json');
  expect(json.code).toBe(1);
  const { books } = Neutral.parse(JSON.parse(json.out));
  expect(books[0]?.findings.some(({ cell, level }) => cell === 'F6' && level !== 'info')).toBe(true);
  expect(books[0]?.rates.length).toBeGreaterThan(0);
});

test('a file that cannot be read: exit 2 and a sentence; the others are still checked', () => {
  const { code, out } = records(
    file('clean.csv', book(right)),
    file('bad.xlsx', new Uint8Array([80, 75, 3, 4, 1, 2, 3])),
    join(folder, 'missing.csv'),
    '--json',
  );
  expect(code).toBe(2);
  const { books } = Neutral.parse(JSON.parse(out));
  expect(books.map(({ refused }) => refused === false)).toEqual([true, false, false]);
  for (const { refused } of books.slice(1)) expect(refused).toMatch(/\.\)?$|\.$/);
});

test('no file: the usage and exit 2', () => {
  expect(records()).toEqual({ code: 2, out: expect.stringMatching(/Exit code: 0 nothing found/) });
});

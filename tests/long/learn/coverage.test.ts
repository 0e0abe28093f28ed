import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { RATE_KEYS } from '../../../shared/families/learning/rates';

/**
 * Intervals of nominal 95 % over thousands of simulated farms. The table was written by
 * tests/learn/support/coverageRun.ts (about half an hour); here its first farms are simulated again, so that a table
 * of another estimator is found out.
 */
interface Hits {
  readonly mean: number;
  readonly next: number;
  readonly kindMean: number;
  readonly kindNext: number;
  readonly width: number;
}
interface Cell extends Hits {
  readonly rate: string;
  readonly world: 'assumed' | 'other' | 'far';
  readonly runs: number;
  readonly farms: number;
  readonly seed: number;
  readonly first: Hits;
}

const root = join(__dirname, '..', '..', '..');
const cells = (text: string): Cell[] =>
  text
    .trim()
    .split('\n')
    .map((line) => JSON.parse(line) as Cell);
const table = cells(readFileSync(join(root, 'tests/data/learn_coverage.jsonl'), 'utf8'));
const again = cells(
  execFileSync(
    process.execPath,
    [join(root, 'src/build/run.mjs'), join(root, 'tests/learn/support/coverageRun.ts')],
    { cwd: root, encoding: 'utf8' },
  ),
);

const hasKinds = (cell: Cell): boolean => cell.rate === 'latencyOffset' || cell.rate === 'eggShare';
const sharesOf = (cell: Cell): number[] =>
  (hasKinds(cell) ? [cell.mean, cell.next, cell.kindMean, cell.kindNext] : [cell.mean, cell.next]).map(
    (hits) => hits / cell.farms,
  );
const named = (list: readonly Cell[]): (readonly [string, Cell])[] =>
  list.map((cell) => [`${cell.rate}, ${cell.world} farms, ${cell.runs} runs`, cell]);
const percent = (x: number): string => (100 * x).toFixed(1).padStart(6);

beforeAll(() => {
  const lines = table.map(
    (cell) =>
      `${cell.rate.padEnd(18)}${cell.world.padEnd(9)}${String(cell.runs).padStart(4)}${sharesOf(cell).map(percent).join('')}`,
  );
  process.stdout.write(
    `Coverage in % of intervals of 95 %: mean, next run, and for one kind of run mean, next run (${table[0]?.farms ?? 0} farms each)\n${lines.join('\n')}\n`,
  );
});

test('every rate, few and many runs, in three worlds, thousands of farms', () => {
  expect(table.length).toBe(RATE_KEYS.length * 3 * 5);
  expect(Math.min(...table.map(({ farms }) => farms))).toBeGreaterThanOrEqual(2000);
});

test('the table is that of this estimator: its first farms come out again', () => {
  expect(again.map(({ rate, world, runs, seed, first }) => ({ rate, world, runs, seed, first }))).toEqual(
    order(table).map(({ rate, world, runs, seed, first }) => ({ rate, world, runs, seed, first })),
  );
});

function order(list: readonly Cell[]): Cell[] {
  return [...list].sort((a, b) => a.seed - b.seed);
}

describe('farms as believed, and farms of another law', () => {
  test.each(named(table.filter(({ world }) => world !== 'far')))('%s: 93 to 97 %%', (_name, cell) => {
    for (const covered of sharesOf(cell)) {
      expect(covered).toBeGreaterThanOrEqual(0.93);
      expect(covered).toBeLessThanOrEqual(0.97);
    }
  });
});

/** A farm two spreads away from every published one: one run cannot tell it apart, ten can. */
const LEAST_FAR: Readonly<Record<number, number>> = { 1: 0.82, 2: 0.87, 4: 0.88, 10: 0.91, 30: 0.91 };
describe('farms far from the literature: fewer, and said so', () => {
  test.each(named(table.filter(({ world }) => world === 'far')))('%s', (_name, cell) => {
    for (const covered of sharesOf(cell)) expect(covered).toBeGreaterThanOrEqual(LEAST_FAR[cell.runs] ?? 1);
  });
});

test('many runs give narrower intervals than one, for every rate', () => {
  for (const rate of RATE_KEYS) {
    // The world without farms of boundless spread, where a mean width means something.
    const width = (runs: number): number =>
      table.find((c) => c.rate === rate && c.world === 'far' && c.runs === runs)?.width ?? NaN;
    expect(width(30)).toBeLessThan(width(1));
  }
});

import { execFileSync } from 'node:child_process';
import { join } from 'node:path';
import type { Strangers } from './strangersRun';
import { percent, quote } from '../../support/figures';

const root = join(__dirname, '..', '..', '..');
const measured = (...args: readonly string[]): Strangers =>
  JSON.parse(
    execFileSync(
      process.execPath,
      [join(root, 'src/build/run.mjs'), join(root, 'tests/long/records/strangersRun.ts'), ...args],
      { cwd: root, encoding: 'utf8', maxBuffer: 1e8 },
    ),
  ) as Strangers;
const got = measured();

/** First measured before any rule had seen these books: 94.3 %, 0.60 a thousand cells, 97.0 % of columns. */
test("strangers' books: faults found, false alarms, columns read", () => {
  const { faults, found, missed, cells, alarms, columns, right, wrong } = got;
  console.log(
    `found ${found} of ${faults}; ${alarms.length} false alarms in ${cells} cells; ${right} of ${columns} columns right\n${[...missed, ...alarms, ...new Set(wrong)].slice(0, 30).join('\n')}`,
  );
  quote(
    'records.found',
    percent(found / faults),
    'Faults found in invented books of layouts and languages no rule had seen',
  );
  quote(
    'records.alarms',
    ((1000 * alarms.length) / cells).toFixed(1),
    'False alarms there in a thousand clean cells',
  );
  quote('records.columns', percent(right / columns), 'Columns there whose meaning was read right');
  expect(faults).toBeGreaterThan(100);
  expect(found / faults).toBeGreaterThanOrEqual(0.9);
  expect(alarms.length / cells).toBeLessThanOrEqual(0.002);
  expect(right / columns).toBeGreaterThanOrEqual(0.95);
});

test('sureness means what it says: in every tenth at least that share of readings is right', () => {
  console.log(
    got.deciles
      .map(([read, right], i) => `sure ${i / 10} to ${(i + 1) / 10}: ${right} of ${read} right`)
      .join('\n'),
  );
  for (const [i, [read, right]] of got.deciles.entries()) {
    // A guess below one half is asked, not used.
    if (read >= 20 && i >= 5) expect(right / read).toBeGreaterThanOrEqual(i / 10);
  }
});

/**
 * First measured before any rule had seen these books: 95.5 % found, 0.88 a thousand cells, 83.7 % of columns;
 * then 99.4 %, 0.13 and 99.1 %.
 */
test('books of other hands: faults found, false alarms, columns read', () => {
  const { faults, found, missed, cells, alarms, columns, right, wrong } = measured('7', 'others');
  console.log(
    `found ${found} of ${faults}; ${alarms.length} false alarms in ${cells} cells; ${right} of ${columns} columns right\n${[...missed, ...alarms, ...new Set(wrong)].slice(0, 30).join('\n')}`,
  );
  expect(faults).toBeGreaterThan(300);
  expect(found / faults).toBeGreaterThanOrEqual(0.95);
  expect(alarms.length / cells).toBeLessThanOrEqual(0.002);
  expect(right / columns).toBeGreaterThanOrEqual(0.95);
});

/**
 * Books of a third hand whose headings no list holds, in layouts drawn by seed. First measured before any rule had
 * seen them: seed 7 found 87.4 %, 2.77 a thousand cells, 61.6 % of columns; seed 19 87.3 %, 3.64, 52.7 %. Then by
 * order of columns, chains of relations and the shape of forms and feet 94.6 %, 0.25, 88.3 % and 93.2 %, 0.73, 85.6 %.
 * Seeds 101, 202 and 303 were first measured then: 90.4, 84.9 and 92.9 % of columns. With readings taken back that the
 * numbers refute, larvae and fry by how many are left, and the order of the work: 97.7 and 97.1 %, and 97.2, 90.0 and
 * 97.9 % on the three nobody looked at. The target for columns is 90 %.
 */
test.each(['7', '19', '202'])(
  'books of a third hand, seed %s: faults found, false alarms, columns read, and sureness that holds',
  (seed) => {
    const { faults, found, missed, cells, alarms, columns, right, wrong, deciles } = measured(seed, 'wider');
    console.log(
      `found ${found} of ${faults}; ${alarms.length} false alarms in ${cells} cells; ${right} of ${columns} columns right (target 90 %)\n${[...missed, ...alarms, ...new Set(wrong)].slice(0, 30).join('\n')}`,
    );
    expect(faults).toBeGreaterThan(200);
    expect(found / faults).toBeGreaterThanOrEqual(0.9);
    expect(alarms.length / cells).toBeLessThanOrEqual(0.002);
    expect(right / columns).toBeGreaterThanOrEqual(0.9);
    for (const [i, [read, isRight]] of deciles.entries())
      if (read >= 20 && i >= 5) expect(isRight / read).toBeGreaterThanOrEqual(i / 10);
  },
);

/**
 * Registers of a fourth hand: units in a line of their own, numbered columns, headings merged over two lines, one run a
 * column, a block a month. First measured before any rule had seen them, seed 4127: 89.1 % of 248 faults, 4.06 a thousand
 * cells, 86.7 % of columns, no book refused. Lines of numbers under the headings, second lines under groups only, columns
 * of sums beside runs, units beside labels, meals that a column adds up: seed 4127 then 96.0 %, 0.45, 99.1 %, and seed
 * 9033, first measured after most of that, 94.5 %, 1.22, 97.0 %, two books refused; none since. Seeds 7712 and 5566, first
 * measured at the end: 92.0 %, 0.34, 98.3 % and 93.9 %, 0.00, 98.0 %, none refused.
 */
test.each(['4127', '9033'])(
  'registers of a fourth hand, seed %s: faults found, false alarms, columns read, none refused or green half read',
  (seed) => {
    const { faults, found, missed, cells, alarms, columns, right, wrong, refused, halfRead } = measured(
      seed,
      'registers',
    );
    console.log(
      `found ${found} of ${faults}; ${alarms.length} false alarms in ${cells} cells; ${right} of ${columns} columns right\n${[...missed, ...alarms, ...new Set(wrong)].slice(0, 30).join('\n')}`,
    );
    expect(faults).toBeGreaterThan(200);
    expect(found / faults).toBeGreaterThanOrEqual(0.9);
    expect(alarms.length / cells).toBeLessThanOrEqual(0.002);
    expect(right / columns).toBeGreaterThanOrEqual(0.95);
    expect(refused).toEqual([]);
    expect(halfRead).toEqual([]);
  },
);

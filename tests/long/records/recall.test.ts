import { execFileSync } from 'node:child_process';
import { join } from 'node:path';
import { RULES } from '../../../shared/records/rules';
import { FAULTS } from '../../records/support/faults';
import type { Recall } from './recall';
import { percent, quote } from '../../support/figures';

const root = join(__dirname, '..', '..', '..');
const { tallies, cleanRows, cleanRecords, alarms } = JSON.parse(
  execFileSync(
    process.execPath,
    [join(root, 'src/build/run.mjs'), join(root, 'tests/long/records/recall.ts')],
    {
      cwd: root,
      encoding: 'utf8',
      maxBuffer: 1e8,
    },
  ),
) as Recall;
const sum = (pick: (one: Recall['tallies'][number]) => number): number =>
  tallies.reduce((total, one) => total + pick(one), 0);

test('every rule has a fault made for it', () => {
  // Rules that need no meaning are measured on layouts in other languages: tests/records/foreign.
  const known = RULES.map(({ id }) => id).filter((id) => !id.startsWith('WHOLE.'));
  expect(known.filter((id) => !FAULTS.some(({ rule }) => rule === id))).toEqual([]);
});

test('recall: at least 98 % of injected faults are reported at their cell, over seven layouts', () => {
  const [injected, found, named] = [
    sum((one) => one.injected),
    sum((one) => one.found),
    sum((one) => one.named),
  ];
  console.log(
    `recall ${((100 * found) / injected).toFixed(2)} % of ${injected} faults of ${tallies.length} rules; ${((100 * named) / injected).toFixed(1)} % named by the rule made for them\n${tallies
      .filter(({ missed }) => missed.length > 0)
      .map(({ rule, missed }) => `missed by ${rule}: ${missed.join('; ')}`)
      .join('\n')}`,
  );
  quote('records.own', percent(found / injected), 'Faults found in books of our own seven layouts');
  expect(injected).toBeGreaterThan(700);
  expect(found / injected).toBeGreaterThanOrEqual(0.98);
});

test.each(tallies.map((one) => [one.rule, one] as const))(
  '%s finds its own faults',
  (_rule, { injected, found, named }) => {
    expect(found / injected).toBeGreaterThanOrEqual(0.9);
    // No rule may hide behind the others.
    expect(named / injected).toBeGreaterThanOrEqual(0.4);
  },
);

test('false alarms: at most one in 200 clean rows, and every clean row is read', () => {
  console.log(
    `${alarms.length} false alarms in ${cleanRows} clean rows (one in ${Math.round(cleanRows / Math.max(1, alarms.length))})\n${alarms.slice(0, 40).join('\n')}`,
  );
  expect(cleanRecords).toBe(cleanRows);
  expect(cleanRows).toBeGreaterThan(5000);
  expect(alarms.length / cleanRows).toBeLessThanOrEqual(1 / 200);
});

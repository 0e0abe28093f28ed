import { execFileSync, spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { valuesOf } from '../files/share/support/read';
import { hasSoffice, startJudge } from '../files/share/support/soffice';

/**
 * A live season where nobody knows Spawnbook, everything calculated anew: the first page says what to do, the
 * light says that nothing was calculated, and no verdict is made up from an error.
 */
const file = new Uint8Array(readFileSync(join(__dirname, '../../templates/season-backyard.xlsx')));
const hasGnumeric = spawnSync('ssconvert', ['--version']).status === 0;
const gnumeric = (): Uint8Array => {
  const place = mkdtempSync(join(tmpdir(), 'spawnbook-gnumeric-'));
  try {
    writeFileSync(join(place, 'in.xlsx'), file);
    execFileSync('ssconvert', ['--recalc', join(place, 'in.xlsx'), join(place, 'out.xlsx')], {
      stdio: 'pipe',
      timeout: 120_000,
    });
    return new Uint8Array(readFileSync(join(place, 'out.xlsx')));
  } finally {
    rmSync(place, { recursive: true, force: true });
  }
};

async function judged(saved: Uint8Array): Promise<void> {
  const values = await valuesOf(saved);
  const on = (sheet: string): unknown[] =>
    [...values].flatMap(([place, value]) => (place.startsWith(`${sheet}!`) ? [value] : []));
  // It was calculated anew: calls of ours are unknown there.
  expect([...values.values()].filter((value) => value === '#NAME?').length).toBeGreaterThan(10);
  expect(on('Today')).toContainEqual(
    expect.stringMatching(/^Live formulas need the Spawnbook add-in.*A shared copy .* opens anywhere/),
  );
  expect(on('Today')).toContain('? not calculated here');
  const verdicts = on('Orders').filter((value) =>
    /safe|likely|toss|cannot|not calculated/.test(String(value)),
  );
  expect(verdicts.filter((value) => !String(value).startsWith('Odds and verdicts'))).toEqual([
    'not calculated here',
    'not calculated here',
    'not calculated here',
  ]);
  const checks = on('Checks').filter((value) => /^[●×?] /.test(String(value)));
  expect(checks).toContain('? not calculated here');
  expect(checks.filter((value) => value === '× does not hold')).toEqual([]);
}

(hasSoffice ? test : test.skip)(
  'LibreOffice',
  async () => {
    const judge = startJudge(true);
    try {
      await judged(judge.save(file));
    } finally {
      judge.close();
    }
  },
  240_000,
);
(hasGnumeric ? test : test.skip)('Gnumeric', async () => judged(gnumeric()), 240_000);

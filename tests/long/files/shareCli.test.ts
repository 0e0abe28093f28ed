import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { season } from '../../files/share/support/season';
import { unzip } from '../../files/share/support/parts';

/** The terminal command, as a user types it. */
const root = join(__dirname, '../../..');
const folder = mkdtempSync(join(tmpdir(), 'spawnbook-share-'));
const [from, to] = [join(folder, 'in.xlsx'), join(folder, 'out.xlsx')];
const share = (...args: readonly string[]): { code: number | null; out: string; err: string } => {
  const run = spawnSync(process.execPath, ['src/build/run.mjs', 'src/cli/share.ts', ...args], {
    cwd: root,
    encoding: 'utf8',
  });
  return { code: run.status, out: run.stdout, err: run.stderr };
};

beforeAll(() => {
  writeFileSync(from, season());
});
afterAll(() => {
  rmSync(folder, { recursive: true, force: true });
});

test('inspect, copy, refuse to overwrite, verify, notice a change', () => {
  expect(share(from, '--inspect')).toMatchObject({
    code: 0,
    out: expect.stringContaining('27 formulas of Spawnbook.'),
  });
  const made = share(
    from,
    to,
    '--personal',
    '--sheets',
    'Season',
    '--blank',
    'Season!A1:A1',
    '--date',
    '14 March 2026',
  );
  expect(made.err).toBe('');
  expect(made).toMatchObject({
    code: 0,
    out: expect.stringMatching(
      /27 formulas became values[^]*Still there: 1 picture[^]*Digest of everything: [0-9a-f]{64}/,
    ),
  });
  expect(new Uint8Array(readFileSync(from))).toEqual(season());
  const first = readFileSync(to);
  expect(unzip(new Uint8Array(first))['xl/worksheets/sheet1.xml']).toContain('<c r="A1"/>');
  expect(share(from, to)).toMatchObject({ code: 1, err: expect.stringContaining('is there already') });
  expect(readFileSync(to)).toEqual(first);
  expect(share(from, from, '--force')).toMatchObject({
    code: 1,
    err: expect.stringContaining('overwrite the original'),
  });
  expect(share('--verify', to)).toMatchObject({
    code: 0,
    out: expect.stringContaining('The copy matches its page (in.xlsx, made on 14 March 2026)'),
  });
  expect(share('--verify', to, '--digest', 'abc')).toMatchObject({
    code: 1,
    out: expect.stringContaining('does not match'),
  });
  expect(share(from, to, '--repair', '--force')).toMatchObject({
    code: 0,
    out: expect.stringContaining('got their spelling back'),
  });
}, 60_000);

test('wrong use and bad files get a sentence', () => {
  writeFileSync(join(folder, 'bad.xlsx'), 'pH;share');
  expect(share(join(folder, 'bad.xlsx'), join(folder, 'x.xlsx'))).toMatchObject({
    code: 1,
    err: expect.stringContaining('not an Excel workbook'),
  });
  expect(share(join(folder, 'none.xlsx'), to)).toMatchObject({
    code: 2,
    err: expect.stringContaining('cannot be read'),
  });
  expect(share()).toMatchObject({ code: 2, err: expect.stringContaining('npm run share') });
  expect(share('--wrong')).toMatchObject({ code: 2 });
}, 60_000);

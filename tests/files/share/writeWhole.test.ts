import { spawn, spawnSync } from 'node:child_process';
import {
  linkSync,
  mkdtempSync,
  readFileSync,
  readdirSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { isSameFile, writeWhole } from '../../../src/cli/writeWhole';
import { season } from './support/season';

/** The original stays as it is, and a file is there whole or not at all. */

const root = join(__dirname, '../../..');
const folder = mkdtempSync(join(tmpdir(), 'spawnbook-whole-'));
const path = (name: string): string => join(folder, name);
const original = season();

beforeEach(() => {
  rmSync(folder, { recursive: true, force: true });
  spawnSync('mkdir', ['-p', folder]);
  writeFileSync(path('in.xlsx'), original);
});
afterAll(() => {
  rmSync(folder, { recursive: true, force: true });
});

const COMMAND = ['src/build/run.mjs', 'src/cli/share.ts', path('in.xlsx')];

test.each([
  ['hard', () => linkSync(path('in.xlsx'), path('other.xlsx'))],
  ['symbolic', () => symlinkSync(path('in.xlsx'), path('other.xlsx'))],
])(
  'a %s link to the original is the original',
  (_, link) => {
    link();
    expect(isSameFile(path('in.xlsx'), path('other.xlsx'))).toBe(true);
    const run = spawnSync(process.execPath, [...COMMAND, path('other.xlsx'), '--force'], {
      cwd: root,
      encoding: 'utf8',
    });
    expect([run.status, run.stderr]).toEqual([1, expect.stringContaining('overwrite the original')]);
    expect(new Uint8Array(readFileSync(path('in.xlsx')))).toEqual(original);
  },
  60_000,
);

test.each(['ignored', 'fatal'])(
  'no room left on the disk, the signal %s: the good old copy stays',
  (how) => {
    writeFileSync(path('out.xlsx'), 'the good old copy');
    // The system lets no file grow beyond 4 blocks of 512 or 1,024 bytes, as a full disk would.
    const trap = how === 'ignored' ? "trap '' XFSZ; " : '';
    const run = spawnSync(
      'bash',
      [
        '-c',
        `${trap}ulimit -f 4; exec "${process.execPath}" ${COMMAND.join(' ')} "${path('out.xlsx')}" --force`,
      ],
      { cwd: root, encoding: 'utf8' },
    );
    expect(run.status).not.toBe(0);
    expect(readFileSync(path('out.xlsx'), 'utf8')).toBe('the good old copy');
    expect(new Uint8Array(readFileSync(path('in.xlsx')))).toEqual(original);
    // What a killed run left is taken away by the next.
    writeWhole(path('out.xlsx'), new Uint8Array([1, 2, 3]), true);
    expect(readdirSync(folder).sort()).toEqual(['in.xlsx', 'out.xlsx']);
  },
  60_000,
);

test('a file that came there meanwhile is not replaced unasked', () => {
  writeFileSync(path('out.xlsx'), 'somebody else');
  expect(() => writeWhole(path('out.xlsx'), new Uint8Array([1]), false)).toThrow();
  expect(readFileSync(path('out.xlsx'), 'utf8')).toBe('somebody else');
  writeWhole(path('new.xlsx'), new Uint8Array([1]), false);
  expect(readdirSync(folder).sort()).toEqual(['in.xlsx', 'new.xlsx', 'out.xlsx']);
});

test('killed at any moment, there is the old file or the new one', async () => {
  writeFileSync(path('out.xlsx'), 'the good old copy');
  for (const wait of [20, 200, 400]) {
    const run = spawn(process.execPath, [...COMMAND, path('out.xlsx'), '--force'], { cwd: root });
    // Asked for before the wait: a run that ends by itself has said so already.
    const ended = new Promise((go) => run.once('exit', go));
    await new Promise((go) => setTimeout(go, wait));
    run.kill('SIGKILL');
    await ended;
    const now = readFileSync(path('out.xlsx'));
    expect(now.toString() === 'the good old copy' || now.subarray(0, 2).toString() === 'PK').toBe(true);
  }
}, 60_000);

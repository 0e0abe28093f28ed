import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { targetFault } from '../../../src/localsheet/server/siteTarget';

const folder = mkdtempSync(join(tmpdir(), 'spawnbook-target-'));
afterAll(() => {
  rmSync(folder, { recursive: true, force: true });
});
const fault = (name: string): string | undefined => targetFault(name, join(folder, name));

test('a site goes into a new or empty folder, or over a site of ours', () => {
  mkdirSync(join(folder, 'empty'));
  mkdirSync(join(folder, 'site', 'localsheet'), { recursive: true });
  writeFileSync(join(folder, 'site', 'localsheet', 'main.js'), '');
  expect(['new', 'empty', 'site'].map(fault)).toEqual([undefined, undefined, undefined]);
});

test('a folder with other files is left as it is, and an option is no folder', () => {
  mkdirSync(join(folder, 'papers'));
  writeFileSync(join(folder, 'papers', 'orders.xlsx'), 'mine');
  expect(fault('papers')).toContain('holds other files');
  expect(fault('--help')).toContain('is no folder');
});

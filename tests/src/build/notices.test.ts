import { existsSync, readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { noticeFaults, noticesText, packageFolder, packagesOf } from '../../../src/build/bundle/notices.mjs';

const root = resolve(__dirname, '../../..');
const policy = /http-equiv="Content-Security-Policy"\s+content="([^"]+)"/;

test('the package of a file, scoped or not, nested or not; ours has none', () => {
  expect(packageFolder('node_modules/preact/dist/preact.mjs')).toBe('node_modules/preact');
  expect(packageFolder('a/node_modules/b/node_modules/@c/d/e.js?x')).toBe(
    'a/node_modules/b/node_modules/@c/d',
  );
  expect(packageFolder('shared/base/values.ts')).toBeUndefined();
});

test('what ships is named with version, licence and text, each text once', () => {
  const files = ['preact/dist/a.js', 'fflate/b.js', 'zod/c.js', '@noble/hashes/d.js'].map(
    (f) => `node_modules/${f}`,
  );
  const text = noticesText([...files, ...files, 'src/own.ts'], root);
  for (const { name, version, text: own } of packagesOf(files, root)) {
    expect(text).toContain(`${name} ${version} (MIT)`);
    expect(own).toMatch(/permission is hereby granted/i);
    expect(text.split(own)).toHaveLength(2);
  }
});

test.each([
  ['GPL-3.0-only', 1],
  ['AGPL-3.0', 1],
  ['LGPL-2.1', 1],
  ['(MIT OR GPL-2.0)', 0],
  ['Apache-2.0', 0],
  [undefined, 1],
])('a package under %s', (licence, faults) => {
  expect(noticeFaults([{ name: 'one', licence }])).toHaveLength(faults);
});

test('the build carries its notices, and its page frames nothing from elsewhere', () => {
  const page = readFileSync(resolve(root, 'taskpane/taskpane.html'), 'utf8');
  expect(policy.exec(page)?.[1]).toMatch(/frame-src 'self';/);
  const built = resolve(root, 'dist/NOTICES.txt');
  if (existsSync(built)) expect(readFileSync(built, 'utf8')).toMatch(/^preact \d/m);
});

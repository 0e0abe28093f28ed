import { randomBytes } from 'node:crypto';
import { bundleFaults, FUNCTIONS_LIMIT } from '../../../src/build/checks/bundle';
import { layoutFaults } from '../../../src/build/checks/layout';
import { licenceFaults } from '../../../src/build/checks/licences';
import { releasedFaults } from '../../../src/build/checks/released';
import { CATALOGUE } from '../../../shared/catalogue';
import { iconFile, ICON_SIZES } from '../../../src/build/icons/iconDrawing';
import { pngSize } from '../../../src/build/icons/pngSize';
import { slimRecords } from '../../../src/build/bundle/slimRecords.mjs';

const lock = (packages: Record<string, { license?: string; link?: boolean }>) => ({ packages });
const none = (): boolean => false;

test.each([
  [
    'a commercial part of the spreadsheet',
    { 'node_modules/@univerjs-pro/sheets': { license: 'MIT' } },
    'commercial',
  ],
  ['a package without a licence', { 'node_modules/a/node_modules/mystery': {} }, 'mystery names no licence'],
  ['a copyleft package', { 'node_modules/engine': { license: 'GPL-3.0-only' } }, 'GPL-3.0-only'],
  [
    'a listed package whose licence file is gone',
    { 'node_modules/@univerjs/telemetry': {} },
    'names no licence',
  ],
])('%s is refused', (_what, packages, sentence) => {
  expect(licenceFaults(lock(packages), none).join()).toContain(sentence);
});

test('free choices, linked stubs and the project itself pass', () => {
  expect(
    licenceFaults(
      lock({
        '': {},
        'node_modules/forge': { license: '(BSD-3-Clause OR GPL-2.0)' },
        'node_modules/stub': { link: true },
        'node_modules/x': { license: 'MIT' },
      }),
      none,
    ),
  ).toEqual([]);
  expect(licenceFaults(lock({ 'node_modules/@univerjs/telemetry': {} }), () => true)).toEqual([]);
});

test('a stray file at the top level is named', () => {
  expect(layoutFaults(['README.md', 'shared', '.git', 'node_modules', 'notes.txt'])).toEqual([
    'notes.txt does not belong at the top level',
  ]);
});

test('a bundle over its limit is named with its size', () => {
  expect(bundleFaults(new Uint8Array(10_000_000))).toEqual([]);
  expect(bundleFaults(randomBytes(FUNCTIONS_LIMIT + 10)).join()).toContain('80 KB at most');
});

describe('what workbooks depend on', () => {
  const manifest = '<Id>one</Id>';
  const released = (functions: Record<string, string[]>) => ({ manifestId: 'one', functions });

  test.each([
    ['a function that is gone', { 'GONE.AWAY': ['x'] }, 'GONE.AWAY was released and is gone'],
    [
      'an argument that moved',
      { 'AMMONIA.SHARE': ['temperature', 'ph'] },
      'argument 1 was temperature when released, is ph',
    ],
    [
      'an argument that is gone',
      { 'AMMONIA.SHARE': ['ph', 'temperature', 'depth'] },
      'argument 3 was depth when released, is gone',
    ],
  ])('%s is named', (_what, functions, sentence) => {
    expect(releasedFaults(released(functions), CATALOGUE, manifest).join()).toContain(sentence);
  });

  test('new arguments at the end are free, another manifest id is not', () => {
    expect(releasedFaults(released({ 'AMMONIA.SHARE': ['ph'] }), CATALOGUE, manifest)).toEqual([]);
    expect(releasedFaults(released({}), CATALOGUE, '<Id>two</Id>').join()).toContain('workbooks know one');
  });
});

test('every icon is a square picture of its size', () => {
  expect(ICON_SIZES.map((size) => pngSize(iconFile(size)))).toEqual(ICON_SIZES.map((size) => [size, size]));
  expect(pngSize('package.json')).toBeUndefined();
  expect(pngSize('nowhere.png')).toBeUndefined();
});

test('slim records keep arithmetic and lose what only people read', () => {
  const text =
    "export const f = defineFunction({ id: 'A.B', summary: `S {`, help: 'x' + \"y\", " +
    "examples: [{ args: [1], gives: '2', because: 'so }' }], sources: ['K'], compute: ({ " +
    'a }) => ({ examples: a }) });';
  expect(slimRecords(text)).toBe(
    "export const f = defineFunction({ id: 'A.B',    sources: [], compute: ({ a }) => ({ examples: a }) });",
  );
  expect(slimRecords('const examples = 1;')).toBe('const examples = 1;');
});

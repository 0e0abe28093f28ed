import { readFileSync } from 'node:fs';
import { transformSync } from 'esbuild';
import { newFunction } from '../../../src/build/newFunction';

const index = readFileSync('shared/families/water/index.ts', 'utf8');

test('kernel, record, reference test, and the family that names it', () => {
  const made = newFunction('GAS.PRESSURE', 'water', index);
  if (typeof made === 'string') throw new Error(made);
  expect(Object.keys(made.files)).toEqual([
    'shared/families/water/kernels/gasPressure.ts',
    'shared/families/water/records/gasPressure.ts',
    'tests/reference/gasPressure.test.ts',
  ]);
  for (const text of [...Object.values(made.files), made.index.text])
    expect(() => transformSync(text, { loader: 'ts' })).not.toThrow();
  expect(made.index.text).toMatch(/ {2}gasPressure,\n\];/);
});

test.each([
  ['gas.pressure', 'water', /is no id/],
  ['GAS', 'water', /is no id/],
  ['GAS.PRESSURE', 'air', /is no family. One of: water/],
  ['BUFFER.DOSE', 'water', /is there already/],
  ['', '', /Nothing is no id/],
])('%s %s: a sentence', (id, family, sentence) => {
  expect(newFunction(id, family, index)).toMatch(sentence);
});

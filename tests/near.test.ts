import { readdirSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import type { Near } from '../shared/base/near';

const shared = resolve(__dirname, '../shared');
const files = readdirSync(shared, { recursive: true, encoding: 'utf8' }).filter(
  (file) => file.endsWith('.ts') && /export const NEAR\b/.test(readFileSync(join(shared, file), 'utf8')),
);
const cases = files.flatMap((file) => {
  // eslint-disable-next-line @typescript-eslint/no-require-imports -- the list of modules is found, not written
  const { NEAR } = require(join(shared, file)) as { NEAR: readonly Near[] };
  return NEAR.map((near) => [`${file}: ${near.number} (${near.value})`, near] as const);
});

test('the two sides of a number come out differently', () => {
  for (const [name, { answers }] of cases)
    expect([name, JSON.stringify(answers[0]) === JSON.stringify(answers[1])]).toEqual([name, false]);
});

/** A case that is written with the number moves when the number does, and then holds nothing. */
test('the cases of a number are written out', () => {
  const written = files.flatMap((file) => {
    const [, list = ''] = readFileSync(join(shared, file), 'utf8').split(/export const NEAR\b/);
    return [...list.matchAll(/value: ([A-Za-z_.]+)\b.*?,(.*?)answers:/gs)]
      .filter(([, name = '', pair = '']) => pair.split(/[^\w.]/).includes(name))
      .map(([, name]) => `${file}: ${name ?? ''}`);
  });
  expect(written).toEqual([]);
});

if (cases.length > 0)
  test.each(cases)('%s', (_name, { below, above, answers }) => {
    expect([below(), above()]).toEqual(answers);
  });

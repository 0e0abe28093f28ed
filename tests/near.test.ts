import { existsSync } from 'node:fs';
import { resolve } from 'node:path';
import { filesWithPairs, textOf } from './near/pairs';

const files = filesWithPairs();

/** A case that is written with the number moves when the number does, and then holds nothing. */
test('the cases of a number are written out', () => {
  const written = files.flatMap((file) => {
    const [, list = ''] = textOf(file).split(/export const NEAR\b/);
    return [...list.matchAll(/value: ([A-Za-z_.]+)\b.*?,(.*?)answers:/gs)]
      .filter(([, name = '', pair = '']) => pair.split(/[^\w.]/).includes(name))
      .map(([, name]) => `${file}: ${name ?? ''}`);
  });
  expect(written).toEqual([]);
});

test('every room that has pairs has its test', () => {
  const rooms = [...new Set(files.map((file) => file.split('/')[0] ?? ''))];
  expect(rooms.filter((room) => !existsSync(resolve(__dirname, `near/${room}.test.ts`)))).toEqual([]);
  expect(rooms.length).toBeGreaterThan(5);
});

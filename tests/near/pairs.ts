import { readdirSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import type { Near } from '../../shared/base/near';

const shared = resolve(__dirname, '../../shared');

/** Files of the engine that hold pairs, by their path below it. */
export const filesWithPairs = (): string[] =>
  readdirSync(shared, { recursive: true, encoding: 'utf8' }).filter(
    (file) => file.endsWith('.ts') && /export const NEAR\b/.test(readFileSync(join(shared, file), 'utf8')),
  );
export const textOf = (file: string): string => readFileSync(join(shared, file), 'utf8');

/** Both sides of every number of a room. */
export function holdPairs(room: string): void {
  const cases = filesWithPairs()
    .filter((file) => file.startsWith(`${room}/`))
    .flatMap((file) => {
      // eslint-disable-next-line @typescript-eslint/no-require-imports -- the list of modules is found, not written
      const { NEAR } = require(join(shared, file)) as { NEAR: readonly Near[] };
      return NEAR.map((near) => [`${file}: ${near.number} (${near.value})`, near] as const);
    });
  test('the two sides of a number come out differently', () => {
    for (const [name, { answers }] of cases)
      expect([name, JSON.stringify(answers[0]) === JSON.stringify(answers[1])]).toEqual([name, false]);
  });
  test.each(cases)('%s', (_name, { below, above, answers }) => {
    expect([below(), above()]).toEqual(answers);
  });
}

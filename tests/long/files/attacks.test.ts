import { spawnSync } from 'node:child_process';
import { join } from 'node:path';

/** Small files made to crash, hang or fill the memory: through Open, Check and Share, in a process of their own. */

const root = join(__dirname, '../../..');
/** Processor seconds and memory; generous, so that only a hang or a flood goes over. */
const MOST_SECONDS = 20;
const MOST_MEGABYTES = 700;

const run = spawnSync(process.execPath, ['src/build/run.mjs', 'tests/files/support/attackOnce.ts'], {
  cwd: root,
  encoding: 'utf8',
  timeout: 900_000,
});
interface Outcome {
  readonly name: string;
  readonly seconds: number;
  readonly megabytes: number;
  readonly said: readonly string[];
}
const outcomes = run.stdout
  .split('\n')
  .filter(Boolean)
  .map((line) => JSON.parse(line) as Outcome);

test('every attack was outlived', () => {
  expect(run.stderr).toBe('');
  expect(outcomes.length).toBe(20);
});

test.each(outcomes)('$name', ({ seconds, megabytes, said }) => {
  for (const sentence of said) expect(sentence).toMatch(/^read$|^[A-Z][^]*[.)]$/);
  expect(seconds).toBeLessThan(MOST_SECONDS);
  expect(megabytes).toBeLessThan(MOST_MEGABYTES);
});

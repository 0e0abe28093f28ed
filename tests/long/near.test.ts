import { spawnSync } from 'node:child_process';

/** Every pair that is listed as holding its number is tried again: the number moved up and down turns it red. */
test('pairs that held their numbers hold them', () => {
  const { status, stdout } = spawnSync(
    process.execPath,
    ['src/build/run.mjs', 'tests/near/prove.ts', '--dry'],
    { encoding: 'utf8' },
  );
  expect(stdout).toMatch(/\d+ numbers moved both ways/);
  expect(stdout).not.toMatch(/held before and not now|RED/);
  expect(status).toBe(0);
});

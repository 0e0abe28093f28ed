import { readFileSync } from 'node:fs';
import { createContext, runInContext } from 'node:vm';
import { build } from 'esbuild';
import { CATALOGUE } from '../../shared/catalogue';
import { RECORD_FILES, slimRecords } from '../../src/build/slimRecords.mjs';
import { createLastErrors } from '../../src/shell/lastErrors';
import { hostBody } from '../../src/shell/register';
import { FakeError, fakeHost } from '../support/customFunctions';

/**
 * The calculation bundle made the way the build makes it, run in an empty world with nothing but the
 * registry.
 */
async function bundled() {
  const { outputFiles } = await build({
    entryPoints: ['src/shell/functions.ts'],
    bundle: true,
    minify: true,
    format: 'iife',
    target: 'es2020',
    write: false,
    plugins: [
      {
        name: 'slim',
        setup: ({ onLoad }) => {
          onLoad({ filter: RECORD_FILES }, ({ path }) => ({
            contents: slimRecords(readFileSync(path, 'utf8'), path),
            loader: 'ts',
          }));
        },
      },
    ],
  });
  const host = fakeHost();
  runInContext(outputFiles[0]?.text ?? '', createContext({ CustomFunctions: host }));
  return host;
}

const outcome = (body: ((...args: unknown[]) => unknown) | undefined, args: readonly unknown[]): unknown => {
  try {
    return body?.(...args);
  } catch (error) {
    return { thrown: (error as FakeError).code, message: (error as FakeError).message };
  }
};

test('the slimmed bundle answers every example as the catalogue does', async () => {
  const host = await bundled();
  expect(host.bodies.size).toBe(CATALOGUE.length);
  const plain = (value: unknown): unknown => JSON.parse(JSON.stringify(value));
  for (const fn of CATALOGUE) {
    const direct = hostBody(fn, FakeError, createLastErrors());
    for (const { args } of fn.examples) {
      const given = [...fn.params.map((_, i) => args[i] ?? null), { address: 'S!A1' }];
      expect([fn.id, plain(outcome(host.bodies.get(fn.id), given))]).toEqual([
        fn.id,
        plain(outcome(direct, given)),
      ]);
    }
  }
});

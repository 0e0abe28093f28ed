import { readFileSync } from 'node:fs';
import { createContext, runInContext } from 'node:vm';
import { build } from 'esbuild';
import { CATALOGUE } from '../../../shared/catalogue';
import { RECORD_FILES, slimRecords } from '../../../src/build/bundle/slimRecords.mjs';
import { createLastErrors } from '../../../src/shell/lastErrors';
import { GUIDE_IDS } from '../../../shared/catalogue/guideIds';
import { GUIDES } from '../../../shared/catalogue/guides';
import { hostBody, registerLater } from '../../../src/shell/register';
import { FakeError, fakeHost } from '../../support/customFunctions';

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

/** Guides answer when their code has come, the others at once. */
const outcome = async (
  body: ((...args: unknown[]) => unknown) | undefined,
  args: readonly unknown[],
): Promise<unknown> => {
  try {
    return await body?.(...args);
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
      expect([fn.id, plain(await outcome(host.bodies.get(fn.id), given))]).toEqual([
        fn.id,
        plain(await outcome(direct, given)),
      ]);
    }
  }
});

const outcomeOf = async (body: ((...args: unknown[]) => unknown) | undefined): Promise<unknown> =>
  body?.(100, null, { address: 'S!A1' });

test('the ids of the guides, known before their code is there, are those of the guides', () => {
  expect([...GUIDE_IDS].sort()).toEqual(GUIDES.map(({ id }) => id).sort());
});

test('a load of the guides that fails is tried again at the next call', async () => {
  const host = fakeHost();
  let tries = 0;
  const load = async () => {
    tries += 1;
    if (tries === 1) throw new Error('no network');
    return GUIDES;
  };
  registerLater(GUIDE_IDS, load, host, createLastErrors());
  const body = host.bodies.get('LIME.MUD');
  await expect(outcomeOf(body)).rejects.toThrow('no network');
  expect(await outcomeOf(body)).toEqual([[10_000, 20_000]]);
  expect(tries).toBe(2);
});

test('once the guides are there they answer at once, and a host that cannot wait has them beforehand', async () => {
  let fetchAll: (() => Promise<void>) | undefined;
  const host = {
    ...fakeHost(),
    prepare: (given: () => Promise<void>) => {
      fetchAll = given;
    },
  };
  registerLater(GUIDE_IDS, () => Promise.resolve(GUIDES), host, createLastErrors());
  const body = host.bodies.get('LIME.MUD');
  await fetchAll?.();
  expect(body?.(100, null, { address: 'S!A1' })).toEqual([[10_000, 20_000]]);
});

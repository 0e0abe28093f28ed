import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { createRequire, isBuiltin } from 'node:module';
import { dirname, join, resolve } from 'node:path';
import { compileFunction } from 'node:vm';
import { buildSync, transformSync } from 'esbuild';

/**
 * Modules of the checkout for tests that are run hundreds of times in one process. A file is turned into a
 * function once; a test file gets its own instances of all modules by calling the functions again, so that a
 * changed file costs one translation and nothing is left over from the test before.
 */
type Wrapped = (
  exports: unknown,
  require: (id: string) => unknown,
  module: { exports: unknown },
  file: string,
  folder: string,
) => void;
const PARAMETERS = ['exports', 'require', 'module', '__filename', '__dirname'];

const compiled = new Map<string, Wrapped>();
const wrap = (code: string, file: string): Wrapped =>
  compileFunction(code, PARAMETERS, { filename: file }) as Wrapped;

/** TypeScript to a function body. Kept by content, so that the next process does not translate it again. */
function translate(text: string, file: string, cache: string): string {
  const kept = join(cache, `${createHash('sha256').update(file).update('\0').update(text).digest('hex')}.js`);
  if (existsSync(kept)) return readFileSync(kept, 'utf8');
  const { code } = transformSync(text, {
    loader: 'ts',
    format: 'cjs',
    platform: 'node',
    target: 'node20',
    supported: { 'dynamic-import': false },
    sourcefile: file,
  });
  writeFileSync(kept, code);
  return code;
}

/** Packages that start processes, or are found by their place on the disk: Node loads them itself. */
const LEFT_TO_NODE =
  /^(esbuild|typescript|jsdom|playwright-core|highs|webpack|custom-functions-metadata|@univerjs)\b/;

/** One bundle with every package the checkout names, so that those without a CommonJS build load too. */
function packagesOf(root: string, names: readonly string[], cache: string): Record<string, () => unknown> {
  const file = join(
    cache,
    `packages-${createHash('sha256').update(names.join()).digest('hex').slice(0, 12)}.cjs`,
  );
  if (!existsSync(file)) {
    const lines = names.map((name) => `${JSON.stringify(name)}: () => require(${JSON.stringify(name)}),`);
    buildSync({
      stdin: { contents: `module.exports = {${lines.join('\n')}};`, resolveDir: root },
      bundle: true,
      platform: 'node',
      format: 'cjs',
      target: 'node20',
      outfile: file,
      logLevel: 'error',
    });
  }
  return createRequire(file)(file) as Record<string, () => unknown>;
}

const isFile = (path: string): boolean => existsSync(path) && statSync(path).isFile();
const ENDINGS = ['', '.ts', '.mjs', '.js', '.json', '/index.ts'];
const places = new Map<string, string>();
function placeOf(folder: string, id: string): string {
  const path = resolve(folder, id);
  const known = places.get(path);
  if (known !== undefined) return known;
  const found = ENDINGS.map((ending) => path + ending).find(isFile);
  if (found === undefined) throw new Error(`${id} not found from ${folder}`);
  places.set(path, found);
  return found;
}

export interface Modules {
  /** Runs a file with fresh instances of everything it imports; `changed` holds other texts for some files. */
  readonly run: (file: string, changed: ReadonlyMap<string, string>) => void;
}

export function modules(root: string, cache: string, packages: readonly string[]): Modules {
  mkdirSync(cache, { recursive: true });
  const fromRoot = createRequire(join(root, 'package.json'));
  const inOne = packagesOf(
    root,
    packages.filter((name) => !LEFT_TO_NODE.test(name) && !isBuiltin(name)),
    cache,
  );
  const functionOf = (file: string, changed: ReadonlyMap<string, string>): Wrapped => {
    const text = changed.get(file);
    // Each mutant is met by one process only: its text is not worth keeping.
    if (text !== undefined) return wrap(translate(text, file, cache), file);
    const known = compiled.get(file);
    if (known) return known;
    const made = wrap(translate(readFileSync(file, 'utf8'), file, cache), file);
    compiled.set(file, made);
    return made;
  };
  const run = (entry: string, changed: ReadonlyMap<string, string>): void => {
    const instances = new Map<string, { exports: unknown }>();
    const load = (file: string): unknown => {
      const known = instances.get(file);
      if (known) return known.exports;
      const module = { exports: {} as unknown };
      instances.set(file, module);
      if (file.endsWith('.json')) {
        module.exports = JSON.parse(readFileSync(file, 'utf8')) as unknown;
        return module.exports;
      }
      const folder = dirname(file);
      const find = (id: string): unknown => {
        if (id.startsWith('.') || id.startsWith('/')) return load(placeOf(folder, id));
        return inOne[id]?.() ?? fromRoot(id);
      };
      const require = Object.assign(find, { resolve: (id: string) => fromRoot.resolve(id) });
      functionOf(file, changed)(module.exports, require, module, file, folder);
      return module.exports;
    };
    load(resolve(root, entry));
  };
  return { run };
}

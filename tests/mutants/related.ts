import { build } from 'esbuild';

/** Which test files reach a source file through imports, over every step. */
export async function testsBySource(root: string, tests: readonly string[]): Promise<Map<string, string[]>> {
  const { metafile } = await build({
    absWorkingDir: root,
    entryPoints: [...tests],
    bundle: true,
    write: false,
    metafile: true,
    outdir: '.cache/related',
    platform: 'node',
    packages: 'external',
    logLevel: 'silent',
    loader: { '.css': 'empty', '.html': 'text' },
  });
  const bySource = new Map<string, string[]>();
  for (const test of tests) {
    const seen = new Set<string>();
    const open = [test];
    for (let file = open.pop(); file !== undefined; file = open.pop()) {
      if (seen.has(file)) continue;
      seen.add(file);
      for (const { path } of metafile.inputs[file]?.imports ?? []) open.push(path);
    }
    for (const file of seen) {
      const list = bySource.get(file);
      if (list) list.push(test);
      else bySource.set(file, [test]);
    }
  }
  return bySource;
}

const stepsOf = (path: string): string[] => path.replace(/\.test\.ts$|\.ts$/, '').split('/');
/** Shared steps of the two paths: tests that mirror the file come first, reference tests next. */
const closeness = (file: string, test: string): number => {
  const mine = new Set(stepsOf(file).slice(1));
  return stepsOf(test).filter((step) => mine.has(step)).length + (test.includes('/reference/') ? 0.5 : 0);
};
export const nearestFirst = (file: string, tests: readonly string[]): string[] =>
  [...tests].sort((a, b) => closeness(file, b) - closeness(file, a));

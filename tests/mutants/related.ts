import { build } from 'esbuild';

/** A test file and over how many imports it reaches the source file. */
export interface Reach {
  readonly test: string;
  readonly steps: number;
}

/** Which test files reach a source file through imports, over every step. */
export async function testsBySource(root: string, tests: readonly string[]): Promise<Map<string, Reach[]>> {
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
  const bySource = new Map<string, Reach[]>();
  for (const test of tests) {
    const steps = new Map([[test, 0]]);
    // Breadth first: a file is met over its shortest way. The loop goes on over what it adds.
    for (const [file, step] of steps)
      for (const { path } of metafile.inputs[file]?.imports ?? [])
        if (!steps.has(path)) steps.set(path, step + 1);
    for (const [file, step] of steps) {
      const list = bySource.get(file);
      if (list) list.push({ test, steps: step });
      else bySource.set(file, [{ test, steps: step }]);
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
export const nearestFirst = (file: string, reached: readonly Reach[]): string[] =>
  [...reached]
    .sort((a, b) => closeness(file, b.test) - closeness(file, a.test) || a.steps - b.steps)
    .map(({ test }) => test);

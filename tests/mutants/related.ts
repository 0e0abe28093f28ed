import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';

/** A test file and over how many imports it reaches the source file. */
export interface Reach {
  readonly test: string;
  readonly steps: number;
}

/** A module that is loaded late may bear the name of its piece in a comment. */
const IMPORT =
  /^(?:import|export)\b(?! type\b)[^;]*?from '(\.[^']*)'|\bimport\(\s*(?:\/\*[^*]*\*\/\s*)?'(\.[^']*)'\s*\)/gm;
const ENDINGS = ['', '.ts', '/index.ts'];

/** Tests of pairs find the modules of their room by what these export. */
const PAIRS = /^tests\/near\/(\w+)\.test\.ts$/;
const pairsOf = (room: string): string[] =>
  readdirSync(join('shared', room), { recursive: true, encoding: 'utf8' })
    .map((file) => join('shared', room, file))
    .filter((file) => file.endsWith('.ts') && readFileSync(file, 'utf8').includes('export const NEAR'));

/** The files of the checkout one file imports; types alone are no way for a value. */
function importsOf(file: string): string[] {
  if (!file.endsWith('.ts')) return [];
  const [, room] = PAIRS.exec(file) ?? [];
  if (room !== undefined) return pairsOf(room);
  return [...readFileSync(file, 'utf8').matchAll(IMPORT)].flatMap(([, fixed, later]) => {
    const path = join(dirname(file), fixed ?? later ?? '');
    const found = ENDINGS.map((ending) => path + ending).find((at) => /\.\w+$/.test(at) && existsSync(at));
    return found === undefined ? [] : [found];
  });
}

/** Which test files reach a source file through imports, over every step. */
export function testsBySource(tests: readonly string[]): Map<string, Reach[]> {
  const imports = new Map<string, string[]>();
  const bySource = new Map<string, Reach[]>();
  for (const test of tests) {
    const steps = new Map([[test, 0]]);
    // Breadth first: a file is met over its shortest way. The loop goes on over what it adds.
    for (const [file, step] of steps) {
      const list = imports.get(file) ?? importsOf(file);
      imports.set(file, list);
      for (const path of list) if (!steps.has(path)) steps.set(path, step + 1);
    }
    for (const [file, step] of steps) {
      const list = bySource.get(file);
      if (list) list.push({ test, steps: step });
      else bySource.set(file, [{ test, steps: step }]);
    }
  }
  return bySource;
}

const stepsOf = (path: string): string[] => path.replace(/\.test\.ts$|\.ts$/, '').split('/');
/** Tests of every function hold its kernel, its limits and its numbers whatever they are called. */
const OF_FUNCTIONS: Readonly<Record<string, number>> = {
  'tests/functions/examples.test.ts': 9,
  'tests/golden/functionsJson.test.ts': 8,
  'tests/functions/kept/answers.test.ts': 7,
  'tests/near/families.test.ts': 1.6,
};
const isOfFunction = (file: string): boolean => /^shared\/(families|records\/functions)\//.test(file);
/** Whole answers that are kept, and the pairs of a room, notice most of what moves in it. */
export const KEPT = /\/kept|^tests\/near\//;
/** Shared steps of the two paths: tests that mirror the file come first, reference tests next. */
const closeness = (file: string, test: string): number => {
  const mine = new Set(stepsOf(file).slice(1));
  const shared =
    stepsOf(test).filter((step) => mine.has(step)).length +
    (test.includes('/reference/') ? 0.5 : 0) +
    (KEPT.test(test) ? 1 : 0) +
    // Pairs of a room reach all of it, though their names are not those of its files.
    (PAIRS.test(test) ? 1 : 0);
  return Math.max(shared, isOfFunction(file) ? (OF_FUNCTIONS[test] ?? 0) : 0);
};
export const nearestFirst = (file: string, reached: readonly Reach[]): string[] =>
  [...reached]
    .sort((a, b) => closeness(file, b.test) - closeness(file, a.test) || a.steps - b.steps)
    .map(({ test }) => test);

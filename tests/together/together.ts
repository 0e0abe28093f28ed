import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { asOpened } from '../taskpane/support/asOpened';
import { keepScreens } from '../taskpane/support/keptScreens';

/**
 * The quick test files, many in one run of the test runner: modules are loaded once a group instead of once a
 * file, which halves the time of the whole. Each file is also a test of its own: `npx jest tests/run`.
 */

/** Which files stand together, by the beginnings of their paths. What nobody names here is in `rest`. */
const GROUPS = {
  books: ['books/', 'templates/'],
  families: ['families/', 'dosing/', 'functions/'],
  files: ['files/'],
  office: ['office/'],
  panePlan: ['taskpane/plan/'],
  pane: ['taskpane/'],
  records: ['records/', 'learn/'],
  season: ['season/', 'run/'],
  shells: ['src/'],
  whole: ['whole/'],
  rest: [''],
} as const;

const tests = join(__dirname, '..');
/** Simulations and browsers have runs of their own. */
const ELSEWHERE = /^(long|browser)\//;
const groupOf = (file: string): string | undefined =>
  Object.entries(GROUPS).find(([, beginnings]) => beginnings.some((begin) => file.startsWith(begin)))?.[0];

export function together(group: keyof typeof GROUPS): void {
  const files = readdirSync(tests, { recursive: true, encoding: 'utf8' })
    .map((file) => file.replaceAll('\\', '/'))
    .filter((file) => file.endsWith('.test.ts') && !/^together\//.test(file) && !ELSEWHERE.test(file))
    .filter((file) => groupOf(file) === group)
    .sort();
  // In a group of its own, what a file does before and after its tests stays with them.
  for (const file of files)
    describe(file, () => {
      const [, inPane] = /^taskpane\/(.*)/.exec(file) ?? [];
      if (inPane !== undefined) {
        beforeAll(asOpened);
        keepScreens(inPane);
      }
      // eslint-disable-next-line @typescript-eslint/no-require-imports -- the files are found, not written
      require(join(tests, file));
    });
}

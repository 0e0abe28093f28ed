import { execFileSync } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { PrintedTest } from '../../taskpane/help/trust';

// `npm run trust`: runs the reference tests and keeps what each compared, for the page on how far to trust the
// numbers.
const OUT = 'taskpane/help/printed.json';

interface Compared {
  readonly test: string;
  readonly name: string;
  readonly printed: string;
  readonly got: unknown;
}

/** The comment of a test file that names what was read, without the marks of a comment. */
const citationOf = (path: string): string => {
  const text = readFileSync(path, 'utf8');
  const block = /\/\*\*?([\s\S]*?)\*\//.exec(text)?.[1] ?? '';
  const lines = [...text.matchAll(/^\/\/ ?(.*)$/gm)].map(([, line = '']) => line).join(' ');
  return (block.replaceAll(/\s*\n\s*\*? ?/g, ' ').trim() || lines).replace(/^Source: /, '');
};

const rounded = (value: unknown): string =>
  typeof value === 'number' ? String(Number(value.toPrecision(6))) : String(value);

const folder = mkdtempSync(join(tmpdir(), 'printed-'));
const log = join(folder, 'log.jsonl');
try {
  execFileSync(
    process.execPath,
    ['node_modules/.bin/jest', '--selectProjects', 'unit', '-i', 'tests/reference'],
    {
      stdio: 'inherit',
      env: { ...process.env, PRINTED_LOG: log },
    },
  );
  const compared = existsSync(log)
    ? readFileSync(log, 'utf8')
        .trim()
        .split('\n')
        .map((line) => JSON.parse(line) as Compared)
    : [];
  const tests = [...new Set(compared.map(({ test }) => test))].sort();
  const printed: PrintedTest[] = tests.map((test) => ({
    test,
    citation: citationOf(test),
    values: compared
      .filter((one) => one.test === test)
      .map(({ name, printed: text, got }) => ({ name, printed: text, ours: rounded(got) })),
  }));
  writeFileSync(OUT, `${JSON.stringify(printed, null, 1)}\n`);
  console.log(`${OUT}: ${compared.length} printed values of ${tests.length} sources`);
} finally {
  rmSync(folder, { recursive: true });
}

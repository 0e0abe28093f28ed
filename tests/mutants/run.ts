import { execFileSync, spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chance } from '../support/chance';
import type { Mutant } from './mutate';
import { mutantsOf, mutated } from './mutate';
import { nearestFirst, testsBySource } from './related';

/**
 * npm run mutants [-- --sample 200 --seed 1 --only shared/season --files 36 --part 1 --of 1]
 *
 * Makes a seeded sample of small changes in shared/ and taskpane/, each in a copy of the checkout, and runs
 * the tests that reach the changed file, nearest first. A change no test notices is a survivor: it must stand in
 * survivors.json with the reason why it changes no answer, or a test must be written. Only the nearest test files
 * are asked, so the share that is printed is a lower bound.
 */
const argument = (name: string, otherwise: string): string => {
  const at = process.argv.indexOf(`--${name}`);
  return at < 0 ? otherwise : (process.argv[at + 1] ?? otherwise);
};
const SAMPLE = Number(argument('sample', '200'));
const SEED = Number(argument('seed', '1'));
const ONLY = argument('only', '');
/** Of how many runs side by side this is which one, so that two cores can share a sample. */
const [PART, PARTS] = [Number(argument('part', '1')), Number(argument('of', '1'))];
/** A survivor asks this many test files and no more: hundreds reach a file at the bottom of the house. */
const FILES = Number(argument('files', '36'));
const LEAST_KILLED = 0.85;
/** Test files asked at once: few at first, because the nearest finds most. */
const BATCHES = [2, 6, 12];
const KNOWN = 'tests/mutants/survivors.json';

interface Known {
  readonly file: string;
  readonly change: string;
  readonly reason: string;
}

const root = process.cwd();
const listed = (pattern: string): string[] =>
  execFileSync('git', ['ls-files', pattern], { encoding: 'utf8' }).trim().split('\n').filter(Boolean);
const isCode = (file: string): boolean =>
  /^(shared|taskpane)\/.*\.ts$/.test(file) &&
  !/(\.d|sources|cautions)\.ts$/.test(file) &&
  file.startsWith(ONLY);

function sample(): Mutant[] {
  const all = [...listed('shared/*.ts'), ...listed('taskpane/*.ts')]
    .filter(isCode)
    .flatMap((file) => mutantsOf(file, readFileSync(file, 'utf8')));
  const rng = chance(SEED);
  // A partial shuffle: the first SAMPLE of a fair order.
  for (let i = 0; i < Math.min(SAMPLE, all.length); i++) {
    const j = i + Math.floor(rng() * (all.length - i));
    [all[i], all[j]] = [all[j] as Mutant, all[i] as Mutant];
  }
  return all.slice(0, SAMPLE).filter((_, i) => i % PARTS === PART - 1);
}

const copy = mkdtempSync(join(tmpdir(), 'spawnbook-mutants-'));
execFileSync('git', ['worktree', 'add', '-q', '--detach', '--force', copy, 'HEAD']);
symlinkSync(join(root, 'node_modules'), join(copy, 'node_modules'));

/** True when one of the tests fails. A batch at a time, nearest first, so that most changes fall early. */
function isKilled(tests: readonly string[]): boolean {
  for (let from = 0, round = 0; from < tests.length; round++) {
    const many = BATCHES[Math.min(round, BATCHES.length - 1)] ?? 1;
    const { status } = spawnSync(
      join(copy, 'node_modules/.bin/jest'),
      [
        '--bail',
        '--runInBand',
        '--silent',
        '--selectProjects',
        'unit',
        'pane',
        'office',
        '--runTestsByPath',
        ...tests.slice(from, from + many),
      ],
      { cwd: copy, stdio: 'ignore', timeout: 600_000, env: { ...process.env, MUTANTS: '1' } },
    );
    if (status !== 0) return true;
    from += many;
  }
  return false;
}

const text = (mutant: Mutant): string =>
  `${mutant.file}:${mutant.line} ${mutant.kind}: ${mutant.before} → ${mutant.after}`;
const known = existsSync(KNOWN) ? (JSON.parse(readFileSync(KNOWN, 'utf8')) as Known[]) : [];
const reasonOf = (mutant: Mutant): string | undefined =>
  known.find(({ file, change }) => file === mutant.file && change === `${mutant.before} → ${mutant.after}`)
    ?.reason;

const tests = listed('tests/*.test.ts').filter((file) => !/^tests\/(browser|long|golden)\//.test(file));
const bySource = await testsBySource(root, tests);
const survivors: Mutant[] = [];
let killed = 0;
let without = 0;
try {
  for (const mutant of sample()) {
    const target = join(copy, mutant.file);
    const original = readFileSync(target, 'utf8');
    writeFileSync(target, mutated(original, mutant));
    const reached = nearestFirst(mutant.file, bySource.get(mutant.file) ?? []).slice(0, FILES);
    const reason = reasonOf(mutant);
    const fell = isKilled(reached);
    writeFileSync(target, original);
    if (fell) killed += 1;
    else if (reason !== undefined) without += 1;
    else survivors.push(mutant);
    console.log(
      `${fell ? 'killed  ' : reason ? 'no effect' : 'SURVIVED'} ${text(mutant)}${reason ? ` (${reason})` : ''}`,
    );
  }
} finally {
  execFileSync('git', ['worktree', 'remove', '--force', copy]);
}
const share = killed / (killed + survivors.length);
console.log(
  `${killed} killed, ${survivors.length} survived, ${without} known to change no answer: ${(100 * share).toFixed(1)} % of those with an effect (seed ${SEED})`,
);
process.exitCode = share >= LEAST_KILLED ? 0 : 1;

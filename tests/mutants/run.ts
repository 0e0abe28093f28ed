import { createHash } from 'node:crypto';
import { appendFileSync, existsSync, mkdirSync, readFileSync } from 'node:fs';
import { Worker } from './asking';
import type { Mutant } from './mutate';
import { mutated } from './mutate';
import { KEPT, nearestFirst, testsBySource } from './related';
import { listed, roomOf, sample } from './sample';

/**
 * npm run mutants [-- --sample 200 --seed 3 --only shared/season --budget 10 --fresh]
 *
 * Makes a seeded sample of small changes in shared/ and taskpane/, and puts each to the test files that reach the
 * changed file over imports: the nearest, then the others, the quickest first, until one fails or `budget` seconds
 * of processor time are spent. A change no test notices is a survivor: it must stand in survivors.json with the
 * reason why it changes no answer, or a test must be written.
 * Files that start other programs or a browser are not asked, nor those that take long, so the share that is
 * printed is a lower bound.
 *
 * Every answer is written to .cache/mutants as it comes and holds while the changed file and the test file are
 * the same: a run that was broken off goes on, and after a new test only that test is asked. --fresh asks all.
 */
const argument = (name: string, otherwise: string): string => {
  const at = process.argv.indexOf(`--${name}`);
  return at < 0 ? otherwise : (process.argv[at + 1] ?? otherwise);
};
const SAMPLE = Number(argument('sample', '200'));
const SEED = Number(argument('seed', '3'));
const ONLY = argument('only', '');
const BUDGET_MS = 1000 * Number(argument('budget', '10'));
const LEAST_KILLED = 0.85;
/** Times the processor time of a test file without a change, and what any file is given. */
const [PATIENCE, LEAST_LIMIT_MS] = [8, 20_000];
/** Nearest files asked before the rest; either goes by time, for a change is mostly noticed within a second. */
const NEAREST = 15;
/** A file that takes longer is not asked: it goes through whole books, and its answer costs that of twenty others. */
const [SLOW_MS, SLOW_AFAR_MS, USUAL_MS] = [10_000, 700, 600];
const KNOWN = 'tests/mutants/survivors.json';
/** A test file that starts another program sees the checkout on the disk, not the change. */
const ELSEWHERE = /child_process|soffice|playwright|from 'esbuild'|support\/server'/;

interface Known {
  readonly file: string;
  readonly change: string;
  readonly reason: string;
}
const read = (file: string): string => readFileSync(file, 'utf8');
const hash = (texts: readonly string[]): string =>
  createHash('sha256').update(texts.join('\0')).digest('hex').slice(0, 16);

/** JSON lines that are added to as answers come. */
class Log<T> {
  readonly #path: string;
  readonly #known = new Map<string, T>();
  constructor(path: string) {
    this.#path = path;
    if (existsSync(path) && !process.argv.includes('--fresh'))
      for (const line of read(path).split('\n').filter(Boolean)) {
        const [key, value] = JSON.parse(line) as [string, T];
        this.#known.set(key, value);
      }
  }
  get(key: string): T | undefined {
    return this.#known.get(key);
  }
  add(key: string, value: T): T {
    this.#known.set(key, value);
    appendFileSync(this.#path, `${JSON.stringify([key, value])}\n`);
    return value;
  }
}

const text = (mutant: Mutant): string =>
  `${mutant.file}:${mutant.line} ${mutant.kind}: ${mutant.before} → ${mutant.after}`;
const known = existsSync(KNOWN) ? (JSON.parse(read(KNOWN)) as Known[]) : [];
/** A line of the file says which of several equal changes is meant. */
const reasonOf = (mutant: Mutant): string | undefined =>
  known.find(
    ({ file, change }) =>
      file === mutant.file && change === `${lineOf(mutant)} : ${mutant.before} → ${mutant.after}`,
  )?.reason;
const lineOf = ({ file, line }: Mutant): string => read(file).split('\n')[line - 1]?.trim() ?? '';

const tests = listed('tests/*.test.ts').filter(
  (file) =>
    !/^tests\/(browser|long|golden\/(?!functionsJson)|templates|src\/build)/.test(file) &&
    !ELSEWHERE.test(read(file)),
);
const code = ['shared/*.ts', 'taskpane/*.ts', 'src/*.ts', 'tests/*.ts', 'templates/*.ts']
  .flatMap(listed)
  .filter((file) => !file.startsWith('tests/mutants/'));
const packages = [
  ...new Set(
    code.flatMap((file) =>
      [...read(file).matchAll(/(?:from |import\()'([a-z@][^']*)'/g)].map(([, name]) => name as string),
    ),
  ),
].sort();

const mutants = sample(SAMPLE, SEED, ONLY);
mkdirSync('.cache/mutants', { recursive: true });
const times = new Log<number>('.cache/mutants/times.jsonl');
const answers = new Log<'passes' | 'fails' | 'unusable'>('.cache/mutants/answers.jsonl');
const worker = new Worker(packages);

/**
 * Runs a file with a change and keeps how long it took. A file that fails is run without the change and with it once
 * more. One that fails without it too was hurt by an earlier run, and a fresh process decides, or it cannot run here.
 */
async function outcome(test: string, mutant: Mutant): Promise<'passes' | 'fails' | 'unusable'> {
  const changed = [[mutant.file, mutated(read(mutant.file), mutant)]] as const;
  const limit = Math.max(LEAST_LIMIT_MS, PATIENCE * (times.get(test) ?? 0));
  const isDown = async (asked: typeof changed | readonly []): Promise<boolean> => {
    const answered = await worker.ask({ test, changed: asked }, limit);
    if (answered && answered.failed === undefined && times.get(test) === undefined)
      times.add(test, answered.took);
    return !answered || answered.failed !== undefined;
  };
  if (!(await isDown(changed))) return 'passes';
  // What an earlier file left behind may fail this one once: only what fails again, with the change alone, counts.
  if (!(await isDown([]))) return (await isDown(changed)) ? 'fails' : 'passes';
  worker.stop();
  if (await isDown([])) return 'unusable';
  return (await isDown(changed)) ? 'fails' : 'passes';
}

/** The test file that notices the change, if any, and how many were asked. */
async function verdictOn(mutant: Mutant, near: readonly string[]): Promise<{ by?: string; asked: number }> {
  const timeOf = (test: string): number => times.get(test) ?? USUAL_MS;
  const quickest = (list: readonly string[], most: number): string[] =>
    list.filter((test) => timeOf(test) < most).sort((a, b) => timeOf(a) - timeOf(b));
  const nearest = near.slice(0, NEAREST);
  const order = [
    ...quickest(nearest, SLOW_MS),
    ...quickest(near.slice(NEAREST), SLOW_AFAR_MS),
    // Whole answers of the room are slow to make and notice most: asked in the end, whatever was spent before.
    ...quickest(
      nearest.filter((test) => KEPT.test(test)),
      SLOW_MS,
    ),
  ];
  const keyOf = (test: string): string =>
    hash([mutant.file, read(mutant.file), String(mutant.start), mutant.after, test, read(test)]);
  const before = near.find((test) => answers.get(keyOf(test)) === 'fails');
  if (before !== undefined) return { by: before, asked: 0 };
  let spent = 0;
  let asked = 0;
  for (const test of order) {
    if (spent > BUDGET_MS && !(KEPT.test(test) && nearest.includes(test))) continue;
    const key = keyOf(test);
    const answer = answers.get(key) ?? answers.add(key, await outcome(test, mutant));
    if (answer === 'unusable') {
      console.log(`not asked: ${test} fails here without a change`);
      times.add(test, 1e9);
      continue;
    }
    spent += timeOf(test);
    asked += 1;
    if (answer === 'fails') return { by: test, asked };
  }
  return { asked };
}

const byRoom = new Map<string, { killed: number; survived: number; without: number }>();
const count = (room: string, what: 'killed' | 'survived' | 'without'): void => {
  const counts = byRoom.get(room) ?? { killed: 0, survived: 0, without: 0 };
  counts[what] += 1;
  byRoom.set(room, counts);
};
try {
  const bySource = testsBySource(tests);
  for (const mutant of mutants) {
    const near = nearestFirst(mutant.file, bySource.get(mutant.file) ?? []);
    const { by, asked } = await verdictOn(mutant, near);
    if (asked === 0 && by === undefined) {
      console.log(`not asked  ${text(mutant)}  (every file that comes by it takes long)`);
      continue;
    }
    const reason = by === undefined ? reasonOf(mutant) : undefined;
    const what = by !== undefined ? 'killed' : reason !== undefined ? 'without' : 'survived';
    count(roomOf(mutant.file), what);
    const label = { killed: 'killed   ', without: 'no effect', survived: 'SURVIVED ' }[what];
    console.log(`${label} ${text(mutant)}  (${by ?? reason ?? `${asked} files asked`})`);
  }
} finally {
  worker.stop();
}
const share = (killed: number, survived: number): string =>
  `${killed} of ${killed + survived} with an effect killed (${((100 * killed) / (killed + survived)).toFixed(1)} %)`;
const total = { killed: 0, survived: 0, without: 0 };
for (const [room, counts] of byRoom) {
  console.log(`${room.padEnd(9)} ${share(counts.killed, counts.survived)}`);
  total.killed += counts.killed;
  total.survived += counts.survived;
  total.without += counts.without;
}
console.log(
  `all       ${share(total.killed, total.survived)}, ${total.without} known to change no answer (seed ${SEED})`,
);
process.exitCode = total.killed / (total.killed + total.survived) >= LEAST_KILLED ? 0 : 1;

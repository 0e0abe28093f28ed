// npm test: set-up, then every check, two side by side, then the tests. Nothing is started after one that fails.
// With --long it runs the simulations, searches, fuzzing and the long walks through a browser instead; other words
// go to the test runner.
import { spawn } from 'node:child_process';
import { availableParallelism } from 'node:os';
import { demandPrograms, installPackages, installPrograms, root } from './install.mjs';

// The programs are only needed by the tests: they are installed beside the packages and the checks.
const programsInstalled = installPrograms();
installPackages();

const given = process.argv.slice(2);
const isLong = given.includes('--long');
const words = given.filter((word) => word !== '--long');
const asksProjects = words.some((word) => /^--selectProjects/.test(word));
/** Files that are named are run one by one, not with the others of their group. */
const asksFiles = words.some((word) => word.startsWith('tests/') || word === '-t');

const bin = (name) => `node_modules/.bin/${name}`;
/** The native compiler checks the types in a tenth of the time; the linter still needs the other one's interface. */
const NATIVE_COMPILER = 'node_modules/typescript-native/bin/tsc';
// Jest keeps one core for itself by default, which on two cores halves the speed.
const workers = ['--maxWorkers', String(Math.max(1, Math.min(4, availableParallelism())))];
const QUICK = asksFiles ? ['unit', 'pane', 'office', 'browser'] : ['quick', 'browser'];
const projects = isLong ? ['long', 'walks'] : QUICK;
const jest = [
  'tests',
  bin('jest'),
  ...workers,
  ...words,
  ...(asksProjects ? [] : ['--selectProjects', ...projects]),
];

/** Two lines of steps, one for a core; each step is one process and waits for the one before it. */
const CHECKS = [
  [
    ['build', bin('webpack'), '--config', 'src/build/webpack.config.mjs', '--mode', 'production'],
    ['check', process.execPath, 'src/build/run.mjs', 'src/build/check.ts'],
  ],
  [
    ['lint', bin('eslint'), '.', '--cache', '--cache-location', '.cache/eslint'],
    [
      'format',
      bin('prettier'),
      ...'--check --log-level warn --cache --cache-location .cache/prettier .'.split(' '),
    ],
    ['types', process.execPath, NATIVE_COMPILER, '--noEmit'],
    ['types of the engine', process.execPath, NATIVE_COMPILER, '--noEmit', '-p', 'shared'],
  ],
];
const run = ([name, command, ...args]) =>
  new Promise((done) => {
    const started = Date.now();
    const quiet = name !== 'tests';
    const child = spawn(command, args, {
      cwd: root,
      stdio: quiet ? 'pipe' : 'inherit',
      shell: process.platform === 'win32',
    });
    const output = [];
    if (quiet)
      for (const stream of [child.stdout, child.stderr]) stream.on('data', (data) => output.push(data));
    child.on('error', (error) => {
      process.stdout.write(`${name}: ${error.message}\n`);
      done(1);
    });
    child.on('close', (code) => {
      const seconds = ((Date.now() - started) / 1000).toFixed(1);
      if (quiet) process.stdout.write(`${code === 0 ? 'ok' : 'FAILED'}  ${name} (${seconds} s)\n`);
      if (code !== 0) process.stdout.write(Buffer.concat(output));
      done(code ?? 1);
    });
  });

/** Ends where a step of a line failed; the other lines begin nothing more. */
async function runLines(lines) {
  let isRed = false;
  const follow = async (line) => {
    for (const step of line) if (!isRed && (await run(step)) !== 0) isRed = true;
  };
  await Promise.all(lines.map(follow));
  if (isRed) process.exit(1);
}

if (!isLong) await runLines(CHECKS);
await programsInstalled;
demandPrograms();
await runLines([[jest]]);

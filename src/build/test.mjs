// npm test: set-up, then every check, cheapest first. Stops at the first that fails. With --long it runs the
// simulations, searches and fuzzing instead; other words go to the test runner.
import { spawn } from 'node:child_process';
import { availableParallelism } from 'node:os';
import { installPackages, installPrograms, root } from './install.mjs';

installPackages();
installPrograms();

const given = process.argv.slice(2);
const isLong = given.includes('--long');
const words = given.filter((word) => word !== '--long');
const asksProjects = words.some((word) => /^--selectProjects/.test(word));

const bin = (name) => `node_modules/.bin/${name}`;
/** The native compiler checks the types in a tenth of the time; the linter still needs the other one's interface. */
const NATIVE_COMPILER = 'node_modules/typescript-native/bin/tsc';
// Jest keeps one core for itself by default, which on two cores halves the speed.
const workers = ['--maxWorkers', String(Math.max(1, Math.min(4, availableParallelism())))];
const projects = isLong ? ['long'] : ['unit', 'pane', 'office', 'browser'];
const jest = [
  'tests',
  bin('jest'),
  ...workers,
  ...words,
  ...(asksProjects ? [] : ['--selectProjects', ...projects]),
];

/** Steps of one stage run side by side. */
const QUICK = [
  [
    ['lint', bin('eslint'), '.', '--cache', '--cache-location', '.cache/eslint'],
    ['types', process.execPath, NATIVE_COMPILER, '--noEmit'],
  ],
  [
    ['format', bin('prettier'), '--check', '--log-level', 'warn', '.'],
    ['types of the engine', process.execPath, NATIVE_COMPILER, '--noEmit', '-p', 'shared'],
  ],
  [['build', bin('webpack'), '--config', 'src/build/webpack.config.mjs', '--mode', 'production']],
  [['check', 'node', 'src/build/run.mjs', 'src/build/check.ts']],
  [jest],
];
const STAGES = isLong ? [[jest]] : QUICK;

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

for (const stage of STAGES) {
  const codes = await Promise.all(stage.map(run));
  if (codes.some((code) => code !== 0)) process.exit(1);
}

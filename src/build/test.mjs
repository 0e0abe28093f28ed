// npm test: set-up, then every check, cheapest first. Stops at the first that fails.
import { spawn } from 'node:child_process';
import { installPackages, installPrograms, root } from './install.mjs';

installPackages();
installPrograms();

const bin = (name) => `node_modules/.bin/${name}`;
/** Steps of one stage run side by side. */
const STAGES = [
  [
    ['lint', bin('eslint'), '.'],
    ['types', bin('tsc'), '--noEmit'],
    ['types of the engine', bin('tsc'), '--noEmit', '-p', 'shared'],
  ],
  [['build', bin('webpack'), '--config', 'src/build/webpack.config.mjs', '--mode', 'production']],
  [['check', 'node', 'src/build/run.mjs', 'src/build/check.ts']],
  [['tests', bin('jest'), ...process.argv.slice(2)]],
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
      if (quiet)
        process.stdout.write(
          `${code === 0 ? 'ok' : 'FAILED'}  ${name} (${((Date.now() - started) / 1000).toFixed(1)} s)\n`,
        );
      if (code !== 0) process.stdout.write(Buffer.concat(output));
      done(code ?? 1);
    });
  });

for (const stage of STAGES) {
  const codes = await Promise.all(stage.map(run));
  if (codes.some((code) => code !== 0)) process.exit(1);
}

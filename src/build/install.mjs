// Set-up that the two commands do by themselves: npm packages for both, a browser and LibreOffice for the
// tests.
import { spawn, spawnSync } from 'node:child_process';
import { existsSync, readFileSync, statSync } from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';

export const root = resolve(dirname(fileURLToPath(import.meta.url)), '../..');

/** npm leaves this list of what it installed behind when an install is complete. */
const installed = join(root, 'node_modules/.package-lock.json');
const packagesOf = (file) => JSON.parse(readFileSync(file, 'utf8')).packages;

/** Every package the lock names is there in that version; what is made for other machines may be missing. */
function isInstalled() {
  if (!existsSync(installed)) return false;
  const lock = join(root, 'package-lock.json');
  if (statSync(installed).mtimeMs >= statSync(lock).mtimeMs) return true;
  const have = packagesOf(installed);
  return Object.entries(packagesOf(lock)).every(
    ([path, { version, optional, link }]) =>
      path === '' || link || optional || !path.startsWith('node_modules/') || have[path]?.version === version,
  );
}

export function installPackages() {
  if (isInstalled()) return;
  process.stderr.write('Installing the npm packages (once, about half a minute)…\n');
  const { status } = spawnSync('npm', ['ci', '--no-audit', '--no-fund', '--loglevel=error'], {
    cwd: root,
    stdio: ['ignore', 'ignore', 'inherit'],
    shell: process.platform === 'win32',
  });
  if (status !== 0) {
    process.stderr.write(
      'npm could not install the packages: see the lines above, mend the cause and run the command again.\n',
    );
    process.exit(1);
  }
}

const PROGRAMS = {
  chromium: 'chromium',
  soffice: 'libreoffice-calc',
  pdftoppm: 'poppler-utils',
  ssconvert: 'gnumeric',
};
const has = (program) => spawnSync('sh', ['-c', `command -v ${program}`], { stdio: 'ignore' }).status === 0;

const missingPrograms = () => Object.keys(PROGRAMS).filter((program) => !has(program));
const packagesWith = (programs) => programs.map((program) => PROGRAMS[program]);

/**
 * Begins to install the programs the browser and LibreOffice tests drive, where that is possible without asking
 * (Debian, as root); one process, so that it goes on beside whatever is done meanwhile. The promise waits for it.
 */
export function installPrograms() {
  const packages = packagesWith(missingPrograms());
  const canInstall = process.getuid?.() === 0 && has('apt-get');
  if (packages.length === 0 || !canInstall) return Promise.resolve();
  process.stderr.write(`Installing ${packages.join(', ')} for the tests…\n`);
  const wanted = [...packages, 'fonts-dejavu-core'].join(' ');
  const installing = spawn(
    'sh',
    [
      '-c',
      `apt-get update -qq >/dev/null; apt-get install -y -qq --no-install-recommends ${wanted} >/dev/null`,
    ],
    { stdio: ['ignore', 'ignore', 'inherit'], env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' } },
  );
  return new Promise((done) => {
    installing.on('close', done);
    installing.on('error', done);
  });
}

/** Says what to install, and ends, where a program is still missing. */
export function demandPrograms() {
  const missing = missingPrograms();
  if (missing.length === 0) return;
  process.stderr.write(
    `The tests drive ${missing.join(', ')}, which this machine lacks. Install: ${packagesWith(missing).join(', ')} (Debian names), then run the tests again.\n`,
  );
  process.exit(1);
}

import { cpSync, rmSync } from 'node:fs';
import { dirname, resolve } from 'node:path';
import { buildAll } from './server/build';
import { SITE_FOLDER } from './server/site';
import { targetFault } from './server/siteTarget';

/** npm run site [-- folder]: the local sheet as files for any https host; into site/ when no folder is given. */
const root = process.env.npm_package_json ? dirname(process.env.npm_package_json) : resolve('.');
const say = (line: string): void => {
  process.stdout.write(`${line}\n`);
};
const given = process.argv[2] ?? 'site';
const target = resolve(root, given);
const fault = targetFault(given, target);
if (fault !== undefined) {
  process.stderr.write(`${fault}\n`);
  process.exit(2);
}

buildAll(root, say)
  .then(() => {
    rmSync(target, { recursive: true, force: true });
    cpSync(resolve(root, SITE_FOLDER), target, { recursive: true });
    say(
      `The site is in ${target}. Put its files on any https host, or serve them from a USB stick with any small ` +
        'web server; opened once, it works without network.',
    );
  })
  .catch((error: unknown) => {
    process.stderr.write(`${error instanceof Error ? error.message : String(error)}\n`);
    process.exitCode = 1;
  });

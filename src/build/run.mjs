// Runs a TypeScript entry under Node: bundles it once with esbuild, reuses the bundle until one of its inputs changes.
import { existsSync, mkdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { installPackages, root } from './install.mjs';

const entry = process.argv[2];
const cache = join(root, 'node_modules/.cache/spawnbook');
const name = basename(entry, '.ts');
const outfile = join(cache, `${name}.mjs`);
const stamp = join(cache, `${name}.inputs.json`);

/** The bundle is fresh when none of the files it was made from is newer than it. */
function isFresh() {
  if (!existsSync(outfile) || !existsSync(stamp)) return false;
  const made = statSync(outfile).mtimeMs;
  const inputs = JSON.parse(readFileSync(stamp, 'utf8'));
  return inputs.every((file) => { const full = join(root, file); return existsSync(full) && statSync(full).mtimeMs <= made; });
}

async function bundle() {
  const { build } = await import('esbuild');
  mkdirSync(cache, { recursive: true });
  const result = await build({
    absWorkingDir: root, entryPoints: [entry], outfile, bundle: true, platform: 'node', format: 'esm', target: 'node20',
    packages: 'external', metafile: true, logLevel: 'warning', sourcemap: 'inline',
  });
  writeFileSync(stamp, JSON.stringify(Object.keys(result.metafile.inputs)));
}

installPackages();
if (!isFresh()) await bundle();
process.argv.splice(1, 2, outfile);
await import(pathToFileURL(outfile).href);

// Runs a TypeScript entry under Node: bundles it once with esbuild, reuses the bundle until one of its inputs
// changes.
import { existsSync, mkdirSync, readFileSync, renameSync, statSync, writeFileSync } from 'node:fs';
import { join, relative, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { installPackages, root } from './install.mjs';

const entry = relative(root, resolve(process.argv[2]));
const cache = join(root, '.cache');
// By its whole path: two entries may share a file name, and tests run side by side.
const name = entry.replace(/\.ts$/, '').replaceAll(/[\\/]/g, '.');
const outfile = join(cache, `${name}.mjs`);
const stamp = join(cache, `${name}.inputs.json`);

/** The files a bundle was made from; undefined when its stamp is damaged, so that it is made again. */
function inputsOf(path) {
  try {
    const inputs = JSON.parse(readFileSync(path, 'utf8'));
    return Array.isArray(inputs) && inputs.length > 0 ? inputs : undefined;
  } catch {
    return undefined;
  }
}

/** The bundle is fresh when none of the files it was made from is newer than it. */
function isFresh() {
  if (!existsSync(outfile) || !existsSync(stamp)) return false;
  const made = statSync(outfile).mtimeMs;
  const inputs = inputsOf(stamp);
  return (
    inputs?.every((file) => {
      const full = join(root, file);
      return existsSync(full) && statSync(full).mtimeMs <= made;
    }) === true
  );
}

async function bundle() {
  const { build } = await import('esbuild');
  mkdirSync(cache, { recursive: true });
  const result = await build({
    absWorkingDir: root,
    entryPoints: [entry],
    outfile,
    write: false,
    bundle: true,
    platform: 'node',
    format: 'esm',
    target: 'node20',
    packages: 'external',
    metafile: true,
    logLevel: 'warning',
    sourcemap: 'inline',
  });
  // Whole files only, also when the same entry is started twice at once; the stamp first, because freshness
  // is read off the bundle.
  for (const [path, content] of [
    [stamp, JSON.stringify(Object.keys(result.metafile.inputs))],
    [outfile, result.outputFiles[0].contents],
  ]) {
    writeFileSync(`${path}.${process.pid}`, content);
    renameSync(`${path}.${process.pid}`, path);
  }
}

installPackages();
if (!isFresh()) await bundle();
process.argv.splice(1, 2, outfile);
await import(pathToFileURL(outfile).href);

import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { BuildOptions, Plugin } from 'esbuild';
import { HYPHENATION, patched, STUBS } from './patches';

/**
 * How the local sheet is bundled: modules in pieces, so that what is not needed for the first screen is
 * fetched later; and one plain script, the stand-in for Excel's own, which the pane loads as such.
 */
const escape = (text: string): string => text.replaceAll(/[.*+?^${}()|[\]\\]/g, '\\$&');

const changes = (root: string): Plugin => ({
  name: 'changes to pinned packages',
  setup(build) {
    const stub = (file: string): string => join(root, 'src/build/sheet/stubs', file);
    for (const [name, file] of Object.entries(STUBS))
      build.onResolve({ filter: new RegExp(`^${escape(name)}$`) }, () => ({ path: stub(file) }));
    build.onResolve({ filter: HYPHENATION }, ({ kind, importer }) =>
      kind === 'dynamic-import' && importer.includes('engine-render') ? { path: stub('hyphens.ts') } : null,
    );
    build.onLoad({ filter: /@univerjs\/[a-z-]+\/lib\/es\/[a-z]+\.js$/ }, async ({ path }) => ({
      contents: patched(path.replaceAll('\\', '/'), await readFile(path, 'utf8')),
      loader: 'js',
    }));
  },
});

const common = (root: string): BuildOptions => ({
  absWorkingDir: root,
  bundle: true,
  minify: process.env.SPAWNBOOK_READABLE !== '1',
  target: 'chrome109',
  legalComments: 'linked',
  logLevel: 'error',
  define: { 'process.env.NODE_ENV': '"production"' },
  loader: { '.svg': 'text', '.woff2': 'dataurl' },
  plugins: [changes(root)],
});

/** The page of the sheet and what it fetches later. */
export const pageBundle = (root: string, outdir: string): BuildOptions => ({
  ...common(root),
  outdir,
  format: 'esm',
  splitting: true,
  chunkNames: 'parts/[name]-[hash]',
  entryPoints: {
    boot: 'src/localsheet/page/boot.ts',
    main: 'src/localsheet/page/main.ts',
    calculate: 'src/localsheet/calculating/worker.ts',
  },
});

/** Plain scripts: the pane loads the first the way it loads Excel's own. */
export const scriptBundle = (root: string, outdir: string): BuildOptions => ({
  ...common(root),
  outdir,
  format: 'iife',
  entryPoints: { office: 'src/localsheet/page/office.ts' },
});

/** The worker that keeps the site: it is told which files there are. */
export const workerBundle = (
  root: string,
  outfile: string,
  files: readonly string[],
  version: string,
): BuildOptions => ({
  ...common(root),
  outfile,
  format: 'iife',
  legalComments: 'none',
  entryPoints: ['src/localsheet/site/worker.ts'],
  define: { FILES: JSON.stringify(files), SITE_VERSION: JSON.stringify(version) },
});

import { execFile } from 'node:child_process';
import { copyFileSync, existsSync, mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { isStale } from './stale';

/** Kept outside dist/, which a production build empties. */
export const SHEET_FOLDER = '.cache/localsheet';
const ADDIN_FOLDER = 'dist';

export type Tell = (line: string) => void;
const run = promisify(execFile);

/** The same production build that Excel gets: functions, their list, the pane. */
async function buildAddin(root: string, tell: Tell): Promise<void> {
  const outputs = ['functions.js', 'functions.json', 'taskpane.html'].map(
    (name) => `${ADDIN_FOLDER}/${name}`,
  );
  const inputs = ['shared', 'taskpane', 'src/shell', 'src/build', 'manifest.xml', 'package-lock.json'];
  if (!isStale(root, outputs, inputs)) return;
  tell('Building the functions and the pane…');
  await run(
    process.execPath,
    [
      join(root, 'node_modules/webpack-cli/bin/cli.js'),
      '--config',
      'src/build/webpack.config.mjs',
      '--mode',
      'production',
    ],
    { cwd: root, maxBuffer: 1 << 24 },
  );
}

async function buildSheet(root: string, tell: Tell): Promise<void> {
  const outputs = ['main.js', 'main.css', 'office.js', 'index.html'].map((name) => `${SHEET_FOLDER}/${name}`);
  if (
    !isStale(root, outputs, [
      'shared',
      'templates',
      'src/localsheet',
      'src/officeStandIn',
      'package-lock.json',
    ])
  )
    return;
  tell('Building the local sheet…');
  const { build } = await import('esbuild');
  const outdir = join(root, SHEET_FOLDER);
  mkdirSync(outdir, { recursive: true });
  await build({
    absWorkingDir: root,
    outdir,
    bundle: true,
    minify: true,
    format: 'iife',
    target: 'chrome109',
    legalComments: 'linked',
    logLevel: 'error',
    entryPoints: { main: 'src/localsheet/page/main.ts', office: 'src/localsheet/page/office.ts' },
    define: { 'process.env.NODE_ENV': '"production"' },
    loader: { '.svg': 'text', '.woff2': 'dataurl' },
  });
  copyFileSync(join(root, 'src/localsheet/page/index.html'), join(outdir, 'index.html'));
}

/** Builds only what changed since the last start. */
export async function buildAll(root: string, tell: Tell): Promise<void> {
  if (!existsSync(join(root, 'node_modules/esbuild')))
    throw new Error('node_modules is incomplete. Run: npm ci');
  await buildAddin(root, tell);
  await buildSheet(root, tell);
}

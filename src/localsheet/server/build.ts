import { execFile } from 'node:child_process';
import { existsSync, mkdirSync, rmSync, utimesSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { noticesText } from '../../build/bundle/notices.mjs';
import { pageBundle, scriptBundle } from '../../build/sheet/bundle';
import { assembleSite, SITE_FOLDER } from './site';
import { isStale } from './stale';

/** Kept outside dist/, which a production build empties. */
export const SHEET_FOLDER = '.cache/localsheet';
const ADDIN_FOLDER = 'dist';

export type BuildTell = (line: string) => void;
const run = promisify(execFile);

/** The same production build that Excel gets: functions, their list, the pane. */
async function buildAddin(root: string, tell: BuildTell): Promise<boolean> {
  const outputs = ['functions.js', 'functions.json', 'taskpane.html'].map(
    (name) => `${ADDIN_FOLDER}/${name}`,
  );
  const inputs = [
    'shared',
    'taskpane',
    'src/shell',
    'src/build/webpack.config.mjs',
    'src/build/bundle/slimRecords.mjs',
    'manifest.xml',
    'package-lock.json',
  ];
  if (!isStale(root, outputs, inputs)) return false;
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
  // A file that came out the same is not written again and would look old for ever.
  const now = new Date();
  for (const output of outputs) utimesSync(join(root, output), now, now);
  return true;
}

/** What the catalogue says about the formats of answers, worked out by running it. */
async function formatsText(root: string): Promise<string> {
  const { build } = await import('esbuild');
  const { outputFiles } = await build({
    absWorkingDir: root,
    stdin: {
      contents:
        "import { CATALOGUE } from './shared/catalogue'; import { answerFormats } from " +
        "'./src/build/sheet/formats'; export default JSON.stringify(answerFormats(CATALOGUE));",
      resolveDir: root,
      loader: 'ts',
    },
    bundle: true,
    platform: 'node',
    format: 'esm',
    write: false,
    logLevel: 'error',
    packages: 'bundle',
  });
  const code = Buffer.from(outputFiles[0]?.contents ?? []).toString('base64');
  return ((await import(`data:text/javascript;base64,${code}`)) as { default: string }).default;
}

async function buildSheet(root: string, tell: BuildTell): Promise<boolean> {
  const outputs = ['main.js', 'main.css', 'office.js', 'boot.js', 'calculate.js'].map(
    (name) => `${SHEET_FOLDER}/${name}`,
  );
  if (
    !isStale(root, outputs, [
      'shared',
      'templates',
      'src/localsheet',
      'src/officeStandIn',
      'src/build/sheet',
      'package-lock.json',
    ])
  )
    return false;
  tell('Building the local sheet…');
  const { build } = await import('esbuild');
  const outdir = join(root, SHEET_FOLDER);
  rmSync(outdir, { recursive: true, force: true });
  mkdirSync(outdir, { recursive: true });
  const made = await Promise.all([
    build({ ...pageBundle(root, outdir), metafile: true }),
    build({ ...scriptBundle(root, outdir), metafile: true }),
  ]);
  const shipped = made.flatMap(({ metafile }) =>
    Object.values(metafile.outputs).flatMap(({ inputs }) =>
      Object.entries(inputs).flatMap(([file, { bytesInOutput }]) => (bytesInOutput > 0 ? [file] : [])),
    ),
  );
  writeFileSync(join(outdir, 'NOTICES.txt'), noticesText(shipped, root));
  writeFileSync(join(outdir, 'formats.json'), await formatsText(root));
  return true;
}

/** Builds only what changed since the last start. */
export async function buildAll(root: string, tell: BuildTell): Promise<void> {
  if (!existsSync(join(root, 'node_modules/esbuild')))
    throw new Error('node_modules is incomplete. Run: npm ci');
  const isNew = [await buildAddin(root, tell), await buildSheet(root, tell)].includes(true);
  if (isNew || isStale(root, [`${SITE_FOLDER}/sw.js`], ['src/localsheet/site', ADDIN_FOLDER, SHEET_FOLDER]))
    await assembleSite(root, ADDIN_FOLDER, SHEET_FOLDER);
}

import { createHash } from 'node:crypto';
import { cpSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join, relative, sep } from 'node:path';
import { workerBundle } from '../../build/sheet/bundle';

/**
 * The local sheet as a folder of files: any https host or small server shows it. Page, pane, functions, help,
 * icons, and the worker that keeps all of it in the browser.
 */
export const SITE_FOLDER = '.cache/site';

const OFFICE_SCRIPT = /https:\/\/appsforoffice\.microsoft\.com\/lib\/[^"']*office\.js/g;
/** The pane as built; only the address of Excel's own script is replaced by the stand-in. */
export const panePage = (html: string): string => html.replaceAll(OFFICE_SCRIPT, 'localsheet/office.js');

/** Of no use here, or made anew. */
const LEFT_OUT = /(^|\/)(manifest\.xml|NOTICES\.txt|.*\.LICENSE\.txt|.*\.LEGAL\.txt|sw\.js)$/;

const filesUnder = (folder: string): string[] =>
  readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => relative(folder, join(entry.parentPath, entry.name)).split(sep).join('/'))
    .sort();

/** Changes when any file does. */
function versionOf(folder: string, files: readonly string[]): string {
  const hash = createHash('sha256');
  for (const file of files) hash.update(file).update(readFileSync(join(folder, file)));
  return hash.digest('hex').slice(0, 16);
}

export async function assembleSite(root: string, addin: string, sheet: string): Promise<void> {
  const site = join(root, SITE_FOLDER);
  rmSync(site, { recursive: true, force: true });
  mkdirSync(site, { recursive: true });
  cpSync(join(root, addin), site, { recursive: true });
  cpSync(join(root, sheet), join(site, 'localsheet'), { recursive: true });
  cpSync(join(root, 'src/localsheet/site/assets'), join(site, 'assets'), { recursive: true });
  for (const file of ['index.html', 'app.webmanifest'])
    cpSync(join(root, 'src/localsheet/site', file), join(site, file));
  const pane = join(site, 'taskpane.html');
  writeFileSync(pane, panePage(readFileSync(pane, 'utf8')));
  const files = filesUnder(site).filter((file) => !LEFT_OUT.test(file));
  const { build } = await import('esbuild');
  await build(workerBundle(root, join(site, 'sw.js'), files, versionOf(site, files)));
}

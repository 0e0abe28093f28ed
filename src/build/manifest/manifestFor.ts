import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { lintManifest } from './manifestLint';
import { assetSize } from '../icons/pngSize';

// `npm run manifest -- https://your.host/path [GUID]`: the same manifest for another place, in
// dist/manifest.xml.
const HOME = 'https://localhost:3000';
/** Holds the addresses of the help pages. */
const FUNCTIONS = 'dist/functions.json';
const [given = '', id] = process.argv.slice(2);

function problem(text: string): never {
  process.stderr.write(`${text}\n`);
  process.exit(1);
}

if (!/^https:\/\/[^\s"<>]+$/.test(given))
  problem('Give the https address the add-in is served from: npm run manifest -- https://your.host/path');
const base = given.replace(/\/+$/, '');
// Excel keeps add-ins apart by id: a copy for elsewhere should have its own.
const text = readFileSync('manifest.xml', 'utf8')
  .replaceAll(HOME, base)
  .replace(/<!--[\s\S]*?-->\n?/, '')
  .replace(/<Id>[^<]*<\/Id>/, (old) => (id === undefined ? old : `<Id>${id}</Id>`));
const faults = lintManifest(text, assetSize);
if (faults.length > 0) problem(`Not written:\n${faults.map((f) => `  ${f}`).join('\n')}`);
mkdirSync('dist', { recursive: true });
writeFileSync('dist/manifest.xml', text);
if (existsSync(FUNCTIONS)) writeFileSync(FUNCTIONS, readFileSync(FUNCTIONS, 'utf8').replaceAll(HOME, base));
process.stdout.write(
  `wrote dist/manifest.xml for ${base}\n${
    id === undefined
      ? 'It carries the development id; give a GUID as the second word for a copy that ' +
        'stands beside it.\n'
      : ''
  }`,
);

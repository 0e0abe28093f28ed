// The notices of the packages whose code a bundle holds: name, version, licence, and its text, each text once.
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

const COPYLEFT = /\b(A?GPL|LGPL|SSPL|EUPL)-?/;
const LICENCE_FILE = /^(licen[cs]e|copying|notice)([-.].*)?$/i;

/** Folder of the package a file belongs to, or undefined for a file of ours. */
export const packageFolder = (file) => {
  const path = file.split('?')[0].replaceAll('\\', '/');
  const at = path.lastIndexOf('node_modules/');
  if (at < 0) return undefined;
  const rest = path.slice(at + 'node_modules/'.length).split('/');
  const name = rest[0].startsWith('@') ? `${rest[0]}/${rest[1]}` : rest[0];
  return path.slice(0, at + 'node_modules/'.length) + name;
};

const read = (folder) => {
  const about = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'));
  const files = readdirSync(folder)
    .filter((name) => LICENCE_FILE.test(name))
    .sort();
  const text = files.map((name) => readFileSync(join(folder, name), 'utf8').trim()).join('\n\n');
  const licence = typeof about.license === 'string' ? about.license : about.license?.type;
  return {
    name: about.name,
    version: about.version,
    licence: licence ?? (text ? 'see its text' : undefined),
    text,
  };
};

/** Packages that may not ship: without a licence, or only under one that would bind the rest. */
export const noticeFaults = (packages) =>
  packages.flatMap(({ name, licence }) =>
    licence === undefined
      ? [`${name} ships without a licence`]
      : licence
            .replace(/[()]/g, '')
            .split(/\s+OR\s+/)
            .every((choice) => COPYLEFT.test(choice))
        ? [`${name} ships under ${licence}, which must not`]
        : [],
  );

/** What the files of a bundle come from. */
export const packagesOf = (files, root) =>
  [...new Set(files.map(packageFolder).filter(Boolean))]
    .map((folder) => (folder.startsWith('/') || /^[A-Z]:/i.test(folder) ? folder : join(root, folder)))
    .filter((folder) => existsSync(join(folder, 'package.json')))
    .map(read)
    .sort((a, b) => (a.name < b.name ? -1 : 1));

/** Throws where something may not ship. */
export const noticesText = (files, root) => {
  const packages = packagesOf(files, root);
  const faults = noticeFaults(packages);
  if (faults.length > 0) throw new Error(faults.join('\n'));
  const byText = new Map();
  for (const one of packages) {
    const text = one.text || `${one.licence}; the package carries no text of its own.`;
    byText.set(text, [...(byText.get(text) ?? []), `${one.name} ${one.version} (${one.licence})`]);
  }
  return `Spawnbook ships code of these packages.\n\n${[...byText]
    .map(([text, names]) => `${names.join('\n')}\n\n${text}`)
    .join(`\n\n${'-'.repeat(72)}\n\n`)}\n`;
};

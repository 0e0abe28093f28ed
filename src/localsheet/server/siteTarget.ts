import { existsSync, readdirSync } from 'node:fs';
import { join } from 'node:path';

/** What every site of ours holds. */
const MARK = join('localsheet', 'main.js');

/** Why a site must not be written into this folder, which is emptied first; undefined where it may. */
export function targetFault(given: string, folder: string): string | undefined {
  if (given.startsWith('-'))
    return `"${given}" is no folder. Give the name of a new folder, or nothing: npm run site -- my-site.`;
  if (!existsSync(folder) || existsSync(join(folder, MARK))) return undefined;
  return readdirSync(folder).length === 0
    ? undefined
    : `${folder} holds other files, and a site would take their place. Nothing was changed. Give a new or empty folder.`;
}

import {
  closeSync,
  existsSync,
  fsyncSync,
  linkSync,
  openSync,
  renameSync,
  rmSync,
  statSync,
  writeSync,
} from 'node:fs';
import { basename, dirname, join } from 'node:path';

/**
 * A file that is there whole or not at all: written beside its place, flushed to the disk, then moved. Whatever
 * stood there before stays until that moment, on a full disk and when the program is killed.
 */

/** One and the same file, also through links of either kind. */
export function isSameFile(a: string, b: string): boolean {
  if (!existsSync(a) || !existsSync(b)) return false;
  const [one, other] = [statSync(a, { bigint: true }), statSync(b, { bigint: true })];
  return one.dev === other.dev && one.ino === other.ino;
}

const besideOf = (path: string): string => join(dirname(path), `.${basename(path)}.part`);

function flush(path: string, bytes: Uint8Array): void {
  const file = openSync(path, 'wx');
  try {
    for (let at = 0; at < bytes.length;) at += writeSync(file, bytes, at);
    fsyncSync(file);
  } finally {
    closeSync(file);
  }
}

/** Moves without ever taking the place of a file that came there meanwhile. */
function moveToFree(from: string, to: string): void {
  try {
    linkSync(from, to);
    rmSync(from);
  } catch (error) {
    // Some file systems know no links.
    if ((error as NodeJS.ErrnoException).code === 'EEXIST' || existsSync(to)) throw error;
    renameSync(from, to);
  }
}

/** Some systems cannot flush a folder; the file is whole either way. */
function flushFolder(path: string): void {
  try {
    const folder = openSync(path, 'r');
    fsyncSync(folder);
    closeSync(folder);
  } catch {
    // Nothing is lost by it.
  }
}

export function writeWhole(path: string, bytes: Uint8Array, mayReplace: boolean): void {
  const beside = besideOf(path);
  // Left by a run that was killed.
  rmSync(beside, { force: true });
  const clear = (): void => {
    rmSync(beside, { force: true });
  };
  const stop = (): void => {
    clear();
    process.exit(130);
  };
  process.on('SIGINT', stop).on('SIGTERM', stop);
  try {
    flush(beside, bytes);
    if (mayReplace) renameSync(beside, path);
    else moveToFree(beside, path);
    flushFolder(dirname(path));
  } finally {
    clear();
    process.off('SIGINT', stop).off('SIGTERM', stop);
  }
}

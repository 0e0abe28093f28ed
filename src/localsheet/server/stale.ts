import { existsSync, readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';

/** The newest change among files and folders, in milliseconds; 0 when nothing is there. */
export function newestChange(root: string, paths: readonly string[]): number {
  let newest = 0;
  const visit = (path: string): void => {
    if (!existsSync(path)) return;
    const found = statSync(path);
    if (!found.isDirectory()) {
      newest = Math.max(newest, found.mtimeMs);
      return;
    }
    for (const name of readdirSync(path))
      if (name !== 'node_modules' && !name.startsWith('.')) visit(join(path, name));
  };
  for (const path of paths) visit(join(root, path));
  return newest;
}

/** True when an output is missing or older than what it is made from. */
export const isStale = (root: string, outputs: readonly string[], inputs: readonly string[]): boolean => {
  const newest = newestChange(root, inputs);
  return outputs.some((output) => {
    const full = join(root, output);
    return !existsSync(full) || statSync(full).mtimeMs < newest;
  });
};

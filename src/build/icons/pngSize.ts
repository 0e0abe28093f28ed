import { existsSync, readFileSync } from 'node:fs';

const SIGNATURE = '89504e470d0a1a0a';
/** Width and height from a PNG's first chunk; undefined when the file is missing or something else. */
export function pngSize(path: string): readonly [number, number] | undefined {
  if (!existsSync(path)) return undefined;
  const bytes = readFileSync(path);
  return bytes.subarray(0, 8).toString('hex') === SIGNATURE
    ? [bytes.readUInt32BE(16), bytes.readUInt32BE(20)]
    : undefined;
}

/** Pictures are served from assets/ under any base path. */
export const assetSize = (path: string): readonly [number, number] | undefined => {
  const at = path.lastIndexOf('/assets/');
  return at < 0 ? undefined : pngSize(`taskpane${path.slice(at)}`);
};

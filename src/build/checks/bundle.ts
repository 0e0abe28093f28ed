import { gzipSync } from 'node:zlib';

/** Excel loads this on every start, on a farm's line. */
export const FUNCTIONS_LIMIT = 80 * 1024;

export const gzipSize = (bytes: Uint8Array): number => gzipSync(bytes, { level: 9 }).length;

export function bundleFaults(bytes: Uint8Array): string[] {
  const size = gzipSize(bytes);
  return size <= FUNCTIONS_LIMIT
    ? []
    : [`dist/functions.js is ${(size / 1024).toFixed(1)} KB gzipped, ${FUNCTIONS_LIMIT / 1024} KB at most`];
}

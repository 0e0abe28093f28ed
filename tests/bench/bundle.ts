import { readFileSync } from 'node:fs';
import { gzipSync } from 'node:zlib';
import type { Timing } from './catalogue';

/** What Excel downloads, as built by npm run build. */
export function bundleSizes(): Timing[] {
  const kilobytes = gzipSync(readFileSync('dist/functions.js'), { level: 9 }).length / 1024;
  return [{ name: 'functions bundle, gzip', value: kilobytes, unit: 'KB', limit: 80, isForReadme: true }];
}

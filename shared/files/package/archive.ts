import type { ZipEntry } from './container';
import { join } from './container';

/**
 * Writes the archive: packed bytes go in as they are, so a part nobody touched stays identical to the last
 * bit.
 */

function header(size: number, fields: readonly (readonly [number, 2 | 4, number])[]): Uint8Array {
  const bytes = new Uint8Array(size);
  const view = new DataView(bytes.buffer);
  for (const [at, width, value] of fields) {
    if (width === 2) view.setUint16(at, value, true);
    else view.setUint32(at, value, true);
  }
  return bytes;
}

/** Bit 3 says that sizes follow the data; here they stand in front. */
const flagsOf = (entry: ZipEntry): number => entry.flags & ~8;

const common = (entry: ZipEntry, at: number): (readonly [number, 2 | 4, number])[] => [
  [at, 2, 20],
  [at + 2, 2, flagsOf(entry)],
  [at + 4, 2, entry.method],
  [at + 6, 2, entry.time],
  [at + 8, 2, entry.date],
  [at + 10, 4, entry.crc],
  [at + 14, 4, entry.packed.length],
  [at + 18, 4, entry.size],
  [at + 22, 2, entry.rawName.length],
];

export function writeContainer(entries: readonly ZipEntry[]): Uint8Array {
  const chunks: Uint8Array[] = [];
  const central: Uint8Array[] = [];
  let at = 0;
  for (const entry of entries) {
    const local = header(30, [[0, 4, 0x04034b50], ...common(entry, 4)]);
    central.push(
      header(46, [[0, 4, 0x02014b50], [4, 2, 20], ...common(entry, 6), [42, 4, at]]),
      entry.rawName,
    );
    chunks.push(local, entry.rawName, entry.packed);
    at += local.length + entry.rawName.length + entry.packed.length;
  }
  const directory = join(central);
  const end = header(22, [
    [0, 4, 0x06054b50],
    [8, 2, entries.length],
    [10, 2, entries.length],
    [12, 4, directory.length],
    [16, 4, at],
  ]);
  return join([...chunks, directory, end]);
}

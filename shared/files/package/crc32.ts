/**
 * CRC-32 as zip archives use it (polynomial 0xEDB88320, reflected); eight tables, so that eight bytes go per
 * step.
 */
const TABLES: readonly Uint32Array[] = (() => {
  const tables = Array.from({ length: 8 }, () => new Uint32Array(256));
  const [first = new Uint32Array(256)] = tables;
  for (let n = 0; n < 256; n++) {
    let c = n;
    for (let k = 0; k < 8; k++) c = c & 1 ? 0xedb88320 ^ (c >>> 1) : c >>> 1;
    first[n] = c >>> 0;
  }
  for (let t = 1; t < 8; t++) {
    for (let n = 0; n < 256; n++) {
      const before = tables[t - 1]?.[n] ?? 0;
      (tables[t] as Uint32Array)[n] = ((first[before & 255] ?? 0) ^ (before >>> 8)) >>> 0;
    }
  }
  return tables;
})();
const [T0, T1, T2, T3, T4, T5, T6, T7] = TABLES as [
  Uint32Array,
  Uint32Array,
  Uint32Array,
  Uint32Array,
  Uint32Array,
  Uint32Array,
  Uint32Array,
  Uint32Array,
];

/** Continues from `before`, the CRC of what came earlier. */
export function crc32(bytes: Uint8Array, before = 0): number {
  let crc = ~before;
  let i = 0;
  const b = bytes as unknown as Readonly<Record<number, number>> as number[];
  for (const end = bytes.length - 7; i < end; i += 8) {
    const x = crc ^ (at(b, i) | (at(b, i + 1) << 8) | (at(b, i + 2) << 16) | (at(b, i + 3) << 24));
    crc =
      at(T7, x & 255) ^
      at(T6, (x >>> 8) & 255) ^
      at(T5, (x >>> 16) & 255) ^
      at(T4, x >>> 24) ^
      at(T3, at(b, i + 4)) ^
      at(T2, at(b, i + 5)) ^
      at(T1, at(b, i + 6)) ^
      at(T0, at(b, i + 7));
  }
  for (; i < bytes.length; i++) crc = at(T0, (crc ^ at(b, i)) & 255) ^ (crc >>> 8);
  return ~crc >>> 0;
}

const at = (table: ArrayLike<number>, index: number): number => table[index] as number;

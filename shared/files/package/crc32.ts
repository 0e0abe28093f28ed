/**
 * CRC-32 as zip archives use it (polynomial 0xEDB88320, reflected); eight tables in one list, so that eight bytes
 * go per step. Signed numbers: those stay whole numbers for the machine.
 */
const TABLES = ((): Int32Array => {
  const tables = new Int32Array(8 * 256);
  for (let n = 0; n < 256; n++) {
    let c = n;
    for (let k = 0; k < 8; k++) c = c & 1 ? 0xedb88320 ^ (c >>> 1) : c >>> 1;
    tables[n] = c;
  }
  for (let n = 256; n < tables.length; n++) {
    const before = tables[n - 256] as number;
    tables[n] = (tables[before & 255] as number) ^ (before >>> 8);
  }
  return tables;
})();

/** Continues from `before`, the CRC of what came earlier. */
export function crc32(bytes: Uint8Array, before = 0): number {
  let crc = ~before;
  let i = 0;
  const t = TABLES;
  for (const end = bytes.length - 7; i < end; i += 8) {
    const x =
      crc ^
      ((bytes[i] as number) |
        ((bytes[i + 1] as number) << 8) |
        ((bytes[i + 2] as number) << 16) |
        ((bytes[i + 3] as number) << 24));
    crc =
      (t[1792 + (x & 255)] as number) ^
      (t[1536 + ((x >>> 8) & 255)] as number) ^
      (t[1280 + ((x >>> 16) & 255)] as number) ^
      (t[1024 + (x >>> 24)] as number) ^
      (t[768 + (bytes[i + 4] as number)] as number) ^
      (t[512 + (bytes[i + 5] as number)] as number) ^
      (t[256 + (bytes[i + 6] as number)] as number) ^
      (t[bytes[i + 7] as number] as number);
  }
  for (; i < bytes.length; i++) crc = (t[(crc ^ (bytes[i] as number)) & 255] as number) ^ (crc >>> 8);
  return ~crc >>> 0;
}

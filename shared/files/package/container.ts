import type { DeflateOptions } from 'fflate';
import { Deflate, Inflate, inflateSync, strFromU8 } from 'fflate';
import { crc32 } from './crc32';
import { REFUSED, Refusal } from './refusal';
import { otherKind } from './otherKind';

/** One file of the archive, still packed. */
export interface ZipEntry {
  /** As stored; compared without letter case. */
  readonly name: string;
  readonly rawName: Uint8Array;
  readonly flags: number;
  readonly method: number;
  readonly time: number;
  readonly date: number;
  readonly crc: number;
  readonly size: number;
  /** The packed bytes, a view into the file. */
  readonly packed: Uint8Array;
}

interface Placed extends ZipEntry {
  readonly from: number;
  readonly to: number;
}

const MEGABYTE = 1_048_576;
/** Far above any workbook a hatchery keeps, far below what would stall a computer. */
export const LIMIT_MEGABYTES = 512;
/** Deflate cannot do better than about 1032 to 1; sheets of equal rows reach 200. */
const MAX_RATIO = 400;
const MAX_ENTRIES = 20_000;
const SLICE = MEGABYTE;
/** Unpacked at once, in under half a second; slices cost more work. */
const IN_ONE_GO = 64 * MEGABYTE;
/**
 * Above this, level 6 takes two and a half times as long as level 1 for a file a tenth smaller; nobody waits
 * for that unasked.
 */
const LARGE = 4 * MEGABYTE;

/** A table of 64 Ki places stays in the processor's cache; the usual million does not. The same size comes out. */
const QUICK_MEMORY = 4;

const u16 = (b: Uint8Array, i: number): number => (b[i] ?? 0) | ((b[i + 1] ?? 0) << 8);
const u32 = (b: Uint8Array, i: number): number => (u16(b, i) | (u16(b, i + 2) << 16)) >>> 0;

const END = 0x06054b50;
const END64 = 0x07064b50;
const CENTRAL = 0x02014b50;
const LOCAL = 0x04034b50;

function endRecord(file: Uint8Array): number {
  for (let i = file.length - 22; i >= 0 && i >= file.length - 22 - 65535; i--)
    if (u32(file, i) === END) return i;
  throw new Refusal(u32(file, 0) === LOCAL ? REFUSED.cutShort : REFUSED.notZip);
}

function readEntry(file: Uint8Array, at: number, limit: number): Placed & { readonly next: number } {
  if (at + 46 > limit || u32(file, at) !== CENTRAL)
    throw new Refusal(REFUSED.damaged('its list of parts cannot be read'));
  const flags = u16(file, at + 8);
  const method = u16(file, at + 10);
  const [packedSize, size, local] = [u32(file, at + 20), u32(file, at + 24), u32(file, at + 42)];
  const nameEnd = at + 46 + u16(file, at + 28);
  if (packedSize === 0xffffffff || size === 0xffffffff || local === 0xffffffff)
    throw new Refusal(REFUSED.zip64);
  if (flags & 0x2041) throw new Refusal(REFUSED.password);
  if (method !== 0 && method !== 8) throw new Refusal(REFUSED.packing);
  const rawName = file.slice(at + 46, nameEnd);
  if (local + 30 > limit || u32(file, local) !== LOCAL)
    throw new Refusal(REFUSED.damaged('a part is not where it should be'));
  const from = local + 30 + u16(file, local + 26) + u16(file, local + 28);
  if (from + packedSize > limit) throw new Refusal(REFUSED.cutShort);
  const localName = file.subarray(local + 30, local + 30 + u16(file, local + 26));
  if (localName.length !== rawName.length || localName.some((byte, i) => byte !== rawName[i]))
    throw new Refusal(REFUSED.damaged('a part has two names'));
  const name = strFromU8(rawName, !(flags & 0x800))
    .replaceAll('\\', '/')
    .replace(/^\//, '');
  return {
    name,
    rawName,
    flags,
    method,
    time: u16(file, at + 12),
    date: u16(file, at + 14),
    crc: u32(file, at + 16),
    size,
    packed: file.subarray(from, from + packedSize),
    from: local,
    to: from + packedSize,
    next: nameEnd + u16(file, at + 30) + u16(file, at + 32),
  };
}

/** A bomb hides its size by letting parts share packed bytes, or by packing nothing but zeros. */
function refuseBombs(entries: readonly Placed[]): void {
  const total = entries.reduce((sum, entry) => sum + entry.size, 0);
  if (total > LIMIT_MEGABYTES * MEGABYTE) throw new Refusal(REFUSED.tooLarge(LIMIT_MEGABYTES));
  let end = 0;
  for (const entry of entries.toSorted((a, b) => a.from - b.from)) {
    if (entry.from < end) throw new Refusal(REFUSED.bomb);
    end = entry.to;
    if (entry.size > MEGABYTE && entry.size > MAX_RATIO * entry.packed.length)
      throw new Refusal(REFUSED.bomb);
  }
}

/** Reads the archive's list of parts; nothing is unpacked yet. */
export function readContainer(file: Uint8Array): ZipEntry[] {
  const other = otherKind(file);
  if (other !== undefined) throw new Refusal(other);
  const end = endRecord(file);
  const count = u16(file, end + 10);
  const [length, start] = [u32(file, end + 12), u32(file, end + 16)];
  if (count === 0xffff || start === 0xffffffff || (end >= 20 && u32(file, end - 20) === END64))
    throw new Refusal(REFUSED.zip64);
  if (start + length > end || count > MAX_ENTRIES)
    throw new Refusal(REFUSED.damaged('its list of parts cannot be read'));
  const entries: Placed[] = [];
  const seen = new Set<string>();
  for (let i = 0, at = start; i < count; i++) {
    const entry = readEntry(file, at, end);
    at = entry.next;
    if (seen.has(entry.name.toLowerCase()))
      throw new Refusal(REFUSED.damaged(`the part ${entry.name} is there twice`));
    seen.add(entry.name.toLowerCase());
    entries.push(entry);
  }
  refuseBombs(entries);
  return entries;
}

/** Unpacks one part in slices and checks it against its checksum. */
export function* unpack(entry: ZipEntry): Generator<number, Uint8Array> {
  const damaged = (): Refusal => new Refusal(REFUSED.damaged(`the part ${entry.name} cannot be unpacked`));
  let bytes = entry.packed;
  if (entry.method === 8) {
    try {
      bytes =
        entry.size > IN_ONE_GO
          ? yield* inflateInSlices(entry)
          : inflateSync(entry.packed, { out: new Uint8Array(entry.size) });
    } catch (error) {
      if (error instanceof Refusal) throw error;
      throw damaged();
    }
  }
  if (bytes.length !== entry.size || crc32(bytes) !== entry.crc) throw damaged();
  return bytes;
}

function* inflateInSlices(entry: ZipEntry): Generator<number, Uint8Array> {
  const out = new Uint8Array(entry.size);
  let filled = 0;
  const stream = new Inflate((chunk) => {
    if (filled + chunk.length > out.length) throw new Refusal(REFUSED.bomb);
    out.set(chunk, filled);
    filled += chunk.length;
  });
  for (let at = 0; at < entry.packed.length; at += SLICE / 4) {
    stream.push(entry.packed.subarray(at, at + SLICE / 4), at + SLICE / 4 >= entry.packed.length);
    yield filled;
  }
  return out.subarray(0, filled);
}

type Level = 0 | 1 | 2 | 3 | 4 | 5 | 6 | 7 | 8 | 9;

const effort = (level: Level): DeflateOptions => (level === 1 ? { level, mem: QUICK_MEMORY } : { level });

/**
 * Packs a part in slices. New parts carry the first date a zip knows, so that equal input gives equal bytes.
 */
export function* pack(
  name: string,
  bytes: Uint8Array,
  level?: Level,
  like?: ZipEntry,
): Generator<number, ZipEntry> {
  const chunks: Uint8Array[] = [];
  const stream = new Deflate(effort(level ?? (bytes.length > LARGE ? 1 : 6)), (chunk) => {
    chunks.push(chunk);
  });
  for (let at = 0; at === 0 || at < bytes.length; at += SLICE) {
    stream.push(bytes.subarray(at, at + SLICE), at + SLICE >= bytes.length);
    if (bytes.length > SLICE) yield at;
  }
  return {
    name,
    rawName: like?.rawName ?? Uint8Array.from(name, (letter) => letter.charCodeAt(0)),
    flags: (like?.flags ?? 0) & 0x800,
    method: 8,
    time: like?.time ?? 0,
    date: like?.date ?? 0x21,
    crc: crc32(bytes),
    size: bytes.length,
    packed: join(chunks),
  };
}

export function join(chunks: readonly Uint8Array[]): Uint8Array {
  const out = new Uint8Array(chunks.reduce((sum, chunk) => sum + chunk.length, 0));
  let at = 0;
  for (const chunk of chunks) {
    out.set(chunk, at);
    at += chunk.length;
  }
  return out;
}

import { strFromU8 } from 'fflate';

/** Bytes of a text file → text, and how they were read. */
export interface Decoded {
  readonly text: string;
  readonly coding: 'UTF-8' | 'UTF-16' | 'Windows-1252';
}

/** Windows-1252 from 0x80 to 0x9F, in order; � where nothing is assigned. The rest is the same as Unicode. */
const WINDOWS = '€�‚ƒ„…†‡ˆ‰Š‹Œ�Ž��‘’“”•–—˜™š›œ�žŸ';
const CHUNK = 8192;

/** Length of a valid UTF-8 sequence that starts here, 0 when there is none. */
function sequence(bytes: Uint8Array, at: number): number {
  const first = bytes[at] ?? 0;
  const length =
    first < 0x80
      ? 1
      : first >= 0xc2 && first < 0xe0
        ? 2
        : first >= 0xe0 && first < 0xf0
          ? 3
          : first >= 0xf0 && first < 0xf5
            ? 4
            : 0;
  for (let i = 1; i < length; i++) if (((bytes[at + i] ?? 0) & 0xc0) !== 0x80) return 0;
  return length;
}

export function isUtf8(bytes: Uint8Array): boolean {
  for (let at = 0; at < bytes.length;) {
    const length = sequence(bytes, at);
    if (length === 0) return false;
    at += length;
  }
  return true;
}

function joined(codes: (at: number) => number, length: number): string {
  const pieces: string[] = [];
  for (let from = 0; from < length; from += CHUNK)
    pieces.push(
      String.fromCharCode(
        ...Array.from({ length: Math.min(CHUNK, length - from) }, (_, i) => codes(from + i)),
      ),
    );
  return pieces.join('');
}

const windows = (bytes: Uint8Array): string =>
  joined((at) => {
    const byte = bytes[at] ?? 0;
    return byte >= 0x80 && byte < 0xa0 ? WINDOWS.charCodeAt(byte - 0x80) : byte;
  }, bytes.length);

const utf16 = (bytes: Uint8Array, isLittle: boolean): string =>
  joined(
    (at) => ((bytes[2 * at + (isLittle ? 1 : 0)] ?? 0) << 8) | (bytes[2 * at + (isLittle ? 0 : 1)] ?? 0),
    bytes.length >> 1,
  );

/** Byte order mark first, then strict UTF-8, then what old programs on Windows write. */
export function decode(bytes: Uint8Array): Decoded {
  if (bytes[0] === 0xff && bytes[1] === 0xfe)
    return { text: utf16(bytes.subarray(2), true), coding: 'UTF-16' };
  if (bytes[0] === 0xfe && bytes[1] === 0xff)
    return { text: utf16(bytes.subarray(2), false), coding: 'UTF-16' };
  if (bytes[0] === 0xef && bytes[1] === 0xbb && bytes[2] === 0xbf)
    return { text: strFromU8(bytes.subarray(3)), coding: 'UTF-8' };
  if (isUtf8(bytes)) return { text: strFromU8(bytes), coding: 'UTF-8' };
  return { text: windows(bytes), coding: 'Windows-1252' };
}

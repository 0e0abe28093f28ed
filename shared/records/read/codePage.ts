import { strFromU8 } from 'fflate';

/** Bytes of a text file → text, and how they were read. */
export interface Decoded {
  readonly text: string;
  readonly coding: 'UTF-8' | 'UTF-16' | 'Windows-1252';
}

const decoded = (bytes: Uint8Array, label: string, fatal = false): string =>
  new TextDecoder(label, { fatal }).decode(bytes);

function strictUtf8(bytes: Uint8Array): string | undefined {
  try {
    return decoded(bytes, 'utf-8', true);
  } catch {
    return undefined;
  }
}

/**
 * Windows-1252 from 0x80 to 0x9F, in order; � where nothing is assigned. By hand, because the decoder of Node 20
 * reads these bytes as Latin-1 and loses € ‚ „ and 24 others (tests/records/codePage.test.ts shows it).
 */
const WINDOWS = '€�‚ƒ„…†‡ˆ‰Š‹Œ�Ž��‘’“”•–—˜™š›œ�žŸ';
const windows = (bytes: Uint8Array): string =>
  strFromU8(bytes, true).replace(/[\u0080-\u009f]/g, (letter) => WINDOWS.charAt(letter.charCodeAt(0) - 0x80));

/** Byte order mark first, then strict UTF-8, then what old programs on Windows write. */
export function decode(bytes: Uint8Array): Decoded {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return { text: decoded(bytes, 'utf-16le'), coding: 'UTF-16' };
  if (bytes[0] === 0xfe && bytes[1] === 0xff) return { text: decoded(bytes, 'utf-16be'), coding: 'UTF-16' };
  const text = strictUtf8(bytes);
  return text === undefined ? { text: windows(bytes), coding: 'Windows-1252' } : { text, coding: 'UTF-8' };
}

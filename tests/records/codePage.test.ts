import { execFileSync } from 'node:child_process';
import { decode } from '../../shared/records/read/codePage';

/** Text files of old programs; the witness is iconv (glibc), where it is installed. */

const all = Uint8Array.from({ length: 256 }, (_, i) => (i === 0 ? 0x41 : i));
/** Bytes without a meaning in Windows-1252 (Unicode's CP1252.TXT calls them UNDEFINED). */
const NOTHING = [0x81, 0x8d, 0x8f, 0x90, 0x9d];

const iconv = (bytes: Uint8Array): string =>
  execFileSync('iconv', ['-f', 'CP1252', '-t', 'UTF-8'], { input: bytes }).toString('utf8');

test('every byte of Windows-1252 that means something reads as another reader has it', () => {
  const known = all.filter((byte) => !NOTHING.includes(byte));
  expect(decode(known)).toEqual({ text: iconv(known), coding: 'Windows-1252' });
});

test('a byte that means nothing is seen, not lost', () => {
  for (const byte of NOTHING)
    expect(decode(Uint8Array.from([0x63, 0xe9, byte, 0x2e]))).toEqual({
      text: 'cé\ufffd.',
      coding: 'Windows-1252',
    });
});

test.each<[string, readonly number[], string, string]>([
  ['UTF-8 with its mark', [0xef, 0xbb, 0xbf, 0xc3, 0xa9], 'é', 'UTF-8'],
  ['UTF-8 without', [0x41, 0xe2, 0x82, 0xac], 'A€', 'UTF-8'],
  ['UTF-8 cut in a letter', [0x41, 0xe2, 0x82], 'Aâ‚', 'Windows-1252'],
  ['UTF-16 little', [0xff, 0xfe, 0xac, 0x20, 0x41, 0x00], '€A', 'UTF-16'],
  ['UTF-16 big', [0xfe, 0xff, 0x20, 0xac, 0x00, 0x41], '€A', 'UTF-16'],
])('%s', (_, bytes, text, coding) => {
  expect(decode(Uint8Array.from(bytes))).toEqual({ text, coding });
});

test('the decoder of the platform is no help with Windows-1252 everywhere', () => {
  const platform = new TextDecoder('windows-1252').decode(Uint8Array.from([0x80, 0x84]));
  // Latin-1 in Node 20; the day this says '€„' on every platform we run on, the table can go.
  expect(['\u0080\u0084', '€„']).toContain(platform);
  expect(decode(Uint8Array.from([0x80, 0x84])).text).toBe('€„');
});

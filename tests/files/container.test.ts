import { zipSync } from 'fflate';
import { readContainer, unpack } from '../../shared/files/package/container';
import { REFUSED, Refusal } from '../../shared/files/package/refusal';
import { runNow } from '../../shared/base/steps';

/**
 * The list of parts of an archive, byte by byte (APPNOTE.TXT of the zip format, 4.3): each side of every limit. Files
 * are packed by fflate, then single fields are written over.
 */
const bytes = (length: number, of = (i: number) => (i * 2_654_435_761) >>> 13): Uint8Array =>
  Uint8Array.from({ length }, (_, i) => of(i));
const zip = (files: Readonly<Record<string, Uint8Array>> = { 'a.txt': bytes(40), 'b.txt': bytes(50) }) =>
  zipSync(files, { level: 6 });
const find = (file: Uint8Array, signature: number, nth = 0): number => {
  const view = new DataView(file.buffer, file.byteOffset);
  for (let i = 0, n = 0; i + 4 <= file.length; i++)
    if (view.getUint32(i, true) === signature && n++ === nth) return i;
  throw new Error('not there');
};
const END = 0x06054b50;
const CENTRAL = 0x02014b50;
const LOCAL = 0x04034b50;
/** A copy with some fields written over: place, bytes of the field, value. */
const over = (
  file: Uint8Array,
  ...fields: readonly (readonly [at: number, size: 2 | 4, value: number])[]
): Uint8Array => {
  const copy = Uint8Array.from(file);
  const view = new DataView(copy.buffer);
  for (const [at, size, value] of fields)
    if (size === 2) view.setUint16(at, value, true);
    else view.setUint32(at, value, true);
  return copy;
};
const said = (file: Uint8Array): string => {
  try {
    return readContainer(file)
      .map(({ name }) => name)
      .join();
  } catch (error) {
    if (error instanceof Refusal) return error.message;
    throw error;
  }
};
const UNREADABLE = REFUSED.damaged('its list of parts cannot be read');
const joined = (...parts: readonly Uint8Array[]): Uint8Array =>
  Uint8Array.from(parts.flatMap((part) => [...part]));

const file = zip();
const end = find(file, END);
const first = find(file, CENTRAL);

test('both parts, by name; without a slash in front, slashes of one kind', () => {
  expect(said(file)).toBe('a.txt,b.txt');
  expect(said(zip({ '/xl\\a.txt': bytes(3) }))).toBe('xl/a.txt');
  expect(said(zip({ 'é.txt': bytes(3) }))).toBe('é.txt');
});
test('what the end of the list says', () => {
  expect(said(over(file, [end + 10, 2, 0xffff]))).toBe(REFUSED.zip64);
  expect(said(over(file, [end + 10, 2, 0xfffe]))).toBe(UNREADABLE);
  expect(said(over(file, [end + 10, 2, 3]))).toBe(UNREADABLE);
  expect(said(over(file, [end + 10, 2, 1]))).toBe('a.txt');
  expect(said(over(file, [end + 16, 4, 0xffffffff]))).toBe(REFUSED.zip64);
  expect(said(over(file, [end + 12, 4, end - first]))).toBe('a.txt,b.txt');
  expect(said(over(file, [end + 12, 4, end - first + 1]))).toBe(UNREADABLE);
  // The locator of a larger form stands twenty bytes before the end.
  const locator = over(
    bytes(20, () => 0),
    [0, 4, 0x07064b50],
  );
  expect(said(joined(file.slice(0, end), locator, file.slice(end)))).toBe(REFUSED.zip64);
  expect(
    said(
      joined(
        file.slice(0, end),
        bytes(20, () => 0),
        file.slice(end),
      ),
    ),
  ).toBe('a.txt,b.txt');
  expect(said(joined(file.slice(0, end), locator, bytes(1), file.slice(end)))).toBe('a.txt,b.txt');
});
test('a remark of 65,535 letters may follow, not one more', () => {
  expect(
    said(
      joined(
        file,
        bytes(65_535, () => 32),
      ),
    ),
  ).toBe('a.txt,b.txt');
  expect(
    said(
      joined(
        file,
        bytes(65_536, () => 32),
      ),
    ),
  ).toBe(REFUSED.cutShort);
});
test.each([
  ['a password', 0x1, REFUSED.password],
  ['a password of the stronger kind', 0x40, REFUSED.password],
  ['a hidden list', 0x2000, REFUSED.password],
  ['sizes behind the part', 0x8, 'a.txt,b.txt'],
  ['names in UTF-8', 0x800, 'a.txt,b.txt'],
])('a part with %s', (_, flags, answer) => {
  expect(said(over(file, [first + 8, 2, flags]))).toBe(answer);
});
test.each([
  [0, 'a.txt,b.txt'],
  [8, 'a.txt,b.txt'],
  [7, REFUSED.packing],
  [9, REFUSED.packing],
  [1, REFUSED.packing],
])('a part packed by method %i', (method, answer) => {
  expect(said(over(file, [first + 10, 2, method]))).toBe(answer);
});
test('sizes and places of the larger form, places outside the file', () => {
  for (const at of [20, 24, 42]) expect(said(over(file, [first + at, 4, 0xffffffff]))).toBe(REFUSED.zip64);
  const astray = REFUSED.damaged('a part is not where it should be');
  expect(said(over(file, [first + 42, 4, 1]))).toBe(astray);
  expect(said(over(file, [first + 42, 4, end - 29]))).toBe(astray);
  const packed = file.length;
  expect(said(over(file, [first + 20, 4, packed]))).toBe(REFUSED.cutShort);
  const last = zip({ 'b.txt': bytes(50) });
  const [listed, from] = [find(last, CENTRAL), 30 + 5];
  const most = find(last, END) - from;
  expect(said(over(last, [listed + 20, 4, most]))).toBe('b.txt');
  expect(said(over(last, [listed + 20, 4, most + 1]))).toBe(REFUSED.cutShort);
  expect(said(over(file, [first, 4, 0]))).toBe(UNREADABLE);
  expect(said(over(file, [find(file, LOCAL), 4, 0]))).not.toBe('a.txt,b.txt');
});
test('a part with two names, two parts with one', () => {
  expect(said(over(file, [30, 2, 0x7a7a]))).toBe(REFUSED.damaged('a part has two names'));
  expect(said(zip({ 'a.txt': bytes(4), 'A.TXT': bytes(5) }))).toBe(
    REFUSED.damaged('the part A.TXT is there twice'),
  );
});
test('a bomb: parts that share bytes, more than 400 times what is packed from a megabyte on', () => {
  const [a, b] = [find(file, LOCAL), find(file, LOCAL, 1)];
  expect(said(over(file, [first + 20, 4, b - a - 35]))).toBe('a.txt,b.txt');
  expect(said(over(file, [first + 20, 4, b - a - 34]))).toBe(REFUSED.bomb);
  const size = (at: number, value: number) => said(over(file, [at + 24, 4, value], [at + 20, 4, 40]));
  expect(size(first, 1_048_576)).toBe('a.txt,b.txt');
  expect(size(first, 1_048_577)).toBe(REFUSED.bomb);
  const noise = zip({ 'n.bin': bytes(3000, (i) => (Math.imul(i + 7, 2_246_822_519) >>> 11) ^ (i * i)) });
  const at = find(noise, CENTRAL);
  const packed = new DataView(noise.buffer).getUint32(at + 20, true);
  expect(packed).toBeGreaterThan(2700);
  expect(said(over(noise, [at + 24, 4, 400 * packed]))).toBe('n.bin');
  expect(said(over(noise, [at + 24, 4, 400 * packed + 1]))).toBe(REFUSED.bomb);
  expect(size(first, 512 * 1_048_576 - 50)).toBe(REFUSED.bomb);
  expect(size(first, 512 * 1_048_576 - 49)).toBe(REFUSED.tooLarge(512));
});
test('a part is unpacked and compared with its checksum and size', () => {
  const unpacked = (of: Uint8Array) => {
    const [entry] = readContainer(of);
    if (!entry) throw new Error('no part');
    try {
      return [...runNow(unpack(entry))];
    } catch (error) {
      if (error instanceof Refusal) return error.message;
      throw error;
    }
  };
  const damaged = REFUSED.damaged('the part a.txt cannot be unpacked');
  expect(unpacked(file)).toEqual([...bytes(40)]);
  expect(unpacked(over(file, [first + 16, 4, 1]))).toBe(damaged);
  expect(unpacked(over(file, [first + 24, 4, 41]))).toBe(damaged);
  expect(unpacked(over(file, [first + 24, 4, 39]))).toBe(damaged);
  const stored = zipSync({ 'a.txt': bytes(40) }, { level: 0 });
  expect(unpacked(stored)).toEqual([...bytes(40)]);
});

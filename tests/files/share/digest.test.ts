import { createHash } from 'node:crypto';
import fc from 'fast-check';
import { crc32 as reference } from 'node:zlib';
import { crc32 } from '../../../shared/files/package/crc32';
import { digestOf } from '../../../shared/files/share/proof/digests';
import { canonical, isPlainNumber } from '../../../shared/files/cells/values';

// FIPS 180-4, examples of NIST (csrc.nist.gov, SHA256.pdf); typed from memory, and confirmed by Node's own
// implementation below.
test.each([
  ['abc', 'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad'],
  [
    'abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq',
    '248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1',
  ],
  ['', 'e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855'],
])('SHA-256 of %j', (text, hex) => {
  expect(digestOf([text])).toBe(hex);
  expect(createHash('sha256').update(text).digest('hex')).toBe(hex);
});

test('a digest agrees with another implementation on any lines', () => {
  fc.assert(
    fc.property(
      fc.array(fc.string({ unit: 'grapheme', maxLength: 200 }), { maxLength: 8 }),
      (lines) => digestOf(lines) === createHash('sha256').update(lines.join('')).digest('hex'),
    ),
    { seed: 3, numRuns: 500 },
  );
});

test('the checksum of zip agrees with another implementation', () => {
  const table = (data: Uint8Array): number => {
    let crc = 0xffffffff;
    for (const byte of data) {
      crc ^= byte;
      for (let k = 0; k < 8; k++) crc = crc & 1 ? (crc >>> 1) ^ 0xedb88320 : crc >>> 1;
    }
    return ~crc >>> 0;
  };
  // Node has one of its own only from 20.15 on.
  const other = typeof reference === 'function' ? reference : table;
  fc.assert(
    fc.property(
      fc.uint8Array({ maxLength: 300 }),
      (data) => crc32(data) === other(data) && crc32(data) === table(data),
    ),
    { seed: 4, numRuns: 300 },
  );
});

test('a number has one form however it is stored', () => {
  for (const raw of ['0.1', '1E-1', '.1', '0.10', '0.1000000000000000055'])
    expect(canonical({ type: 'n', raw })).toBe('n0.1');
  expect(canonical({ type: 'n', raw: '0.30000000000000004' })).toBe('n0.3');
  expect(canonical({ type: 'b', raw: 'true' })).toBe('b1');
  expect(canonical({ type: 'str', raw: '' })).toBe('');
});

test('what is taken for plain prints the same when it is read', () => {
  const texts = fc.oneof(
    fc.double({ noNaN: true }).map(String),
    fc.stringMatching(/^-?[0-9]{0,4}\.?[0-9]{0,5}$/),
    fc.integer().map(String),
  );
  fc.assert(
    fc.property(texts, (raw) => {
      const data = new TextEncoder().encode(raw);
      return !isPlainNumber(data, 0, data.length) || canonical({ type: 'n', raw }) === `n${raw}`;
    }),
    { seed: 5, numRuns: 5000 },
  );
  expect(
    ['8', '6.53', '-0.25', '120000', '0'].every((raw) =>
      isPlainNumber(new TextEncoder().encode(raw), 0, raw.length),
    ),
  ).toBe(true);
});

test('the digest of lines is the digest of their text', () => {
  const lines = Array.from({ length: 3000 }, (_, i) => `${i}\t2\tn${i / 7}\n`);
  expect(digestOf(lines)).toBe(createHash('sha256').update(lines.join('')).digest('hex'));
  const long = ['a'.repeat(100_000), 'b'];
  expect(digestOf(long)).toBe(createHash('sha256').update(long.join('')).digest('hex'));
});

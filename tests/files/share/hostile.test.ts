import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { strFromU8, unzipSync } from 'fflate';
import { freeze } from '../../../shared/catalogue/sharing';
import { readXlsx } from '../../../shared/files';
import { standardFaults } from '../support/standard';
import { partsOf } from '../support/support';
import { OPTIONS } from './support/parts';
import { valuesOf } from './support/read';

/**
 * Workbooks of three other programs (see tests/data/files/make.py), in which eight prices of one column are
 * hidden wherever such a file can keep them. The copy is unzipped by fflate and searched here, without any code
 * of ours: every number of every part, in every spelling.
 */

const FOLDER = join(__dirname, '..', '..', 'data', 'files');
const PRICES = [4817.25, 731.5, 9264, 58213, 640.75, 7391, 2856.5, 10477];
const FILES = readdirSync(FOLDER).filter((name) => name.endsWith('.xlsx'));
const bytesOf = (name: string): Uint8Array => new Uint8Array(readFileSync(join(FOLDER, name)));

/** Sizes and places of drawings are counted in units of which 12,700 make a point. */
const STRUCTURE = /<(?:xdr|a|c14|v|x):(?:ext|off|from|to|row|col|rowOff|colOff|Anchor)\b[^>]*>[^<]*/g;

function pricesIn(text: string): number[] {
  const tokens = text.replace(STRUCTURE, '').match(/\d[\d.,'\u00a0\u202f]*/g) ?? [];
  const found = new Set<number>();
  for (const token of tokens)
    for (const spelled of [
      token,
      token.replaceAll(',', ''),
      token.replaceAll('.', '').replace(',', '.'),
      token.replace(/[^\d.]/g, ''),
    ])
      for (const price of PRICES)
        if (Math.abs(Number(spelled.replace(/[.,]+$/, '')) - price) < 1e-9) found.add(price);
  return [...found];
}

function search(file: Uint8Array): Record<string, number[]> {
  const found: Record<string, number[]> = {};
  for (const [name, bytes] of Object.entries(unzipSync(file))) {
    const narrow = strFromU8(bytes);
    const wide = strFromU8(bytes, true).replaceAll('\0', '');
    const prices = [...new Set([...pricesIn(narrow), ...pricesIn(wide)])];
    if (prices.length > 0) found[name] = prices;
  }
  return found;
}

test('there are twelve books', () => {
  expect(FILES).toHaveLength(12);
});

describe.each(FILES)('%s', (name) => {
  const file = bytesOf(name);
  const before = file.slice();
  const result = freeze(file, { ...OPTIONS, blank: ['Orders!C2:C9'] });

  test('holds the prices before', () => {
    expect(Object.keys(search(file)).length).toBeGreaterThan(0);
  });

  test('holds none of them after, and says so', () => {
    if (result.kind !== 'made') throw new Error(result.sentence);
    expect(search(result.bytes)).toEqual({});
    expect(result.report.proof?.places).toEqual([]);
    expect(file).toEqual(before);
  });

  test('breaks no rule of the standard that the book kept, opens, and a second copy is the same file', () => {
    if (result.kind !== 'made') throw new Error(result.sentence);
    const known = new Set(standardFaults(partsOf(file)));
    expect(standardFaults(partsOf(result.bytes)).filter((fault) => !known.has(fault))).toEqual([]);
    expect(readXlsx(result.bytes)).not.toHaveProperty('fault');
    expect(freeze(result.bytes, { ...OPTIONS, blank: ['Orders!C2:C9'] }).kind).toBe('unchanged');
  });
});

test('no combination of the sums that stay gives one price or two together', async () => {
  const result = freeze(bytesOf('running.xlsx'), { ...OPTIONS, blank: ['Orders!C2:C9'] });
  if (result.kind !== 'made') throw new Error(result.sentence);
  const left = [...(await valuesOf(result.bytes))]
    .filter(([place, value]) => place.startsWith('Sums!') && typeof value === 'number')
    .map(([, value]) => Number(value));
  expect(left.length).toBeGreaterThan(1);
  const secrets = PRICES.flatMap((a, i) => [a, ...PRICES.slice(i + 1).map((b) => a + b)]);
  const reach = left.reduce<number[]>((sums, x) => sums.flatMap((sum) => [sum - x, sum, sum + x]), [0]);
  for (const sum of reach) for (const secret of secrets) expect(Math.abs(sum - secret)).toBeGreaterThan(1e-6);
});

import { freeze } from '../../../shared/catalogue/sharing';
import { seeded } from '../../files/share/support/seeded';
import { OPTIONS, unzip, zip } from '../../files/share/support/parts';
import { season, seasonCells, seasonParts } from '../../files/share/support/season';

/**
 * Damaged files: whatever happens, the work ends, and a value in the copy is the one the damaged file held.
 * Half of the files are damaged as packed (most are caught by a checksum), half inside their XML with
 * checksums made good again.
 */
const PACKED = 500;
const INSIDE = 500;

const storedValues = (xml: string): Map<string, string> =>
  new Map(
    [...xml.matchAll(/<c r="([A-Z]+\d+)"[^>]*>(?:<f[^>]*>[^<]*<\/f>|<f[^>]*\/>)?<v>([^<]*)<\/v><\/c>/g)].map(
      (match) => [match[1] ?? '', match[2] ?? ''],
    ),
  );

function damage(bytes: Uint8Array, chance: () => number): Uint8Array {
  if (chance() < 0.15) return bytes.slice(0, Math.floor(chance() * bytes.length));
  const out = bytes.slice();
  for (let n = 1 + Math.floor(chance() * 3); n > 0; n--)
    out[Math.floor(chance() * out.length)] = Math.floor(chance() * 256);
  return out;
}

function tryOne(file: Uint8Array): 'made' | 'unchanged' | 'refused' {
  const result = freeze(file, { ...OPTIONS, acceptProblems: true });
  if (result.kind === 'made') {
    const [was, is] = [unzip(file), unzip(result.bytes)];
    for (const name of ['xl/worksheets/sheet1.xml', 'xl/worksheets/sheet2.xml']) {
      const old = storedValues(was[name] ?? '');
      for (const [place, value] of storedValues(is[name] ?? ''))
        if (old.has(place)) expect([place, value]).toEqual([place, old.get(place)]);
    }
  } else if (result.kind === 'refused') expect(result.sentence.length).toBeGreaterThan(20);
  return result.kind;
}

test(`${PACKED} files damaged as packed`, () => {
  const chance = seeded(11);
  const good = season();
  const kinds = Array.from({ length: PACKED }, () => tryOne(damage(good, chance)));
  expect(kinds.filter((kind) => kind === 'refused').length).toBeGreaterThan(PACKED * 0.6);
}, 120_000);

test(`${INSIDE} files damaged inside their XML`, () => {
  const chance = seeded(23);
  const parts = seasonParts();
  const names = [
    'xl/worksheets/sheet1.xml',
    'xl/worksheets/sheet1.xml',
    'xl/worksheets/sheet2.xml',
    'xl/workbook.xml',
    'xl/tables/table1.xml',
    '[Content_Types].xml',
    'xl/_rels/workbook.xml.rels',
    '_rels/.rels',
    'xl/drawings/drawing1.xml',
  ];
  const kinds = Array.from({ length: INSIDE }, () => {
    const name = names[Math.floor(chance() * names.length)] ?? '';
    return tryOne(zip({ ...parts, [name]: damage(new TextEncoder().encode(String(parts[name])), chance) }));
  });
  expect(kinds.filter((kind) => kind === 'made').length).toBeGreaterThan(20);
  expect(kinds.filter((kind) => kind === 'refused').length).toBeGreaterThan(20);
  expect(Object.keys(seasonCells).length).toBeGreaterThan(50);
}, 120_000);

import { execFileSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { freeze } from '../../../shared/catalogue/sharing';
import { OPTIONS } from '../../files/share/support/parts';

/**
 * The twelve hostile books once more, searched by Python's own zip and XML readers (tests/data/files/search.py),
 * which share nothing with the search that the copy's report rests on: no code, no parser, no language.
 */

const FOLDER = join(__dirname, '../../data/files');
const PRICES = [4817.25, 731.5, 9264, 58213, 640.75, 7391, 2856.5, 10477];
const BOOKS = readdirSync(FOLDER).filter((name) => name.endsWith('.xlsx'));
type Found = Readonly<Record<string, readonly number[]>>;
const search = (files: readonly string[]): Found[] =>
  execFileSync('python3', [join(FOLDER, 'search.py'), PRICES.join(), ...files], { encoding: 'utf8' })
    .trim()
    .split('\n')
    .map((line) => JSON.parse(line) as Found);

test('no price is in a copy; every book held all of them before', () => {
  const folder = mkdtempSync(join(tmpdir(), 'spawnbook-search-'));
  try {
    const copies = BOOKS.map((name) => {
      const file = new Uint8Array(readFileSync(join(FOLDER, name)));
      const result = freeze(file, { ...OPTIONS, blank: ['Orders!C2:C9'] });
      if (result.kind !== 'made') throw new Error(`${name}: ${result.sentence}`);
      expect([name, result.report.proof?.places]).toEqual([name, []]);
      const path = join(folder, name);
      writeFileSync(path, result.bytes);
      return path;
    });
    const before = search(BOOKS.map((name) => join(FOLDER, name)));
    for (const found of before) expect(new Set(Object.values(found).flat()).size).toBe(PRICES.length);
    const after = search(copies);
    expect(Object.fromEntries(after.map((found, i) => [BOOKS[i], Object.keys(found)]))).toEqual(
      Object.fromEntries(BOOKS.map((name) => [name, []])),
    );
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
});

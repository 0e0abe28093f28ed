import { readFileSync } from 'node:fs';
import { join } from 'node:path';

/** Rows of a comma-separated file in tests/data, by heading. Quoted cells may hold commas. */
export const tableOf = (name: string): Readonly<Record<string, string>>[] => {
  const lines = readFileSync(join(__dirname, '..', 'data', name), 'utf8')
    .trim()
    .split(/\r?\n/)
    .map(cellsOf);
  const [heads = [], ...rows] = lines;
  return rows.map((cells) => Object.fromEntries(heads.map((head, i) => [head, cells[i] ?? ''])));
};

const cellsOf = (line: string): string[] =>
  [...line.matchAll(/(?:^|,)(?:"((?:[^"]|"")*)"|([^,]*))/g)].map((m) =>
    (m[1] ?? m[2] ?? '').replaceAll('""', '"'),
  );

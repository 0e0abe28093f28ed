import type { Near } from '../../../base/near';
import type { Cell } from '../../../base/values';
import type { Line } from '../check';
import { dayAfter, edge, times } from '../check';

/** Lines written twice or copied, and what sheets say of each other, change at numbers somebody chose. */
const lines = (n: number, line: (i: number) => Line): readonly Line[] =>
  Array.from({ length: n }, (_, i) => line(i));
/** Numbers without any order. */
const varied = (i: number, c: number): number =>
  1000 + ((Math.imul(Math.imul(i + 7, 0x9e3779b1) ^ (c + 3), 0x85ebca6b) >>> 9) % 977);

/** So many lines, the first few written again further down; of every line so many cells are filled. */
const twice = (n: number, again: number, filled = 6, columns = 6, texts = 0): number =>
  times('WHOLE.TWICE', [
    Array.from({ length: columns }, (_, c) => `Zq${c + 1}`),
    ...lines(n, (i) => {
      const source = i >= n - again ? i - (n - again) : i;
      return Array.from({ length: columns }, (_, c): Cell =>
        c >= filled && source < again ? null : c < texts ? `w${source}x${c}` : varied(source, c),
      );
    }),
  ]);

const named = (n: number, again: number, isNumbered = false): number =>
  times('WHOLE.NAME', [
    ['Run', 'Eggs', 'Hatched'],
    ...lines(n, (i) => {
      const k = i >= n - again ? 2 * (i - (n - again)) : i;
      return [
        isNumbered ? 700 + 3 * ((k * 5) % 11) : `R${k + 1}a`,
        81_000 + varied(i, 1),
        41_000 + varied(i, 2),
      ];
    }),
  ]);

/** Lines of figures, of one so many stay as in the line above; `usual` of every line do. */
const copied = (columns: number, same: number, usual = 0, n = 14, repeats = 0): number => {
  const table: number[][] = [];
  for (let i = 0; i < n; i++)
    table.push(
      Array.from({ length: columns }, (_, c) => {
        const isUsual = i > 0 && (c + i * usual) % columns < usual;
        const isCopied = i === n - 4 && c < same;
        const isRepeated = c === 0 && i < 2 * repeats && i % 2 === 1;
        return isUsual || isCopied || isRepeated ? (table[i - 1]?.[c] ?? 0) : varied(i, c) / 10;
      }),
    );
  return times('WHOLE.COPIED', [Array.from({ length: columns }, (_, c) => `Zq${c + 1}`), ...table]);
};

/** Two sheets that say the same of their lines. */
interface Sheets {
  readonly n: number;
  readonly off: number;
  readonly by?: number;
  readonly value?: (i: number) => number;
  readonly name?: (i: number) => string | null;
}
const sheets = ({
  n,
  off,
  by = 40,
  value = (i) => 41_000 + varied(i, 1),
  name = (i) => `R${i + 1}`,
}: Sheets): number =>
  times(
    'WHOLE.SHEETS',
    [['Run', 'Larvae', 'Eggs'], ...lines(n, (i) => [name(i), value(i), 91_000 + varied(i, 3)])],
    [
      ['Run', 'Larvae out', 'Feed (g)'],
      ...lines(n, (i) => [name(i), Number((value(i) + (i < off ? by : 0)).toFixed(6)), 300 + varied(i, 2)]),
    ],
  );
/** Names of one sheet, and lines of another that use them; so many lines have a name of their own. */
const stray = (names: number, rows: number, own: number, used = names): number =>
  times(
    'WHOLE.SHEETS',
    [['Tank', 'Volume (L)'], ...lines(names, (i) => [`T${i + 1}`, 800 + varied(i, 1)])],
    [
      ['Date', 'Tank', 'Feed (g)'],
      ...lines(rows, (i) => [dayAfter(i), i < own ? `X${i + 1}` : `T${(i % used) + 1}`, 300 + varied(i, 2)]),
    ],
  );
const sold = (runs: number, over: number): number =>
  times(
    'WHOLE.SHEETS',
    [['Run', 'Fry'], ...lines(runs, (i) => [`R${i + 1}`, 20_000 + varied(i, 1)])],
    [
      ['Date', 'Run', 'Sold'],
      ...lines(2 * runs, (i) => [
        dayAfter(i),
        `R${(i % runs) + 1}`,
        i % runs < over ? 15_000 + 10 * i : 4000 + varied(i, 2),
      ]),
    ],
  );

export const NEAR: readonly Near[] = [
  edge('Lines written twice, however few there are', 2, (again: number) => twice(16, again), [2, 3], [2, 0]),
  edge('Share of lines written twice', 0.1, (n: number) => twice(n, 3), [29, 30], [0, 3]),
  edge('Cells of a line that is known again', 4, (filled: number) => twice(16, 1, filled), [3, 4], [0, 1]),
  edge(
    'Share of the cells of a line that is known again',
    0.5,
    (filled: number) => twice(16, 1, filled, 20),
    [9, 10],
    [0, 1],
  ),
  edge(
    'Numbers of a line that is known again',
    2,
    (texts: number) => twice(16, 1, 6, 6, texts),
    [5, 4],
    [0, 1],
  ),
  edge('Names from which on each line has its own', 5, (n: number) => named(n, 1), [4, 5], [0, 1]),
  edge('Share of names that may come again', 0.08, (n: number) => named(n, 2), [24, 25], [0, 2]),
  edge('Numbers of lines that are names', 5, (n: number) => named(n, 1, true), [5, 6], [0, 1]),
  edge('Figures that stay when a line is copied', 3, (same: number) => copied(3, same), [2, 3], [0, 1]),
  edge(
    'Share of figures that stay when a line is copied',
    0.6,
    (same: number) => copied(20, same),
    [12, 13],
    [0, 1],
  ),
  edge(
    'Share of figures that stay in every line',
    0.34,
    (usual: number) => copied(59, 53, usual, 10),
    [20, 19],
    [0, 1],
  ),
  edge(
    'Share of numbers that come again in a column written finely',
    0.45,
    (repeats: number) => copied(3, 3, 0, 41, repeats),
    [18, 17],
    [0, 1],
  ),
  edge('Numbers of a column written finely', 6, (n: number) => copied(3, 3, 0, n), [5, 6], [0, 1]),
  edge('Lines two sheets agree in', 3, (n: number) => sheets({ n, off: 1 }), [3, 4], [0, 1]),
  edge('Share of lines two sheets agree in', 0.65, (off: number) => sheets({ n: 20, off }), [8, 7], [0, 7]),
  edge(
    'Money two sheets may differ by',
    0.0051,
    (by: number) => sheets({ n: 12, off: 1, by, value: (i) => 100.25 + varied(i, 1) }),
    [0.005, 0.0055],
    [0, 1],
  ),
  edge(
    'Least number that is no chance',
    100,
    (x: number) => sheets({ n: 12, off: 1, by: 7, value: (i) => (i > 9 ? x : 20 + i) + (i === 11 ? 2 : 0) }),
    [95, 105],
    [0, 1],
  ),
  edge(
    'Letters of a name',
    24,
    (x: number) => sheets({ n: 12, off: 1, name: (i) => `${'abcdefghijkl'[i] ?? ''}${'m'.repeat(x - 1)}` }),
    [24, 25],
    [1, 0],
  ),
  edge(
    'Share of lines with a name',
    0.6,
    (x: number) => sheets({ n: 20, off: 1, name: (i) => (i < x ? `R${i + 1}` : null) }),
    [11, 12],
    [0, 1],
  ),
  edge('Names of which a stray one is none', 5, (names: number) => stray(names, 40, 1), [4, 5], [0, 1]),
  edge('Lines from which on a stray name is odd', 8, (rows: number) => stray(6, rows, 1, 5), [7, 8], [0, 1]),
  edge('Share of lines with a stray name', 0.08, (rows: number) => stray(6, rows, 2), [24, 25], [0, 2]),
  edge('Names that are known', 4, (used: number) => stray(6, 20, 1, used), [3, 4], [0, 1]),
  edge('Runs of which one is sold over', 4, (runs: number) => sold(runs, 1), [3, 4], [0, 1]),
  edge('Share of runs that are sold over', 0.2, (runs: number) => sold(runs, 3), [14, 15], [0, 3]),
  edge(
    'Share of names that stand there once in a sheet of names',
    0.97,
    (n: number) => sheets({ n, off: 1, name: (i) => `R${i === n - 1 ? 3 : i + 1}` }),
    [33, 34],
    [0, 1],
  ),
  edge(
    'Numbers that are no chance',
    2,
    (n: number) => sheets({ n: 12, off: 1, by: 7, value: (i) => (i >= 12 - n ? 105 + i : 20 + 2 * i) }),
    [1, 2],
    [0, 1],
  ),
];

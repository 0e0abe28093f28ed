// Long: small tables, as data
import type { Near } from '../../../base/near';
import type { Line } from '../check';
import { dayAfter, edge, tablesOf } from '../check';
import { cellOf, KNOWN, STRANGE } from './headings';

/** Where a table ends, and what is no line of it, changes at numbers somebody chose. */
const lines = (n: number, line: (i: number) => Line): readonly Line[] =>
  Array.from({ length: n }, (_, i) => line(i));
const row = (columns: number, i: number): Line => Array.from({ length: columns }, (_, c) => cellOf(c, i));
/** Records of each table, and why lines are none. */
const kept = (values: readonly Line[]): string =>
  tablesOf(values)
    .map(({ length, skipped }) => [length, ...skipped.map(({ why }) => why)].join(' '))
    .join(', ');

/** Lines of which so many have a day, others a number or nothing there, and a sum below. */
const dated = ([days, all, other]: readonly [days: number, all: number, other?: number]): string =>
  kept([
    KNOWN.slice(0, 4),
    ...lines(all, (i) => [
      i < days ? dayAfter(i) : other === undefined ? null : other + i,
      1.2,
      110 + i,
      640 + i,
    ]),
    [null, null, '=SUM(C2:C5)', null],
  ]);
/** A remark below a line of sums. */
const remark = (above: number): string =>
  kept([
    KNOWN.slice(0, 5),
    ...lines(above, (i) => row(5, i)),
    [null, 'Total', 900, null, 410_000],
    ['Zrabe', 5, null, 12, 8],
  ]);
/** A second table right below, of so many columns. */
const below = ([columns, above]: readonly [columns: number, above: number]): string =>
  kept([
    KNOWN.slice(0, above),
    ...lines(5, (i) => row(above, i)),
    ['Temperature (°C)', 'Fry', 'Hatched', 'Eggs', 'Feed (g)'].slice(0, columns),
    ...lines(5, (i) => Array.from({ length: columns }, (_, c) => 100 + c + 7 * i)),
  ]);
const OTHERS = ['Females', 'Males', 'Larvae', 'Deaths', 'Feed', 'Oxygen', 'pH', 'Length', 'Price', 'Buyer'];
const belowKnown = ([known, all]: readonly [known: number, all: number]): string =>
  kept([
    KNOWN.slice(0, all),
    ...lines(5, (i) => row(all, i)),
    Array.from({ length: all }, (_, c) => (c < known ? OTHERS[c] : STRANGE[c]) ?? ''),
    ...lines(5, (i) => Array.from({ length: all }, (_, c) => 100 + c + 7 * i)),
  ]);
/** Words further down after a gap: under so many columns that hold words in so many of ten lines. */
const worded = ([columns, all, words]: readonly [columns: number, all: number, words: number]): string =>
  kept([
    KNOWN.slice(0, all),
    ...lines(10, (i) =>
      Array.from({ length: all }, (_, c) =>
        c < columns ? (i < words ? `${STRANGE[(i + c) % 12] ?? ''}${i}` : 5 + i) : cellOf(c, i),
      ),
    ),
    [null],
    OTHERS.slice(0, all),
    ...lines(5, (i) => Array.from({ length: all }, (_, c) => 100 + c + 7 * i)),
  ]);
const wordsFrom = ([from, to]: readonly [from: number, to: number]): string =>
  kept([
    KNOWN.slice(0, 3),
    ...lines(16, (i) =>
      i >= from && i < to
        ? [0, 3, 5].map((c) => `${STRANGE[(i + c) % 12] ?? ''}${i}`)
        : [dayAfter(i), 1.2, 110 + i],
    ),
    [null],
    OTHERS.slice(0, 3),
    ...lines(5, (i) => [100 + i, 101 + 7 * i, 5 + i]),
  ]);
/** A table of tanks by their numbers after so many lines of another. */
const deep = (after: number): string =>
  kept([
    KNOWN.slice(0, 4),
    ...lines(after, (i) => row(4, i)),
    [null],
    ['Tank', 1, 2, 3],
    ...lines(5, (i) => [dayAfter(i), 3 + i, 5 + (i % 3), 4]),
  ]);
/** Headings far down, one of which is a number. */
const figureAt = (place: number): string =>
  kept([
    KNOWN.slice(0, 8),
    ...lines(100, (i) => row(8, i)),
    [null],
    Array.from({ length: 8 }, (_, c) => (c === place ? 5 : (OTHERS[c] ?? ''))),
    ...lines(5, (i) => Array.from({ length: 8 }, (_, c) => 100 + c + 7 * i)),
  ]);
/** What tanks side by side are read as under a title of so many cells. */
const titled = (cells: number): string =>
  tablesOf([
    ['Dead', 'fish', 'daily', 'farm'].slice(0, cells),
    [null],
    ['Date', 'Tank 1', 'Tank 2', 'Tank 3', 'Tank 4'],
    ...lines(6, (i) => [dayAfter(i), 3, 2 + i, 4 + (i % 2), 1 + (i % 3)]),
  ])
    .map(({ mapping }) => mapping.map(({ field }) => field ?? 'open').join(' '))
    .join(', ');

/** A line among others of which so many cells repeat the headings, others are figures. */
const again = ([repeats, filled]: readonly [repeats: number, filled: number]): string =>
  kept([
    KNOWN.slice(0, 8),
    ...lines(4, (i) => row(8, i)),
    Array.from({ length: 8 }, (_, c) => (c < repeats ? (KNOWN[c] ?? '') : c < filled ? 5 + c : null)),
    ...lines(4, (i) => row(8, 4 + i)),
  ]);
/** A line among others of which so many cells are units, others are figures. */
const units = ([said, filled]: readonly [said: number, filled: number]): string =>
  kept([
    [KNOWN[0] ?? '', 'Run', ...KNOWN.slice(1, 10)],
    ...lines(4, (i) => [cellOf(0, i), `R${i}`, ...row(10, i).slice(1)]),
    Array.from({ length: 11 }, (_, c) =>
      c === 0
        ? null
        : c <= said
          ? (['pcs', 'kg', 'g', 'mL', 'L', 'mg', 'cm', '°C'][c - 1] ?? '')
          : c <= filled
            ? 5 + c
            : null,
    ),
    ...lines(4, (i) => [cellOf(0, i), `R${4 + i}`, ...row(10, 4 + i).slice(1)]),
  ]);
/** A line among others of which so many cells are sums of the lines above, others are figures. */
const sums = ([added, filled, all]: readonly [added: number, filled: number, all: number]): string =>
  kept([
    KNOWN.slice(0, all),
    ...lines(4, (i) => row(all, i)),
    Array.from({ length: all }, (_, c) =>
      c === 0
        ? null
        : c <= added
          ? `=SUM(${'ABCDEFGHIJKL'[c] ?? ''}2:${'ABCDEFGHIJKL'[c] ?? ''}5)`
          : c <= filled
            ? 5 + c
            : null,
    ),
    ...lines(4, (i) => row(all, 4 + i)),
  ]);
/** A line of words among others. */
const words = ([n, all]: readonly [words: number, all: number]): string =>
  kept([
    KNOWN.slice(0, all),
    ...lines(4, (i) => row(all, i)),
    Array.from({ length: all }, (_, c) => (c < n ? (STRANGE[c] ?? '') : null)),
    ...lines(4, (i) => row(all, 4 + i)),
  ]);

export const NEAR: readonly Near[] = [
  edge(
    'Days of a column of days',
    2,
    dated,
    [
      [1, 4],
      [2, 4],
    ],
    ['4 note', '4 total'],
  ),
  edge(
    'Share of days of a column of days',
    0.6,
    dated,
    [
      [4, 7, 40],
      [3, 5, 40],
    ],
    ['7 note', '5 total'],
  ),
  edge('Lines below which a remark is none', 3, remark, [2, 3], ['3 total', '3 total note']),
  edge(
    'Share of the columns a new line of headings has',
    0.7,
    below,
    [
      [4, 6],
      [3, 4],
    ],
    ['11', '5, 5'],
  ),
  edge(
    'Columns of a new line of headings',
    3,
    below,
    [
      [2, 2],
      [3, 3],
    ],
    ['11', '5, 5'],
  ),
  edge(
    'Share of new headings that are known',
    0.5,
    belowKnown,
    [
      [4, 11],
      [2, 4],
    ],
    ['11', '5, 5'],
  ),
  edge(
    'Share of columns of words above new headings',
    0.7,
    worded,
    [
      [2, 3, 10],
      [3, 4, 10],
    ],
    ['10, 5', '16'],
  ),
  edge(
    'Share of words that make a column one of words',
    0.6,
    worded,
    [
      [3, 4, 5],
      [3, 4, 6],
    ],
    ['10, 5', '16'],
  ),
  edge(
    'Lines that show whether a column is one of words',
    12,
    wordsFrom,
    [
      [3, 9],
      [3, 10],
    ],
    ['16, 5', '22'],
  ),
  edge('Lines from which on headings have no figure', 80, deep, [76, 82], ['76, 5', '88']),
  edge('Cells of a line far down that are looked at', 4, figureAt, [3, 4], ['106', '100, 5']),
  edge(
    'Headings that are there again',
    2,
    again,
    [
      [1, 2],
      [2, 4],
    ],
    ['9', '8 header again'],
  ),
  edge(
    'Part of a line that are headings again',
    2,
    again,
    [
      [2, 5],
      [2, 4],
    ],
    ['9', '8 header again'],
  ),
  edge(
    'Share of words in a line of units',
    0.8,
    units,
    [
      [6, 8],
      [4, 5],
    ],
    ['9', '8 units'],
  ),
  edge(
    'Sums in a line of sums',
    2,
    sums,
    [
      [1, 7, 8],
      [2, 7, 8],
    ],
    ['9', '8 total'],
  ),
  edge(
    'Share of the cells of a line with one sum',
    0.7,
    sums,
    [
      [1, 8, 12],
      [1, 9, 12],
    ],
    ['8 total', '9'],
  ),
  edge(
    'Columns of a table in which few words are a remark',
    3,
    words,
    [
      [2, 3],
      [2, 4],
    ],
    ['9', '8 note'],
  ),
  edge(
    'Words that are a remark however many columns there are',
    2,
    words,
    [
      [2, 4],
      [3, 7],
    ],
    ['8 note', '9'],
  ),
  edge(
    'Share of the cells of a remark',
    0.4,
    words,
    [
      [4, 10],
      [5, 12],
    ],
    ['8 note', '9'],
  ),
  edge('Cells of a title', 3, titled, [3, 4], ['date dead dead dead dead', 'date open open open open']),
];

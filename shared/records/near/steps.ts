import type { Near } from '../../base/near';
import type { Cell } from '../../base/values';
import type { Line } from './check';
import { dayAfter, edge, tablesOf } from './check';

/** What columns under words nobody knows are read as changes at numbers somebody chose. */
const lines = (n: number, line: (i: number) => Line): readonly Line[] =>
  Array.from({ length: n }, (_, i) => line(i));
const two = (x: number): string => String(x).padStart(2, '0');
const day = (i: number): string => dayAfter(3 * i);
/** What the columns headed by such a word are read as. */
const readAs = (values: readonly Line[]): string =>
  (tablesOf(values)[0]?.mapping ?? [])
    .filter(({ header }) => /^(?:Zrabe|Quolt)$/.test(header))
    .map(({ field }) => field ?? 'open')
    .join(' ');

/** Two clocks in so many lines, of which in some the second comes soon; words or nothing in the others. */
const clocks = ([told, all, soon, word]: readonly [
  told: number,
  all: number,
  soon: number,
  word?: string,
]): string =>
  readAs([
    ['Run', 'Date', 'Female weight (kg)', 'Hormone (ml)', 'Zrabe', 'Quolt', 'Egg weight (g)'],
    ...lines(all, (i) => [
      i + 1,
      day(i),
      1.1 + 0.13 * i,
      0.55 + 0.065 * i,
      i < told ? `20:${10 + i}` : word ? `${word}${i}` : null,
      i < told ? `${i < soon ? '22' : '07'}:${10 + i}` : word ? `${word}x${i}` : null,
      110 + 17 * ((i * 5) % 6),
    ]),
  ]);
/** A column beside spawnings, of water or of sales. */
const beside = {
  spawning: (cells: readonly Cell[]): string =>
    readAs([
      ['Female', 'Weight (kg)', 'Eggs', 'Zrabe'],
      ...cells.map((cell, i): Line => [`F${i}`, 1.2 + i / 10, 81_000 + 1111 * i, cell]),
    ]),
  water: (cells: readonly Cell[]): string =>
    readAs([
      ['Date', 'Tank', 'pH', 'Zrabe'],
      ...cells.map((cell, i): Line => [day(i), `T${i % 3}`, 6.5 + (i % 4) / 10, cell]),
    ]),
  sale: (cells: readonly Cell[]): string =>
    readAs([
      ['Date', 'Zrabe', 'Sold', 'Price each', 'Amount', 'Paid'],
      ...cells.map((cell, i): Line => [
        day(i),
        cell,
        300 + 50 * i,
        12,
        3600 + 600 * i,
        3000 + 500 * ((i * 5) % 7),
      ]),
    ]),
};
/** So many cells of one kind, the others of another. */
const some = (
  n: number,
  all: number,
  one: (i: number) => Cell,
  other: (i: number) => Cell,
): readonly Cell[] => Array.from({ length: all }, (_, i) => (i < n ? one(i) : other(i)));
const nothing = (): Cell => null;
const number = (i: number): Cell => 40 + i;
const clock = (i: number): Cell => `0${7 + (i % 2)}:${two(10 + i)}`;
const warm = (i: number): Cell => 26.3 + (i % 3) / 10;
const word = (i: number): Cell => `${'nox'[i % 3] ?? ''}zq${i}`;
const buyer = (i: number): Cell => `${['Ana', 'Bo', 'Cy', 'Di', 'Ed', 'Fy'][i % 6] ?? ''} K`;

export const NEAR: readonly Near[] = [
  edge(
    'Lines with both of two clocks',
    4,
    clocks,
    [
      [3, 6, 0],
      [4, 6, 0],
    ],
    ['clock open', 'injected stripped'],
  ),
  edge(
    'Share of clocks in a column of clocks',
    0.7,
    clocks,
    [
      [4, 6, 0, 'zub'],
      [5, 7, 0, 'zub'],
    ],
    ['open open', 'injected stripped'],
  ),
  edge(
    'Share of lines in which the second clock comes in its time',
    0.8,
    clocks,
    [
      [4, 6, 1],
      [5, 6, 1],
    ],
    ['clock open', 'injected stripped'],
  ),
  edge(
    'Days of a column that may be the date',
    2,
    (n: number) => beside.spawning(some(n, 6, day, nothing)),
    [1, 2],
    ['open', 'date'],
  ),
  edge(
    'Share of days of a column that may be the date',
    0.8,
    ([n, all]: readonly [number, number]) => beside.spawning(some(n, all, day, number)),
    [
      [3, 4],
      [4, 5],
    ],
    ['open', 'date'],
  ),
  edge(
    'Hours of a column that may be the hour',
    3,
    (n: number) => beside.water(some(n, 7, clock, nothing)),
    [2, 3],
    ['open', 'clock'],
  ),
  edge(
    'Share of hours of a column that may be the hour',
    0.8,
    ([n, all]: readonly [number, number]) => beside.water(some(n, all, clock, number)),
    [
      [3, 4],
      [4, 5],
    ],
    ['open', 'clock'],
  ),
  edge(
    'Numbers of a column that may be warmth',
    5,
    (n: number) => beside.water(some(n, 8, warm, nothing)),
    [4, 5],
    ['open', 'temperature'],
  ),
  edge(
    'Share of numbers of a column that may be warmth',
    0.8,
    ([n, all]: readonly [number, number]) => beside.water(some(n, all, warm, word)),
    [
      [6, 8],
      [5, 6],
    ],
    ['open', 'temperature'],
  ),
  edge(
    'Share of decimals of a column that may be warmth',
    0.3,
    ([n, all]: readonly [number, number]) => beside.water(some(n, all, warm, (i) => 26 + (i % 2))),
    [
      [2, 7],
      [3, 10],
    ],
    ['open', 'temperature'],
  ),
  edge(
    'Words of a column that may be the buyer',
    3,
    (n: number) => beside.sale(some(n, 8, buyer, nothing)),
    [2, 3],
    ['open', 'customer'],
  ),
  edge(
    'Share of words of a column that may be the buyer',
    0.8,
    ([n, all]: readonly [number, number]) => beside.sale(some(n, all, buyer, number)),
    [
      [3, 4],
      [4, 5],
    ],
    ['open', 'customer'],
  ),
];

import type { Near } from '../../../base/near';
import { findLinks } from '../../meaning/links';
import { isRate, varies } from '../../meaning/products';
import { near, roundingOf } from '../../meaning/sampled';
import { findSpans } from '../../meaning/spans';
import { isCounted } from '../../meaning/sums';
import { edge } from '../check';

/** Which relations are seen between columns of bare numbers changes at numbers somebody chose. */
const list = (n: number, make: (i: number) => number): readonly number[] =>
  Array.from({ length: n }, (_, i) => make(i));
const wide = (i: number): number => 100 + 37 * ((i * 5) % 11);
const other = (i: number): number => 3.7 + 1.3 * ((i * 7) % 13);
/** The relation of the last of these columns to those before it, of one kind. */
function linked(kind: string, ...columns: readonly (readonly number[])[]): string {
  const found = findLinks(columns, columns[0]?.length ?? 0).filter(
    (link) => link.kind === kind && link.result === columns.length - 1,
  );
  return found
    .map(
      ({ inputs, factor, isRunning }) =>
        `${inputs.join(' ')} × ${factor.toPrecision(5)}${isRunning ? ' on' : ''}`,
    )
    .join(', ');
}
/** So many times the product of two columns, in so many of the lines. */
const product = ([factor, holds, all]: readonly [factor: number, holds: number, all: number]): string =>
  linked(
    'product',
    list(all, wide),
    list(all, other),
    list(all, (i) => (i < holds ? 1 : 1.3 + i / 10) * factor * wide(i) * other(i)),
  );
/** The same with a rate that never changes for one of the two. */
const rated = ([holds, all]: readonly [holds: number, all: number]): string =>
  linked(
    'product',
    list(all, wide),
    list(all, () => 250),
    list(all, (i) => (i < holds ? 0.25 : 0.35 + i / 10) * wide(i)),
  );
/** A sum that goes on, of which so many lines are still nothing. */
const running = ([empty, all]: readonly [empty: number, all: number]): string => {
  let sum = 0;
  const dead = list(all, (i) => (i < empty ? 0 : 3 + ((i * 5) % 7)));
  return linked(
    'sum',
    dead,
    dead.map((x) => (sum += x)),
  );
};
/** A column that goes on from the one before it, which changes only in so many lines. */
const carried = ([changes, all]: readonly [changes: number, all: number]): string => {
  const after = list(all, (i) => 500 - 7 * Math.max(0, i - (all - changes) + 1));
  return linked(
    'carry',
    after,
    after.map((_, i) => after[i - 1] ?? 500),
  );
};
/** Hours between two clocks, as they are stated in so many of the lines. */
const spans = ([holds, all]: readonly [holds: number, all: number]): number => {
  const [from, to] = [list(all, (i) => (18 + i / 10) / 24), list(all, (i) => (6 + ((i * 5) % 7)) / 24)];
  const hours = list(all, (i) => 24 * (1 + (to[i] ?? 0) - (from[i] ?? 0)) + (i < holds ? 0 : 2 + i / 10));
  return findSpans(new Map([from, to].map((one, i) => [i, Float64Array.from(one)])), [from, to, hours])
    .length;
};
const counted = ([ones, steps]: readonly [ones: number, steps: number]): boolean =>
  isCounted(list(steps + 1, (i) => (i <= ones ? i : 3 * i)));

export const NEAR: readonly Near[] = [
  edge(
    'Share by which a factor may be off a power of ten',
    0.004,
    product,
    [
      [1.0038, 8, 8],
      [1.0042, 8, 8],
    ],
    ['0 1 × 1.0000', '0 1 × 1.0042'],
  ),
  edge(
    'Lines from which on a factor of any size is no chance',
    6,
    product,
    [
      [0.37, 5, 5],
      [0.37, 6, 6],
    ],
    ['', '0 1 × 0.37000'],
  ),
  edge(
    'Share of the lines in which a factor of any size holds',
    0.8,
    product,
    [
      [0.37, 15, 20],
      [0.37, 16, 20],
    ],
    ['', '0 1 × 0.37000'],
  ),
  edge(
    'Share of the lines in which a product with a rate holds',
    0.85,
    rated,
    [
      [16, 20],
      [18, 20],
    ],
    ['', '0 1 × 0.0010000'],
  ),
  edge(
    'Kinds of numbers of a column that varies',
    3,
    varies,
    [
      [100, 130],
      [100, 130, 160],
    ],
    [false, true],
  ),
  edge(
    'Times the least the most of a column that varies',
    1.03,
    varies,
    [
      [100, 101, 102],
      [100, 101, 104],
    ],
    [false, true],
  ),
  edge(
    'Kinds of numbers that are no rate',
    3,
    isRate,
    [
      [12, 15],
      [12, 15, 18],
    ],
    [true, false],
  ),
  edge(
    'Share of the lines that have something to go on from',
    0.7,
    running,
    [
      [7, 21],
      [6, 21],
    ],
    ['', '0 × 1.0000 on'],
  ),
  edge(
    'Steps of numbers that are counted',
    3,
    counted,
    [
      [2, 2],
      [3, 3],
    ],
    [false, true],
  ),
  edge(
    'Share of steps by one of numbers that are counted',
    0.85,
    counted,
    [
      [16, 20],
      [18, 20],
    ],
    [false, true],
  ),
  edge(
    'Share of lines in which two columns are the same',
    0.8,
    carried,
    [
      [9, 40],
      [5, 40],
    ],
    ['0 × 1.0000 on', ''],
  ),
  edge(
    'Lines with a stated time between two moments',
    4,
    spans,
    [
      [3, 3],
      [4, 4],
    ],
    [0, 1],
  ),
  edge(
    'Share of the lines whose stated time is the time between',
    0.7,
    spans,
    [
      [13, 20],
      [15, 20],
    ],
    [0, 1],
  ),
  edge(
    'Digits behind the point of numbers that are not quite what was typed',
    3,
    (x: number) => roundingOf(x) > 1e-6,
    [0.123 + 1e-13, 0.1234 + 1e-13],
    [true, false],
  ),
  edge(
    'Share by which a number is rounded',
    0.03,
    (meant: number) => near(3000, meant),
    [3085, 3096],
    [true, false],
  ),
];

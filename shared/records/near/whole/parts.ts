import type { Near } from '../../../base/near';
import type { Line } from '../check';
import { dayAfter, edge, times } from '../check';

/** Products by meaning, parts and wholes, and what stays or only grows change at numbers somebody chose. */
const lines = (n: number, line: (i: number) => Line): readonly Line[] =>
  Array.from({ length: n }, (_, i) => line(i));
/** Eggs by weight and number a gram, up to so much in powers of ten, and some lines off by a factor. */
const chain = (n: number, noise: number, off: Readonly<Record<number, number>>): number =>
  times('WHOLE.CHAIN', [
    ['Run', 'Egg weight (g)', 'Eggs per gram', 'Eggs'],
    ...lines(n, (i) => {
      const [grams, perGram] = [110 + 17 * ((i * 5) % 7), 640 + 9 * ((i * 7) % 5)];
      return [
        `R${i + 1}`,
        grams,
        perGram,
        Math.round(grams * perGram * (off[i] ?? 1) * 10 ** (noise * ((i % 3) - 1))),
      ];
    }),
  ]);
const many = (n: number, factor: number): Readonly<Record<number, number>> =>
  Object.fromEntries(Array.from({ length: n }, (_, i) => [2 * i, factor]));

const ODD_TANKS = [505, 530, 150, 450];
const tank = (n: number, odd: number): number =>
  times('WHOLE.KEPT', [
    ['Date', 'Volume (L)', 'pH'],
    ...lines(n, (i) => [
      dayAfter(i),
      ODD_TANKS[i / 2] !== undefined && i < 2 * odd ? (ODD_TANKS[i / 2] ?? 0) : 550,
      6.5 + 0.1 * (i % 5),
    ]),
  ]);

const parts = (n: number, hatched: Readonly<Record<number, number>>): number =>
  times('WHOLE.PART', [
    ['Run', 'Eggs', 'Hatched'],
    ...lines(n, (i) => [`R${i + 1}`, 100_000, hatched[i] ?? 61_000 + 1237 * ((i * 5) % 7)]),
  ]);

/** pH before and after in lines with soda ash, and in lines without it. */
const alone = (dosed: number, still: number, rises: readonly number[], dose: 0 | null = 0): number =>
  times('WHOLE.RISE', [
    ['Tank', 'Volume (L)', 'pH before', 'Soda ash (g)', 'pH after'],
    ...lines(dosed, (i): Line => [`T${i}`, 800, 5.8 + 0.1 * (i % 3), 6 + i, 6.9 + 0.1 * (i % 2)]),
    ...lines(still, (i): Line => [`S${i}`, 800, 6.1 + 0.1 * (i % 4), dose, 6.1 + 0.1 * (i % 4)]),
    ...rises.map((rise, i): Line => [`U${i}`, 800, 6.2, dose, Number((6.2 + rise).toFixed(3))]),
  ]);

const mornings = (days: number, warm: number, by: number): number =>
  times('WHOLE.PART', [
    ['Date', 'Water temperature morning (°C)', 'Water temperature afternoon (°C)'],
    ...lines(days, (i) => {
      const low = 25 + ((i * 7) % 11) / 10;
      return [dayAfter(i), low, i % 3 === 1 && i < 3 * warm ? Number((low - by).toFixed(3)) : low + 2.1];
    }),
  ]);

/** Weights of one tank, each so many times the one before. */
const weighings = (heading: string, changes: readonly number[], from: number): number => {
  let now = from;
  const list = [from, ...changes.map((change) => (now = Number((now * change).toFixed(4))))];
  return times('WHOLE.SHRINKS', [
    ['Date', 'Tank', heading],
    ...list.map((value, i): Line => [
      dayAfter(7 * i),
      'T1',
      heading.startsWith('F') ? Math.round(value) : value,
    ]),
  ]);
};
const growing = (steps: number, falls: number, by = 0.8): number =>
  weighings(
    'Mean weight (g)',
    Array.from({ length: steps }, (_, i) => (i % 4 === 2 && i < 4 * falls ? by : 1.15)),
    2,
  );
const fish = (change: number): number =>
  weighings('Fish in tank', [0.98, 0.97, change, 0.98, 0.99, 0.97, 0.98], 500_000);

/** Feed of several tanks by day, in one of them this between a day of 56 and one of 113. */
export const leap = (x: number): number =>
  times('WHOLE.WILD', [
    ['Feed (g)'],
    ['Date', 'Tank 1', 'Tank 2', 'Tank 3'],
    ...[10, 14, 20, 28, 40, 56, x, 113, 160, 226, 320, 450].map((one, i): Line => [
      dayAfter(i),
      210 + 7 * ((i * 5) % 4),
      one,
      330 + 11 * ((i * 3) % 5),
    ]),
  ]);

/** Fish of every pond at three ages. */
const ages = (n: number, second: Readonly<Record<number, number>>): number =>
  times('WHOLE.PART', [
    ['Pond', 'Day 7', 'Day 14', 'Day 21'],
    ...lines(n, (i) => [`P${i + 1}`, 1000 + (i % 2 ? 3 * i : 0), second[i] ?? 880 - (i % 3), 790 - (i % 2)]),
  ]);

export const NEAR: readonly Near[] = [
  edge('Times a product is off', 1.25, (x: number) => chain(12, 0.01, { 4: x }), [1.24, 1.26], [0, 1]),
  edge(
    'Lines from which on a product by meaning is a habit',
    5,
    (n: number) => chain(n, 0.01, { 2: 2 }),
    [4, 5],
    [0, 1],
  ),
  edge(
    'Spread up to which a product by meaning is a habit',
    0.06,
    (x: number) => chain(13, x, { 4: 3 }),
    [0.04, 0.041],
    [1, 0],
  ),
  edge(
    'Share of lines in which a product may be off',
    0.4,
    (n: number) => chain(n, 0.01, many(6, 2)),
    [14, 15],
    [0, 6],
  ),
  edge('Share of lines in which a tank holds the same', 0.85, (odd: number) => tank(20, odd), [4, 3], [0, 3]),
  edge(
    'Times a part may be its whole',
    1.0001,
    (x: number) => parts(12, { 4: x }),
    [100_009, 100_011],
    [0, 1],
  ),
  edge(
    'Share of lines with more part than whole',
    0.2,
    (n: number) => parts(n, { 1: 104_000, 4: 107_000, 6: 111_000 }),
    [14, 15],
    [0, 3],
  ),
  edge('Rise of pH that air alone does not make', 0.5, (x: number) => alone(6, 6, [x]), [0.49, 0.51], [0, 1]),
  edge(
    'Share of lines without a dose that rise',
    0.25,
    (still: number) => alone(6, still, [0.7, 0.8, 0.9]),
    [8, 9],
    [0, 3],
  ),
  edge(
    'Lines without a dose that stayed',
    3,
    (still: number) => alone(6, still, [0.8], null),
    [2, 3],
    [0, 1],
  ),
  edge('Lines with a dose', 3, (n: number) => alone(n, 6, [0.8]), [2, 3], [0, 1]),
  edge(
    'Share of days on which the morning was warmer',
    0.05,
    (n: number) => mornings(n, 2, 0.6),
    [39, 40],
    [0, 2],
  ),
  edge('Days from which on a warm morning is odd', 10, (n: number) => mornings(n, 1, 0.6), [9, 10], [0, 1]),
  edge('Degrees by which a morning is warmer', 0.4, (x: number) => mornings(20, 1, x), [0.39, 0.41], [0, 1]),
  edge(
    'Share of their weight fish keep from one weighing to the next',
    0.9,
    (x: number) => growing(8, 1, x),
    [0.895, 0.905],
    [1, 0],
  ),
  edge('Times fish become more by counting', 1.02, fish, [1.019, 1.021], [0, 1]),
  edge('Weighings from which on a fall is odd', 4, (n: number) => growing(n, 1), [3, 4], [0, 1]),
  edge('Share of weighings that may fall', 0.15, (n: number) => growing(n, 3), [19, 20], [0, 3]),
  edge('Times the day before and after', 6, leap, [670, 690], [0, 1]),
  edge('Times a neighbour that is left without the nought', 1.7, leap, [1900, 1940], [1, 0]),
  edge('Times fish become more with age', 1.001, (x: number) => ages(12, { 4: x }), [1000, 1002], [0, 1]),
  edge(
    'Share of ponds in which fish become more with age',
    0.2,
    (n: number) => ages(n, { 0: 1400, 2: 1500, 4: 1600 }),
    [14, 15],
    [0, 3],
  ),
];

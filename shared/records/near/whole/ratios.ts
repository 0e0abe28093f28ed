import type { Near } from '../../../base/near';
import { isSlip } from '../../rules/whole/suspect';
import type { Line } from '../check';
import { edge, found, times } from '../check';

/** Proportions of a line change at numbers somebody chose. */
const lines = (n: number, line: (i: number) => Line): readonly Line[] =>
  Array.from({ length: n }, (_, i) => line(i));
const weightOf = (i: number): number => [1, 1.4, 0.8, 2, 1.6, 1.2, 0.9, 1.8, 1.1, 0.7, 1.5][i % 11] ?? 1;
/** Hormone by body weight, some lines so many times as much. */
const hormone = (n: number, off: Readonly<Record<number, number>>, noise = 0): readonly Line[] => [
  ['Fish', 'Female weight (kg)', 'Hormone (mL)'],
  ...lines(n, (i) => [
    `F${i}`,
    weightOf(i),
    Number(((weightOf(i) / 2) * (off[i] ?? 1) * 10 ** (noise * ((i % 3) - 1))).toPrecision(8)),
  ]),
];
const ratio = (n: number, off: Readonly<Record<number, number>>, noise = 0): number =>
  times('WHOLE.RATIO', hormone(n, off, noise));
const hatch = (share: number): number =>
  times('WHOLE.RATIO', [
    ['Run', 'Eggs', 'Hatched'],
    ...lines(20, (i) => {
      const eggs = Math.round(10_000 * 10 ** (((i * 5) % 11) / 6));
      return [`R${i}`, eggs, Math.round(eggs * (i === 7 ? 0.6 * share : 0.6 + 0.01 * (i % 3)))];
    }),
  ]);
/** Feed by weight of fish, of tanks that differ much, up to so many powers of ten, and one so many times as much. */
const feed = (noise: number, off: number): readonly Line[] => [
  ['Tank', 'Biomass (kg)', 'Feed (kg)'],
  ...lines(24, (i) => {
    const kg = Number((5 * 10 ** (((i * 5) % 11) / 5)).toPrecision(6));
    return [
      `T${i}`,
      kg,
      Number((0.03 * kg * (i === 4 ? off : 1) * 10 ** (noise * ((i % 3) - 1))).toPrecision(8)),
    ];
  }),
];
/** Two columns nobody knows that move together. */
const twins = (n: number, off: number, width: number, noise = 0): number =>
  times('WHOLE.RATIO', [
    ['Name', 'Zrabe', 'Quolt'],
    ...lines(n, (i) => {
      const x = 100 * 10 ** (width * (((i * 5) % 11) / 5 - 1));
      return [
        `N${i}`,
        Number(x.toPrecision(6)),
        Number(
          (
            0.37 *
            x *
            (i === 3 ? off : 1) *
            10 ** (noise * (((i * 7) % 3) - 1)) *
            (1 + 0.001 * ((i * 13) % 5))
          ).toPrecision(6),
        ),
      ];
    }),
  ]);
/** Columns of two widths, wide and narrow, in equal steps about their middle. */
const steps = (width: number): number =>
  times('WHOLE.RATIO', [
    ['Name', 'Zrabe', 'Quolt'],
    ...lines(21, (i) => {
      const x = 100 * 10 ** (width * (i === 10 ? 0 : i % 2 === 0 ? 1 : -1));
      return [
        `N${i}`,
        Number(x.toPrecision(7)),
        Number((0.37 * x * (i === 3 ? 5 : 1) * (1 + 0.001 * ((i * 13) % 5))).toPrecision(7)),
      ];
    }),
  ]);
/** Feed by weight of fish and ration; in one line the ration was doubled. */
const fed = (off: number, broken = 0): number =>
  times('WHOLE.RATIO', [
    ['Tank', 'Biomass (kg)', 'Ration (%)', 'Feed (kg)'],
    ...lines(20, (i) => {
      const [kg, percent] = [40 + 7 * ((i * 5) % 11), i === 6 ? 6.6 : 3 + 0.1 * (i % 4)];
      const times = i === 6 ? off : i >= 20 - broken ? 1.04 : 1;
      return [`T${i}`, kg, percent, Number((0.01 * kg * percent * times).toPrecision(7))];
    }),
  ]);
const natural =
  (over: string, under: string, usual: readonly [over: number, under: number]) =>
  (x: number): number =>
    times('WHOLE.NATURE', [
      ['Run', under, over],
      ...lines(12, (i) => {
        const of = usual[1] * (1 + 0.03 * (i % 5));
        return [`R${i}`, of, Number((i === 4 ? x * of : usual[0] * (1 + 0.02 * (i % 4))).toPrecision(7))];
      }),
    ]);
const unnatural = (n: number): number =>
  times('WHOLE.NATURE', [
    ['Female', 'Female weight (kg)', 'Egg weight (g)'],
    ...lines(n, (i) => [`F${i}`, weightOf(i), (i % 3 === 1 && i < 18 ? 600 : 120) * weightOf(i)]),
  ]);

export const NEAR: readonly Near[] = [
  edge('Lines from which on a ratio is a habit', 5, (n: number) => ratio(n, { 2: 5 }), [4, 5], [0, 1]),
  edge('Times a ratio is off', 1.6, (x: number) => ratio(44, { 5: x }), [1.59, 1.61], [0, 1]),
  edge('Least spread of a ratio', 0.035, (x: number) => ratio(8, { 3: x }), [1.64, 1.67], [0, 1]),
  edge('Powers of ten below which a spawning may have failed', 0.9, hatch, [0.1288, 0.123], [0, 1]),
  edge(
    'Times a ratio of columns nobody knows is off',
    1.9,
    (x: number) => twins(44, x, 0.4),
    [1.87, 1.93],
    [0, 1],
  ),
  edge(
    'Lines of columns nobody knows that move together',
    8,
    (n: number) => twins(n, 10, 0.4),
    [7, 8],
    [0, 1],
  ),
  edge(
    'Spread up to which columns move together',
    0.09,
    (x: number) => twins(22, 30, 0.5, x),
    [0.058, 0.063],
    [1, 0],
  ),
  edge('Times the spread of columns that move together', 1.6, steps, [0.0372, 0.0384], [0, 1]),
  edge(
    'Part of the lines out of proportion',
    6,
    (n: number) => ratio(n, { 1: 3, 6: 4, 11: 5 }),
    [17, 18],
    [0, 3],
  ),
  edge('Share of lines in which a third number explains', 0.8, (n: number) => fed(1, n), [4, 5], [0, 1]),
  edge(
    'Share a third number may leave unexplained',
    0.01,
    (x: number) => fed(1 + x),
    [0.0095, 0.0105],
    [0, 1],
  ),
  edge(
    'Powers of ten within which a ratio is one slip away',
    0.15,
    (x: number) => found('WHOLE.RATIO', feed(0.02, 10 ** x))[0]?.expected.startsWith('as'),
    [1.145, 1.155],
    [false, true],
  ),
  edge(
    'Spread up to which a ratio is a habit',
    0.25,
    (x: number) => times('WHOLE.RATIO', feed(x, 300)),
    [0.166, 0.171],
    [1, 0],
  ),
  edge('Share of lines no fish is like', 0.3, unnatural, [19, 20], [0, 6]),
  edge(
    'Least grams of eggs a kilogram',
    3,
    natural('Egg weight (g)', 'Female weight (kg)', [140, 1.1]),
    [2.9, 3.1],
    [1, 0],
  ),
  edge(
    'Most grams of eggs a kilogram',
    400,
    natural('Egg weight (g)', 'Female weight (kg)', [140, 1.1]),
    [395, 405],
    [0, 1],
  ),
  edge('Least eggs a gram', 250, natural('Eggs', 'Egg weight (g)', [90_000, 130]), [245, 255], [1, 0]),
  edge('Most eggs a gram', 2500, natural('Eggs', 'Egg weight (g)', [90_000, 130]), [2450, 2550], [0, 1]),
  edge(
    'Least share of her weight a female keeps',
    0.5,
    natural('Weight after stripping (kg)', 'Female weight (kg)', [1, 1.15]),
    [0.49, 0.51],
    [1, 0],
  ),
  edge(
    'Powers of ten off a whole one that are still a slip',
    0.004,
    (x: number) => isSlip(x, 100),
    [1009, 1009.5],
    [true, false],
  ),
  edge('Noughts too many of a slip', 3, (x: number) => isSlip(x, 7), [7000, 70_000], [true, false]),
  edge(
    'Digits of a number whose digits are compared',
    9,
    ([a, b]: [number, number]) => isSlip(a, b),
    [
      [123_456_789, 123_456_798],
      [1_234_567_890, 1_234_567_980],
    ],
    [true, false],
  ),
];

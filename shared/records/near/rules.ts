import type { Near } from '../../base/near';
import { standingOf } from '../rules/farming/history';
import type { Line } from './check';
import { dayAfter, edge, found, times } from './check';
import { saidOf } from './rows';

/** What the rules of single records and of columns say changes at numbers somebody chose. */
const lines = (n: number, line: (i: number) => Line): readonly Line[] =>
  Array.from({ length: n }, (_, i) => line(i));
/** How the sentence on a pH begins. */
const ph = (plain: Parameters<typeof saidOf>[1], material = ''): string | undefined =>
  saidOf('PH.DOSE', plain, { material })[0]?.sentence.split(' ').slice(0, 3).join(' ');
const LITTLE = 'So little soda';
const MUCH = 'So much soda';
const RAISES = 'soda ash raises';
const acid = (before: number, after: number): string | undefined =>
  ph({ ph: before, phAfter: after, materialDose: 1, volume: 1000 }, 'hydrochloric acid');
const base = (before: number, after: number): string | undefined =>
  ph({ ph: before, phAfter: after, materialDose: 0.001, volume: 1000 });
const known = (after: number): boolean =>
  ph({ ph: 6, phAfter: after, materialDose: 14.9, volume: 1000, alkalinity: 0.1 }) !== undefined;

const hatched = (n: number, last: number): number =>
  times('HISTORY.FAR', [
    ['Run', 'Hatch %'],
    ...lines(n, (i) => [`R${i}`, i === 4 ? last : 60 + (i % 3) - 1]),
  ]);
/** Eggs a gram that spread by so many powers of ten, and one of them ten times too much. */
const tenTimes = (powers: number, n = 21): number =>
  times('SLIP.HISTORY', [
    ['Run', 'Eggs per gram'],
    ...lines(n, (i) => [`R${i}`, i === 4 ? 6900 : Number((690 * 10 ** (powers * ((i % 3) - 1))).toFixed(2))]),
  ]);
const power = (off: number): number =>
  times('SLIP.HISTORY', [
    ['Run', 'Eggs per gram'],
    ...lines(21, (i) => [`R${i}`, i === 4 ? Number((690 * 10 ** off).toFixed(1)) : 690 + (i % 3) - 1]),
  ]);

const sequence = (days: readonly number[]): string | undefined =>
  found('DATE.SEQUENCE', [
    ['Date', 'Eggs'],
    ...days.map((one, i): Line => [dayAfter(one), 90_137 + 1379 * ((i * 5) % 7)]),
  ])[0]?.rule;
const ordered = (n: number, out: number): boolean =>
  sequence(Array.from({ length: n }, (_, i) => (i % 4 === 2 && i < 4 * out ? 4 * i - 30 : 4 * i))) !==
  undefined;

const copies = (n: number, stretch: number): number =>
  times('COLUMN.COPIED', [
    ['Date', 'Eggs per gram'],
    ...lines(n, (i) => [dayAfter(i), i < stretch ? 690 : 640 + ((i * 7) % 9) * 5]),
  ]);
const again = (perGram: number): number =>
  times('ROW.REPEATED', [
    ['Run', 'Egg weight (g)', 'Eggs per gram', 'Note'],
    ['R1', 121.5, perGram, ''],
    ['R2', 134.2, 690, ''],
    ['R3', 121.5, perGram, ''],
  ]);

export const NEAR: readonly Near[] = [
  edge('pH a meter may be off', 0.3, (x: number) => base(6.5, x), [6.21, 6.19], [undefined, RAISES]),
  edge(
    'Rise of pH that airing does not make',
    0.8,
    (x: number) => base(6.2, x),
    [6.99, 7.01],
    [undefined, LITTLE],
  ),
  edge(
    'Share of the least dose that is too little',
    0.4,
    (x: number) => ph({ ph: 6.2, phAfter: 7.4, materialDose: x, volume: 1000 }),
    [0.36, 0.375],
    [LITTLE, undefined],
  ),
  edge(
    'mg/L of carbon dioxide in the richest water',
    60,
    (x: number) => ph({ ph: 5, phAfter: x, materialDose: 100, volume: 1000 }),
    [6.31, 6.33],
    [MUCH, undefined],
  ),
  ...(
    [
      ['Times what a meter is off, below what much of a dose gives', 1.5],
      ['pH more, below what much of a dose gives', 0.2],
      ['°C of the water in which doses are judged', 26],
    ] as const
  ).map(([number, value]) =>
    edge(
      number,
      value,
      (x: number) => ph({ ph: 5, phAfter: x, materialDose: 100, volume: 1000 }),
      [6.32, 6.325],
      [MUCH, undefined],
    ),
  ),
  edge('Lowest pH before', 3, (x: number) => acid(x, 5), [2.9, 3.1], [undefined, 'hydrochloric acid lowers']),
  edge('Highest pH before', 11, (x: number) => base(x, 9), [10.9, 11.1], [RAISES, undefined]),
  edge('Lowest pH after', 3, (x: number) => base(5, x), [2.9, 3.1], [undefined, RAISES]),
  edge(
    'Highest pH after',
    12,
    (x: number) => acid(8, x),
    [11.9, 12.1],
    ['hydrochloric acid lowers', undefined],
  ),
  edge('Times what a meter is off, above what the dose gives', 2, known, [8.35, 8.39], [false, true]),
  edge('Times what a meter is off, below what the dose gives', 2, known, [6.38, 6.42], [true, false]),
  edge('Own values from which on one can be far', 10, (n: number) => hatched(n, 10), [9, 10], [0, 1]),
  edge('Deviations from the own middle', 6, (x: number) => hatched(21, x), [74.8, 74.9], [0, 1]),
  edge('Deviations more for few values', 30, (x: number) => hatched(10, x), [77.9, 78.1], [0, 1]),
  edge(
    'Deviations on logarithms',
    6,
    (x: number) => {
      const { off, limit } = standingOf(
        x,
        [655, 690, 712, 668, 701, 683, 720, 676, 694, 707, 661, 688],
        true,
      );
      return off > limit;
    },
    [905, 922],
    [false, true],
  ),
  edge('Spread up to which ten times too much stands out', 0.14, tenTimes, [0.093, 0.096], [1, 0]),
  edge('Powers of ten from which on a slip is looked for', 1, power, [0.87, 0.89], [0, 1]),
  edge('Lines from which on an order is kept', 6, (n: number) => ordered(n, 1), [5, 6], [false, true]),
  edge('Share of lines out of order', 0.1, (n: number) => ordered(n, 2), [19, 20], [false, true]),
  edge(
    'Usual steps of a last line',
    20,
    (x: number) => sequence([0, 5, 10, 15, 20, 25, 30, 30 + x]) !== undefined,
    [100, 101],
    [false, true],
  ),
  edge('Lines of a column assumed', 8, (n: number) => copies(n, n), [7, 8], [0, 1]),
  edge(
    'Tables in which chance makes a run of equal values',
    0.0005,
    (n: number) => copies(24, n),
    [4, 8],
    [0, 1],
  ),
  edge('Digits two records carry', 9, again, [6550, 65_501], [0, 1]),
];

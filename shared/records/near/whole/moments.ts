// Long: one shape of pair for every number on days and hours
import type { Near } from '../../../base/near';
import type { Line } from '../check';
import { dayAfter, edge, found, times } from '../check';

/** What days and hours say of each other changes at numbers somebody chose. */
const FIGURES = [41, 44, 39, 42, 45, 40, 43, 38, 46, 41];
const dated = (days: readonly number[]): readonly Line[] => [
  ['Date', 'Figure'],
  ...days.map((day, i): Line => [dayAfter(day), FIGURES[i % 10] ?? 0]),
];
const outOfOrder = (days: readonly number[]): number => times('WHOLE.DATE', dated(days));
/** Days that go on by a step, some of them others. */
const steady = (
  lines: number,
  step: number,
  others: Readonly<Record<number, number>> = {},
): readonly number[] => Array.from({ length: lines }, (_, i) => others[i] ?? step * i);
/** Days in no order. */
const shuffled = (lines: number, far: readonly number[] = []): readonly number[] =>
  Array.from({ length: lines }, (_, i) => far[i] ?? 1 + ((i * 8) % 19));

/** Two days of each line, so many days apart. */
const gaps = (apart: readonly number[]): number =>
  times('WHOLE.GAP', [
    ['Start day', 'End day'],
    ...apart.map((days, i): Line => [dayAfter((i * 7) % 19), dayAfter(((i * 7) % 19) + days)]),
  ]);
const gapsWith = (lines: number, off: number, by: number): number =>
  gaps(Array.from({ length: lines }, (_, i) => (i < off ? by : 2)));

const clock = (minutes: number): string =>
  `${String(Math.floor(minutes / 60) % 24).padStart(2, '0')}:${String(minutes % 60).padStart(2, '0')}`;
const SEVEN = 420;
const clocked = (minutes: readonly number[]): readonly Line[] => [
  ['Tank', 'At'],
  ...minutes.map((one, i): Line => [`T${i}`, clock(one)]),
];
/** Minutes before and after seven, then others. */
const morning = (apart: number, lines: number, others: readonly number[]): readonly Line[] =>
  clocked([
    ...Array.from({ length: lines - others.length }, (_, i) => SEVEN + ([0, apart, -apart][i % 3] ?? 0)),
    ...others,
  ]);
const far = (apart: number, lines: number, others: readonly number[]): number =>
  times('WHOLE.HOUR', morning(apart, lines, others));
const isTurned = (apart: number, at: number): boolean =>
  !found('WHOLE.HOUR', morning(apart, 12, [at]))[0]?.expected.startsWith('as');

/** Hours in and out of each line, so many minutes apart. */
const spans = (minutes: readonly number[], step = 7): readonly Line[] => [
  ['In', 'Out'],
  ...minutes.map((one, i): Line => [clock(1200 + step * i), clock(1200 + step * i + one)]),
];
const apart = (lines: number, others: readonly number[]): readonly Line[] =>
  spans(Array.from({ length: lines }, (_, i) => others[i] ?? 660 + 5 * (i % 3)));
const odd = (lines: number, others: readonly number[]): number => times('WHOLE.SPAN', apart(lines, others));
const areExchanged = (lines: readonly Line[]): boolean =>
  found('WHOLE.SPAN', lines)[0]?.sentence.includes('exchanged') === true;
const stamp = (minutes: number): string => `${dayAfter(Math.floor(minutes / 1440))} ${clock(minutes % 1440)}`;
/** The same with their days. */
const stamped = (minutes: readonly number[]): number =>
  times('WHOLE.SPAN', [
    ['In', 'Out'],
    ...minutes.map((one, i): Line => [stamp(1440 * i + 1200), stamp(1440 * i + 1200 + one)]),
  ]);
/** Start and end of a line, and the hours between as somebody says. */
const stated = (said: (minutes: number, line: number) => number, lines = 8): number =>
  times('WHOLE.STATED', [
    ['Start', 'End', 'Hours (h)'],
    ...Array.from({ length: lines }, (_, i): Line => {
      const minutes = 120 + 31 * ((i * 5) % 7);
      return [clock(480 + 7 * i), clock(480 + 7 * i + minutes), Number(said(minutes, i).toFixed(3))];
    }),
  ]);

export const NEAR: readonly Near[] = [
  edge(
    'Share of lines that follow each other in time in a table kept in that order',
    0.8,
    (late: number) =>
      outOfOrder(
        Array.from({ length: 21 }, (_, i) =>
          i === 18 ? 110 : 4 * i - (i % 3 === 1 && i < 3 * late ? 5 : 0),
        ),
      ),
    [4, 3],
    [0, 1],
  ),
  edge(
    'Share of lines that may go back before it is a habit',
    0.04,
    (n: number) => outOfOrder(steady(n, 4, { 6: 60, 14: 92 })),
    [25, 26],
    [0, 2],
  ),
  edge(
    'Usual steps a last line is ahead of the others',
    8,
    (x: number) => outOfOrder(steady(12, 4, { 11: 40 + x })),
    [32, 33],
    [0, 1],
  ),
  edge(
    'Days between two lines, across which nothing is said of a line between',
    20,
    (x: number) => outOfOrder([0, 2, 4, 6, 8, 60, 8 + x, 10 + x, 12 + x, 14 + x]),
    [20, 21],
    [1, 0],
  ),
  edge(
    'Usual steps between two lines, across which nothing is said of a line between',
    8,
    (x: number) => outOfOrder([0, 4, 8, 12, 16, 90, 16 + x, 20 + x, 24 + x, 28 + x]),
    [32, 33],
    [1, 0],
  ),
  edge(
    'Days behind the line below that may be a line written late',
    5,
    (x: number) => outOfOrder(steady(12, 4, { 5: 24 + x })),
    [9, 10],
    [0, 1],
  ),
  edge(
    'Least day of a column of dates',
    20_000,
    (x: number) => outOfOrder(steady(12, 4, { 5: 70 }).map((day) => day + x - 46_000)),
    [19_000, 21_000],
    [0, 1],
  ),
  edge(
    'Days from which on the days between are a habit',
    4,
    (n: number) => gapsWith(n, 1, 93),
    [3, 4],
    [0, 1],
  ),
  edge(
    'Lines with other days between, however few there are',
    2,
    ([n, off]: [number, number]) => gapsWith(n, off, 93),
    [
      [6, 2],
      [7, 3],
    ],
    [2, 0],
  ),
  edge('Share of lines with other days between', 0.3, (n: number) => gapsWith(n, 6, 93), [19, 20], [0, 6]),
  edge('Share of lines that go backward', 0.15, (n: number) => gapsWith(n, 3, -1), [19, 20], [0, 3]),
  edge('Clocks from which on the hour is a habit', 6, (n: number) => far(10, n, [1140]), [5, 6], [0, 1]),
  edge('Hours from the usual one', 4.5, (x: number) => far(10, 12, [x]), [SEVEN + 269, SEVEN + 271], [0, 1]),
  edge('Spreads from the usual hour', 7, (x: number) => far(60, 12, [x]), [SEVEN + 615, SEVEN + 630], [0, 1]),
  edge(
    'Spread in hours up to which the hour is a habit',
    1.6,
    (x: number) => far(x, 13, [1140]),
    [64, 66],
    [1, 0],
  ),
  edge(
    'Hours from half a day, within which morning and evening are exchanged',
    1.5,
    (x: number) => isTurned(10, x),
    [1049, 1051],
    [false, true],
  ),
  edge(
    'Spreads from half a day, within which morning and evening are exchanged',
    3,
    (x: number) => isTurned(30, x),
    [1004, 1008],
    [false, true],
  ),
  edge(
    'Hours between two that are a habit',
    1.2,
    (x: number) => far(10, 12, [1140, x]),
    [1211, 1213],
    [0, 2],
  ),
  edge(
    'Share of clocks that are far from the usual hour',
    0.2,
    (n: number) => far(10, n, [780, 960, 1140]),
    [14, 15],
    [0, 3],
  ),
  edge(
    'Days of which one can be years away',
    5,
    (n: number) => outOfOrder(shuffled(n, [9, 386])),
    [4, 5],
    [0, 1],
  ),
  edge('Days from all others', 200, (x: number) => outOfOrder(shuffled(12, [9, x])), [217, 220], [0, 1]),
  edge(
    'Share of days that are far from all others',
    0.1,
    (n: number) => outOfOrder(shuffled(n, [9, 386, 3, 390])),
    [19, 20],
    [0, 2],
  ),
  edge('Spans from which on the hours between are a habit', 5, (n: number) => odd(n, [1140]), [4, 5], [0, 1]),
  edge(
    'Spread in hours up to which the hours between are a habit',
    2.2,
    (x: number) =>
      stamped([660, 660 - x, 660 + x, 660, 660 - x, 660 + x, 660 - x, 660 + x, 660 - x, 660 + x, 1950]),
    [88, 90],
    [1, 0],
  ),
  edge(
    'Share of spans that are unlike the others',
    0.25,
    (n: number) => odd(n, [1140, 200, 1000]),
    [11, 12],
    [0, 3],
  ),
  edge('Hours half a day is', 12, (x: number) => areExchanged(apart(9, [x])), [1290, 1298], [false, true]),
  edge(
    'Lines from which on a stated time is the time between',
    4,
    (n: number) => stated((m, i) => m / 60 + (i === 1 ? 3 : 0), n),
    [3, 4],
    [0, 1],
  ),
  edge(
    'Hours a stated time may be off',
    0.13,
    (x: number) => stated((m, i) => m / 60 + (i === 1 ? x : 0)),
    [0.125, 0.135],
    [0, 1],
  ),
  edge(
    'Different times that must be stated',
    3,
    (n: number) =>
      times('WHOLE.STATED', [
        ['Start', 'End', 'Hours (h)'],
        ...Array.from({ length: 8 }, (_, i): Line => [
          clock(480 + 7 * i),
          clock(480 + 7 * i + 120 + 60 * (i % (n - 1))),
          i === 3 ? 9 : 2 + (i % (n - 1)),
        ]),
      ]),
    [2, 3],
    [0, 1],
  ),
  edge(
    'Spreads from half a day between two hours',
    3,
    (x: number) => areExchanged(spans([660, 690, 630, 660, 690, 630, 660, 690, 630, x], 137)),
    [1244, 1249],
    [false, true],
  ),
  edge(
    'Hours a stated time may be off after a whole day',
    0.13,
    (x: number) => stated((m, i) => m / 60 + (i === 1 ? 24 + x : 0)),
    [0.125, 0.135],
    [0, 1],
  ),
  edge(
    'Share of a stated time it may be off',
    0.02,
    (x: number) =>
      times('WHOLE.STATED', [
        ['Start', 'End', 'Hours (h)'],
        ...Array.from({ length: 8 }, (_, i): Line => [
          clock(360 + 7 * i),
          clock(960 + 18 * i),
          Number((10 + (11 * i) / 60 + (i === 0 ? x : 0)).toFixed(4)),
        ]),
      ]),
    [0.195, 0.205],
    [0, 1],
  ),
  edge(
    'Share of days in a column of dates',
    0.8,
    (n: number) =>
      times('WHOLE.DATE', [
        ['Date', 'Figure'],
        ...Array.from({ length: 20 }, (_, i): Line => [
          i < n ? dayAfter(i === 5 ? 70 : 4 * i) : clock(SEVEN + i),
          FIGURES[i % 10] ?? 0,
        ]),
      ]),
    [15, 16],
    [0, 1],
  ),
  edge(
    'Share of clocks in a column of clocks',
    0.8,
    (n: number) =>
      times('WHOLE.SPAN', [
        ['In', 'Out'],
        ...Array.from({ length: 20 }, (_, i): Line => [
          i < n ? clock(1200 + 7 * i) : dayAfter(i),
          clock(1200 + 7 * i + (i === 3 ? 1140 : 660 + 5 * (i % 3))),
        ]),
      ]),
    [15, 16],
    [0, 1],
  ),
  edge(
    'Share of days with their hour in a column of moments',
    0.8,
    (n: number) =>
      times('WHOLE.SPAN', [
        ['In', 'Out'],
        ...Array.from({ length: 20 }, (_, i): Line => [
          i < n ? stamp(1440 * i + 1200) : dayAfter(i),
          stamp(1440 * i + 1200 + (i === 3 ? 1740 : 660 + 5 * (i % 3))),
        ]),
      ]),
    [15, 16],
    [0, 1],
  ),
];

import type { Near } from '../../../base/near';
import { serialOfCalendarDay } from '../../../units/dates';
import type { Line } from '../check';
import { dayAfter, edge, found, times } from '../check';
import { saidOf } from '../rows';

/** What is said of formulas, copies, totals and times changes at numbers somebody chose. */
const lines = (n: number, line: (i: number) => Line): readonly Line[] =>
  Array.from({ length: n }, (_, i) => line(i));

const typed = (formulas: number, numbers: number): number =>
  times('FORMULA.TYPED', [
    ['Run', 'Egg weight (g)', 'Eggs per gram', 'Eggs'],
    ...lines(formulas + numbers, (i) => [
      `R${i}`,
      120 + i,
      650 + 3 * i,
      i < formulas ? `=B${i + 2}*C${i + 2}` : 84_000 + 7 * i,
    ]),
  ]);
const shownFormula = (length: number): boolean | undefined =>
  found('FORMULA.TYPED', [
    ['Run', 'Eggs'],
    ...lines(8, (i) => [
      `R${i}`,
      i === 6 ? 84_000 : `=SUM(${'1+'.repeat((length - 7) / 2)}${length % 2 ? '2' : '22'})`.slice(0, length),
    ]),
  ])[0]?.expected.endsWith('…');
const linked = (between: number, end = ''): number =>
  times('FORMULA.LINK', [
    ['Run', 'Eggs'],
    ['R1', `='C:\\farm.xlsx'${' '.repeat(between)}!SPAWN.EGGS(1)${end}`],
  ]);

/** Values of which the first stand below each other the same, all others once but for some. */
const copies = (same: number, others: readonly number[]): number =>
  times('COLUMN.COPIED', [
    ['Date', 'Temperature (°C)'],
    ...[...new Array<number>(same).fill(26.3), ...others].map((one, i): Line => [dayAfter(i), one]),
  ]);
const once = (n: number): readonly number[] => Array.from({ length: n }, (_, i) => 24 + 0.1 * ((i * 7) % 22));
const again = (grams: number, perGram: number | null): number =>
  times('ROW.REPEATED', [
    ['Run', 'Egg weight (g)', ...(perGram === null ? [] : ['Eggs per gram'])],
    ...[['R1', grams, perGram] as const, ['R2', 134.2, 690] as const, ['R3', grams, perGram] as const].map(
      ([run, x, y]): Line => (perGram === null ? [run, x] : [run, x, y]),
    ),
  ]);

const total = (sold: number): number =>
  times('WHOLE.TOTAL', [
    ['Date', 'Dead', 'Sold'],
    ...lines(6, (i) => [dayAfter(i), 12 + 5 * i, 300 + 50 * i]),
    ['Total', 147, sold],
  ]);
const latency = (hours: number, preparation = ''): string | undefined =>
  saidOf('LATENCY.FIT', { latency: hours, temperature: 25 }, { preparation })[0]?.expected;
const fits = (hours: number): boolean => latency(hours) === undefined;
const swapped = (daysBefore: number): boolean => {
  const meant = serialOfCalendarDay(2026, 5, 3) ?? NaN;
  return (
    saidOf('DATE.ORDER', {
      injected: meant - daysBefore,
      stripped: serialOfCalendarDay(2026, 3, 5) ?? NaN,
    })[0]?.proposal !== undefined
  );
};

/** A product of known columns that does not hold in the last lines. */
const product = (holding: number, broken: number): number =>
  times('WHOLE.RELATION', [
    ['Run', 'Egg weight (g)', 'Eggs per gram', 'Eggs'],
    ...lines(holding + broken, (i) => {
      const [grams, perGram] = [110 + 17 * ((i * 5) % 13), 640 + 9 * ((i * 7) % 11)];
      return [`R${i + 1}`, grams, perGram, grams * perGram + (i < holding ? 0 : 9000 + 1300 * i)];
    }),
  ]);
const closing = (off: number): number =>
  times('WHOLE.RELATION', [
    ['Date', 'Opening', 'Zrabe', 'Closing'],
    ...lines(12, (i) => {
      const [open, dead] = [100_000 + 1371 * ((i * 5) % 7), 700 + 13 * ((i * 3) % 8)];
      return [dayAfter(i), open, dead, open - dead + (i === 5 ? off : 0)];
    }),
  ]);

export const NEAR: readonly Near[] = [
  edge('Formulas of a column of formulas', 5, (n: number) => typed(n, 1), [4, 5], [0, 1]),
  edge('Share of the cells of a column of formulas', 0.7, (n: number) => typed(n, 20 - n), [13, 14], [0, 6]),
  edge('Signs of a formula that are shown', 60, shownFormula, [60, 61], [false, true]),
  edge('Signs of a formula', 8192, (n: number) => linked(0, ' '.repeat(n)), [8150, 8180], [1, 0]),
  edge(
    'Times chance makes a run',
    0.0005,
    ([n, twice]: [number, boolean]) => copies(5, [...once(n), ...(twice ? [24] : [])]),
    [
      [14, false],
      [15, true],
    ],
    [1, 0],
  ),
  edge('Other values from which on chance is known', 4, (n: number) => copies(8, once(n)), [3, 4], [1, 0]),
  edge(
    'Digits two records carry together',
    9,
    (grams: number) => again(grams, 655),
    [121.51, 121.511],
    [0, 1],
  ),
  edge(
    'Measured columns of two records',
    2,
    (perGram: number | null) => again(123.456_789, perGram),
    [null, 655],
    [0, 1],
  ),
  edge(
    'Powers of e a total may be off',
    0.5,
    total,
    [Math.round(2550 * 1.63), Math.round(2550 * 1.67)],
    [1, 0],
  ),
  edge('Share by which a farm may be earlier', 0.15, fits, [7.7, 7.9], [false, true]),
  edge('Share by which a farm may be later', 0.15, fits, [27, 27.3], [true, false]),
  edge(
    'Letters of a word',
    3,
    (word: string) => latency(60, word),
    ['own', 'carp'],
    ['7.79 h to 27.2 h', '8.77 h to 16.8 h'],
  ),
  edge(
    'Days between two dates, one of them with day and month exchanged',
    10,
    swapped,
    [9.9, 10.1],
    [true, false],
  ),
  edge(
    'Day after the last one',
    2_958_466,
    (date: number) => saidOf('DATE.CENTURY', { date })[0]?.sentence.includes('no day'),
    [2_958_465, 2_958_466],
    [false, true],
  ),
  edge('Share of lines a relation is judged by', 0.7, (n: number) => product(n, 40 - n), [27, 28], [0, 12]),
  edge('Share a sum may be off', 0.0001, closing, [10.3, 10.8], [0, 1]),
];

import type { Near } from '../../../base/near';
import type { Line } from '../check';
import { edge, found, times } from '../check';

/** What a column says of its own cells changes at numbers somebody chose. */
const listed = (values: readonly (number | string)[], heading = 'Amount X'): readonly Line[] => [
  ['Name', heading],
  ...values.map((value, i): Line => [`N${i + 1}`, value]),
];
const wild = (values: readonly (number | string)[]): number => times('WHOLE.WILD', listed(values));

/** Numbers close to a hundred, and one that is not. */
const ALIKE = [99, 101, 100, 98, 102, 100, 99, 101, 100, 102, 98, 100];
const withOne = (value: number): readonly number[] => ALIKE.map((x, i) => (i === 5 ? value : x));
/** So many above and below a middle by one step. */
const around = (middle: number, step: number, more: readonly number[], pairs = 10): readonly number[] => [
  ...Array.from({ length: pairs }, () => [middle - step, middle + step]).flat(),
  middle - step,
  middle,
  ...more,
];
/** A number a hundred times the others, which spread by so many powers of ten. */
const spreadBy = (powers: number): number => {
  const [low, high] = [100 * 10 ** -powers, 100 * 10 ** powers];
  return wild([...Array.from({ length: 10 }, () => [low, high]).flat(), low, 100, 10_000]);
};
const nearPower = (value: number): string | undefined =>
  found('WHOLE.WILD', listed(withOne(value)))[0]?.expected;
const nearWidePower = (value: number): string | undefined => {
  const [low, high] = [91.1, 109.77];
  const spread = Array.from({ length: 10 }, () => [low, high]).flat();
  return found('WHOLE.WILD', listed([...spread, low, 100, value]))[0]?.expected;
};
/** Temperatures close together, and more. */
const warm = (more: readonly number[], step = 0.3): number => wild(around(26.5, step, more));
const scale = (middle: number, value: number): string | undefined =>
  (['WHOLE.FAHRENHEIT', 'WHOLE.WILD'] as const).find(
    (rule) => times(rule, listed(around(middle, 0.3, [value]), 'Water')) > 0,
  );
const FEW_WARM = [26.2, 26.8, 26.5, 26.3, 26.7, 26.4, 26.6];

const negative = (lines: number, below: number): number =>
  times(
    'WHOLE.NEGATIVE',
    listed(Array.from({ length: lines }, (_, i) => (i % 12 === 2 && i < 12 * below ? -45 : 40 + i))),
  );
const percents = (values: readonly number[]): number => times('WHOLE.HUNDRED', listed(values, 'Good %'));
const GOOD = [71, 74, 69, 72, 75, 70, 73, 68, 76, 71];
const strangeWords = (numbers: number, words: number): number =>
  times(
    'WHOLE.WORD',
    listed([
      ...Array.from({ length: numbers }, (_, i) => 40 + i),
      ...Array.from({ length: words }, (_, i) => `zr${'abcdefgh'[i] ?? ''}q`),
    ]),
  );

export const NEAR: readonly Near[] = [
  edge('Powers of ten a number is off to be wild', 0.65, (x: number) => wild(withOne(x)), [440, 455], [0, 1]),
  edge('Spread in powers of ten up to which a column is tight', 0.2, spreadBy, [0.133, 0.137], [1, 0]),
  edge(
    'Numbers of which one can be wild',
    5,
    (n: number) => wild([...ALIKE.slice(0, n - 1), 1000]),
    [4, 5],
    [0, 1],
  ),
  edge(
    'Share of the numbers above nothing from which on a column is judged',
    0.7,
    (zeros: number) =>
      wild([...ALIKE, 99, 1000, 101, 100, 98, 99, 100, 101].map((x, i) => (i < zeros ? 0 : x))),
    [7, 6],
    [0, 1],
  ),
  edge(
    'Powers of ten within which a nought would mend it',
    0.1,
    nearPower,
    [1250, 1270],
    ['125', 'as the other lines'],
  ),
  edge(
    'Spreads within which a nought would mend it',
    2,
    nearWidePower,
    [1300, 1340],
    ['130', 'as the other lines'],
  ),
  edge(
    'A handful where others count hundreds',
    20,
    (x: number) => wild(ALIKE.map((y, i) => (i === 5 ? x : 3 * y))),
    [20, 21],
    [0, 1],
  ),
  edge(
    'Share a number may differ from the sum of the others to be their total',
    0.002,
    (x: number) => wild([100, 101, 99, 100, 102, 98, x, 100, 101, 99, 100]),
    [1001.95, 1002.05],
    [0, 1],
  ),
  edge(
    'Powers of ten between two that are out together',
    0.38,
    (x: number) => wild(ALIKE.map((y, i) => (i === 2 ? 1000 : i === 8 ? x : y))),
    [2390, 2410],
    [0, 2],
  ),
  edge('Spreads more, shared among the numbers', 20, (x: number) => warm([x]), [29.98, 30.02], [0, 1]),
  edge(
    'Spreads a number is off where numbers lie close',
    7,
    (x: number) => warm([x]),
    [29.98, 30.02],
    [0, 1],
  ),
  edge(
    'Numbers close together of which one can be off',
    8,
    (n: number) => wild([...FEW_WARM.slice(0, n - 1), 45]),
    [7, 8],
    [0, 1],
  ),
  edge(
    'Spread as a share of the middle up to which numbers lie close',
    0.12,
    (step: number) => warm([60], step),
    [2.1, 2.2],
    [1, 0],
  ),
  edge(
    'Share of numbers with decimals from which on they are read on a plain scale',
    0.2,
    (n: number) => wild([...Array.from({ length: 99 }, (_, i) => (i < n ? 26.5 : 26) + (i % 3)), 120]),
    [19, 20],
    [0, 1],
  ),
  edge(
    'Spreads within which °F are °C',
    4,
    (x: number) => scale(26.5, x),
    [82.7, 83.1],
    ['WHOLE.FAHRENHEIT', 'WHOLE.WILD'],
  ),
  edge(
    'Least number that may be °F',
    60,
    (x: number) => scale(15.5, x),
    [59.9, 60.1],
    ['WHOLE.WILD', 'WHOLE.FAHRENHEIT'],
  ),
  edge(
    'Most that may be °F',
    105,
    (x: number) => scale(40.5, x),
    [104.9, 105.1],
    ['WHOLE.FAHRENHEIT', 'WHOLE.WILD'],
  ),
  edge(
    'Share of the way from the middle that the next line may differ by in a trend',
    0.3,
    (x: number) => warm([26.2, 29.9, x]),
    [31.3, 31.4],
    [0, 1],
  ),
  edge(
    'Lines of which one can be the only one below nothing',
    4,
    (n: number) => negative(n, 1),
    [3, 4],
    [0, 1],
  ),
  edge('Share of lines that may be below nothing', 0.08, (n: number) => negative(n, 2), [24, 25], [0, 2]),
  edge(
    'Percent a part may be',
    100,
    (x: number) => percents(GOOD.map((y, i) => (i === 4 ? x : y))),
    [99.9, 100.1],
    [0, 1],
  ),
  edge(
    'Middle above which shares are percents',
    1.01,
    (x: number) => percents([x, x, x, x, x, x, 145, x, x, x, x, x, x, x, x, x, x, x, x, x, x]),
    [1.005, 1.02],
    [0, 1],
  ),
  edge(
    'Share of numbers in a column in which a word is strange',
    0.75,
    ([n, w]: [number, number]) => strangeWords(n, w),
    [
      [14, 6],
      [15, 5],
    ],
    [0, 5],
  ),
  edge(
    'Percent below which nearly all must be',
    100,
    (x: number) => percents([...GOOD, ...GOOD.slice(1), x, 145]),
    [95, 105],
    [1, 0],
  ),
];

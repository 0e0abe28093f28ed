import type { Near } from '../../../base/near';
import type { Cell } from '../../../base/values';
import { clockIn, orderIn, readDate } from '../../columns/cells/dates';
import { readNumbers } from '../../columns/cells/values';
import { guessHeader } from '../../columns/headers';
import type { Line } from '../check';
import { check, dayAfter, edge } from '../check';

/** What cells and headings are read as changes at numbers somebody chose. */
const lines = (n: number, line: (i: number) => Line): readonly Line[] =>
  Array.from({ length: n }, (_, i) => line(i));
/** The day written, and undefined where none is read. */
const day = (text: string): number | undefined => readDate(text, 'day first');
const hour = (text: string): number | undefined => {
  const share = clockIn(text)?.share;
  return share === undefined ? undefined : 24 * share;
};
const momentsOf = (list: readonly number[]): Float64Array =>
  readNumbers(
    {
      length: list.length,
      cellAt: (i) => list[i] ?? null,
      numberAt: (i) => list[i] ?? NaN,
      isDate: () => false,
    },
    { field: 'injected', unit: undefined, decimal: '.', order: 'day first' },
  ).values;
/** Hours that numbers of a column of moments are read as; days and what cannot be read are left out. */
const hoursOf = (list: readonly number[]): readonly number[] =>
  [...momentsOf(list)].flatMap((x) => (x < 1 ? [Math.round(2400 * x) / 100] : []));
const readable = (list: readonly number[]): number => momentsOf(list).filter((x) => !Number.isNaN(x)).length;
const pointed = (x: number): readonly number[] => hoursOf([x, x, x, 20.3, 21.3]);

/** What the third of the columns is read as, with its unit. */
const third = (heading: string, cells: readonly Cell[]): string | undefined => {
  const { field, unit } =
    check([
      ['Run', 'Date', heading, 'Female weight (kg)'],
      ...cells.map((cell, i): Line => [`R${i}`, dayAfter(3 * (i % 10)), cell, 1.2 + 0.1 * i]),
    ]).tables[0]?.mapping[2] ?? {};
  return [field, unit].filter(Boolean).join(' ');
};
const injected = (cells: readonly Cell[]): string | undefined => third('Injected at', cells);
/** Hours without a mark, some of which are none. */
const digits = (clocks: number): string | undefined =>
  injected(
    Array.from({ length: 20 }, (_, i) => (i < clocks ? 2000 + 10 * (i % 6) + 100 * (i % 3) : 2660 + i)),
  );
/** Hours with a point at the end of the day. */
const late = (hours: number): string | undefined =>
  injected(Array.from({ length: 8 }, (_, i) => `${hours}.${10 + 3 * i}`));
/** About so much in every line. */
const about = (heading: string, middle: number): string | undefined =>
  third(
    heading,
    Array.from({ length: 7 }, (_, i) => Number((middle * (1 + 0.02 * (i - 3))).toPrecision(5))),
  );
const brood = (middle: number): string | undefined => {
  const { field, unit } =
    check([
      ['Run', 'Female weight (kg)', 'Eggs'],
      ...lines(7, (i) => [
        `R${i}`,
        Number((middle * (1 + 0.02 * (i - 3))).toPrecision(5)),
        80_000 + 777 * ((i * 5) % 7),
      ]),
    ]).tables[0]?.mapping[1] ?? {};
  return [field, unit].filter(Boolean).join(' ');
};
const hatch = (high: number): string | undefined =>
  third(
    'Hatch %',
    Array.from({ length: 9 }, (_, i) => (i > 6 ? high : 0.8 + 0.01 * i)),
  );

/** The first count of eggs, where so many are written with a mark and three digits behind it. */
const eggs = (marked: number): number | undefined =>
  check([
    ['Run', 'Date', 'Eggs'],
    ...lines(6, (i) => [`R${i}`, dayAfter(3 * i), i < marked ? `8${i}.250` : 80_250 + 1000 * i]),
  ]).tables[0]?.numbers.eggs?.[0];
/** Are injections at this share of the lines' clocks put on the day of their line? */
const onTheirDay = (clocks: number): boolean | undefined =>
  readNumbers(
    {
      length: 12,
      cellAt: (i) => (i < clocks ? '21:10' : '2026-04-03 21:10'),
      numberAt: () => NaN,
      isDate: () => false,
    },
    { field: 'injected', unit: undefined, decimal: '.', order: 'day first' },
  ).isClock;
const fieldOf = (heading: string): string | undefined => guessHeader(heading)[0]?.field;

export const NEAR: readonly Near[] = [
  edge('Digits of a year that is short', 2, day, ['3/4/25', '3/4/125'], [45_750, day('3/4/0125')]),
  edge('Short year of the last century', 70, day, ['3/4/69', '3/4/70'], [61_821, 25_661]),
  edge(
    'Year of days without one, a leap year',
    2000,
    (text: string) => day(text) !== undefined,
    ['29/2', '30/2'],
    [true, false],
  ),
  edge(
    'Digits of a number at the front that is no year',
    2,
    orderIn,
    ['25/04/03', '125/04/03'],
    ['day first', 'year first'],
  ),
  edge('Hour that is noon', 12, hour, ['11 pm', '12 pm'], [23, 12]),
  edge('Hours of the night after midnight', 5, hour, ['4 noite', '5 noite'], [4, 17]),
  edge('Hours of a day, with a point', 24, late, [23, 24], ['injected', 'hormoneVolume mL']),
  edge(
    'Number that is an hour with its minutes',
    24,
    pointed,
    [24, 25],
    [
      [20.5, 21.5],
      [0.42, 0.42, 0.42],
    ],
  ),
  edge(
    'Number beyond hours and minutes without a mark',
    10_000,
    (x: number) => readable([x, x, x, 20.3, 21.3]),
    [9500, 10_500],
    [0, 5],
  ),
  edge(
    'Number that is a day among hours and minutes without a mark',
    10_000,
    (x: number) => readable([2230, 2130, 2030, x, 2115]),
    [9500, 10_500],
    [4, 5],
  ),
  edge('Number that is an hour with a point', 24.6, pointed, [24.3, 24.9], [[20.5, 21.5], []]),
  edge('Share of the moments that are clocks', 2, onTheirDay, [6, 7], [false, true]),
  edge('Share of numbers that read as hours', 0.8, digits, [15, 16], ['females', 'injected']),
  edge('Numbers with three digits behind their mark', 2, eggs, [1, 2], [80.25, 80_250]),
  edge(
    'Middle of shares that are parts of one',
    1.0001,
    (x: number) => about('Hatch share', x),
    [0.95, 1.05],
    ['hatchShare share', 'hatchShare %'],
  ),
  edge(
    'Share under a percent sign that is no part of one',
    1.5,
    hatch,
    [1.4, 1.6],
    ['hatchShare share', 'hatchShare %'],
  ),
  edge(
    'How much better a unit must fit that is not said',
    0.3,
    (x: number) => about('Feed', x),
    [0.5, 0.53],
    ['feed kg', 'feed g'],
  ),
  edge(
    'How badly a unit must fit that is said',
    0.35,
    brood,
    [35, 37],
    ['femaleWeight kg', 'femaleWeight lb'],
  ),
  edge('Letters of a heading with a slip', 5, fieldOf, ['Fegd', 'Hatcd'], [undefined, 'hatchShare']),
  edge(
    'Words of a heading',
    9,
    (n: number) =>
      fieldOf(['eggs', 'zq', 'wx', 'rt', 'pl', 'mn', 'bv', 'cx', 'dk', 'fj'].slice(0, n).join(' ')),
    [9, 10],
    ['eggs', undefined],
  ),
  edge(
    'Share of a meaning that other words and another unit leave',
    0.35,
    fieldOf,
    ['egg weight zq wx (°C)', 'eggs per gram zq wx (°C)'],
    [undefined, 'eggsPerGram'],
  ),
];

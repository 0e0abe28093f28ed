import type { Near } from '../../../base/near';
import { isoDateOfSerial as day } from '../../../units/dates';
import { findLinks } from '../../meaning/links';
import type { Line } from '../check';
import { check, findingsOf } from '../check';

/** What is said of lines together changes at numbers somebody chose; no bundle holds this file. */
/** How grave the finding of a rule is; undefined where it says nothing. */
const grave = (rule: string, values: readonly Line[]): string | undefined =>
  findingsOf(values).find((one) => one.rule === rule)?.severity;
/** Days of spawnings with counts that mean nothing to any other rule. */
const dated = (days: readonly number[]): readonly Line[] => [
  ['Date', 'Eggs'],
  ...days.map((one, i): Line => [day(46_000 + one), 90_137 + 1379 * ((i * 5) % 7)]),
];
const late = (by: number): string | undefined =>
  grave('DATE.SEQUENCE', dated([0, 4, 8, 12, 16, 16 - by, 24, 28, 32, 36]));
const ahead = (by: number): string | undefined =>
  grave('DATE.SEQUENCE', dated([0, 2, 4, 6, 8, 10, 12, 12 + by]));

/** Temperatures of which so many stand below each other the same. */
const alike = (run: number): string | undefined =>
  grave('COLUMN.COPIED', [
    ['Date', 'Temperature (°C)'],
    ...Array.from({ length: 60 }, (_, i): Line => [
      day(46_000 + i),
      i < run ? 26.3 : 24 + ((i * 7) % 61) / 20,
    ]),
  ]);

/** Products with a factor of their own, of which one input is so many times wider at its top than at its foot. */
const narrow = (width: number): number => {
  const rows = 9;
  const a = Float64Array.from({ length: rows }, (_, i) => 110 + 17 * ((i * 5) % 12));
  const b = Float64Array.from(
    { length: rows },
    (_, i) => 20 * (1 + ((width - 1) * ((i * 7) % rows)) / (rows - 1)),
  );
  const c = a.map((x, i) => 0.0367 * x * (b[i] ?? NaN));
  return findLinks([a, b, c], rows).filter(({ kind, result }) => kind === 'product' && result === 2).length;
};

/** A price that changes by the line or hardly at all, beside money that comes out to nothing. */
const running = (moves: number): number => {
  const rows = 12;
  const rise = Float64Array.from({ length: rows }, (_, i) => (i > 0 && i <= moves ? 3 : 0));
  const list = new Float64Array(rows).fill(40);
  for (let i = 1; i < rows; i++) list[i] = (list[i - 1] ?? 0) + (rise[i] ?? 0);
  return findLinks([list, rise], rows).filter(
    ({ kind, isRunning, result }) => kind === 'sum' && isRunning && result === 0,
  ).length;
};

/** Meals under words nobody knows with their sum, so many days. */
const meals = (days: number): string | undefined =>
  check([
    ['Date', 'Zrabe', 'Quolt', 'Feed given (g)'],
    ...Array.from({ length: days }, (_, i): Line => {
      const [one, two] = [110 + 17 * ((i * 5) % 7), 95 + 13 * ((i * 3) % 7)];
      return [day(46_000 + i), one, two, one + two];
    }),
  ]).tables[0]?.mapping[1]?.field;

/** Numbers of the columns below their headings, without brackets. */
const numbered = (columns: number): number =>
  check([
    ['Date', 'Eggs', 'Hatched', 'Fry'].slice(0, columns),
    Array.from({ length: columns }, (_, i) => i + 1),
    ...Array.from({ length: 6 }, (_, i): Line =>
      [day(46_000 + i), 90_137 + 1379 * i, 50_311 + 977 * i, 30_223 + 571 * i].slice(0, columns),
    ),
  ]).tables[0]?.length ?? 0;

export const NEAR: readonly Near[] = [
  {
    number: 'Days out of order that may be a line written late',
    value: 3,
    below: () => late(3),
    above: () => late(4),
    answers: ['look', 'unlikely'],
  },
  {
    number: 'Days the last line may lie ahead of the others',
    value: 62,
    below: () => ahead(62),
    above: () => ahead(63),
    answers: [undefined, 'unlikely'],
  },
  {
    number: 'Values below each other the same, from which on chance is asked',
    value: 5,
    below: () => alike(4) === undefined,
    above: () => alike(5) === undefined,
    answers: [true, false],
  },
  {
    number: 'Times the top of an input must be its foot to explain anything',
    value: 1.25,
    below: () => narrow(1.24),
    above: () => narrow(1.26),
    answers: [0, 1],
  },
  {
    number: 'Lines in which a sum that goes on must move',
    value: 2,
    below: () => running(1),
    above: () => running(2),
    answers: [0, 1],
  },
  {
    number: 'Lines from which on parts are of one kind with their sum',
    value: 5,
    below: () => meals(4) === 'feed',
    above: () => meals(5) === 'feed',
    answers: [false, true],
  },
  {
    number: 'Columns whose numbers without brackets are no line of the table',
    value: 4,
    below: () => numbered(3),
    above: () => numbered(4),
    answers: [7, 6],
  },
];

import type { Near } from '../../base/near';
import { checkFile } from '../checkFile';
import { readingShare } from '../findings/reading';
import { RowView } from '../findings/rowView';
import { hatchBaseOf } from '../shareBase';
import type { Line } from './check';
import { check, dayAfter, edge, findingsOf, tablesOf } from './check';

/** What shares are shares of, and when a reading is doubted, changes at numbers somebody chose. */
const lines = (n: number, line: (i: number) => Line): readonly Line[] =>
  Array.from({ length: n }, (_, i) => line(i));
const baseOf = (values: readonly Line[]): string | undefined => {
  const [table] = check(values).tables;
  return table && hatchBaseOf(table);
};
/** Eggs of which so many percent were fertilised and 40 hatched; so many lines say so, the others of the fertilised. */
const counted = (fertilised: number, said: number, others = 0): string | undefined =>
  baseOf([
    ['Run', 'Eggs', 'Fertilised %', 'Hatched', 'Hatch %'],
    ...lines(20, (i) => [
      `R${i + 1}`,
      10_000 + 100 * i,
      fertilised,
      4000 + 40 * i,
      i < others ? 4000 / fertilised : said,
    ]),
  ]);
const sampled = (hatch: number, n = 2): string | undefined =>
  baseOf([
    ['Run', 'Fertilised %', 'Hatch %'],
    ...lines(12, (i) => [`R${i + 1}`, 60, i < n ? hatch : 52 + i]),
  ]);

/** Eggs a gram of which so many are out of the ordinary: how many are accused? */
const accused = (n: number, odd: number): number =>
  findingsOf([
    ['Date', 'Eggs per gram'],
    ...lines(n, (i) => [dayAfter(i), i < odd ? 1290 + 7 * ((i * 5) % 11) : 640 + 5 * ((i * 7) % 17)]),
  ]).filter(({ rule, severity }) => rule === 'EGGS.PERGRAM' && severity !== 'look').length;
/** The same on a sheet of twenty numbers of which so many are worked out by our functions. */
const workedOut = (formulas: number): number =>
  findingsOf([
    ['Run', 'Eggs per gram', 'Zrabe'],
    ...lines(10, (i) => [
      `R${i}`,
      i === 4 ? 310 : 640 + 5 * ((i * 7) % 17),
      i < formulas ? `=SPAWN.EGGS(B${i + 2})` : 7,
    ]),
  ]).filter(({ rule }) => rule === 'EGGS.PERGRAM').length;

/** Is it asked what a column means that is headed so? */
const isAsked = (heading: string): boolean =>
  readingShare(
    tablesOf([
      ['Run', 'Date', heading, 'Eggs'],
      ...lines(7, (i) => [`R${i}`, dayAfter(3 * i), 40 + 3 * ((i * 5) % 7), 81_000 + 1111 * i]),
    ]),
  ).questions.some(({ header }) => header === heading);

/** Is it asked what a column of words means that has one among so many lines? */
const isThinAsked = (all: number): boolean =>
  readingShare(
    tablesOf([
      ['Run', 'Date', 'Eggs', 'Ferk'],
      ...lines(all, (i) => [`R${i}`, dayAfter(3 * i), 81_000 + 1111 * i, i === 2 ? 'Ulm' : null]),
    ]),
  ).questions.some(({ header }) => header === 'Ferk');

/** Shares of eggs that hatched, right in so many lines: does the farm mean this share? */
const isMeant = ([right, all]: readonly [right: number, all: number]): boolean =>
  isMeantWhere(all, (i) => i < right);
const isMeantWhere = (all: number, isRight: (i: number) => boolean): boolean => {
  const [table] = tablesOf([
    ['Run', 'Eggs', 'Fertilised %', 'Hatched', 'Hatch %'],
    ...lines(all, (i) => [
      `R${i + 1}`,
      10_000 + 100 * i,
      80,
      4000 + 40 * i,
      isRight(i) ? 40 : i % 4 < 2 ? 33 : 50,
    ]),
  ]);
  return table !== undefined && new RowView(table).relations.some(({ rule }) => rule === 'SHARE.COUNTS');
};
/** The same where only every second line is right, beside the first. */
const isMeantInLong = (all: number): boolean => isMeantWhere(all, (i) => i === 0 || i % 2 === 1);
/** How often it is told that no more than this was done, of a text that is read and checked. */
const told = (most: number): number => {
  let n = 0;
  checkFile(
    new TextEncoder().encode('Run,Date,Eggs\nR1,03/05/2025,81000\nR2,06/05/2025,84000\n'),
    'book.csv',
    {},
    (share) => {
      if (share <= most) n++;
      return true;
    },
  );
  return n;
};

export const NEAR: readonly Near[] = [
  edge(
    'Share to which hatching is written',
    0.01,
    (said: number) => counted(50, said),
    [40.95, 41.05],
    ['eggs', undefined],
  ),
  edge(
    'Times what rounding hides, between two readings',
    2,
    (fertilised: number) => counted(fertilised, 40),
    [95.5, 95],
    [undefined, 'eggs'],
  ),
  edge(
    'Share of the lines that say the same',
    0.8,
    (others: number) => counted(50, 40, others),
    [5, 4],
    ['fertilised', 'eggs'],
  ),
  edge(
    'Share of the eggs that hatches beyond what is fertilised',
    0.1,
    sampled,
    [69.5, 70.5],
    [undefined, 'fertilised'],
  ),
  edge(
    'Lines in which more hatches than is fertilised',
    2,
    (n: number) => sampled(75, n),
    [1, 2],
    [undefined, 'fertilised'],
  ),
  edge(
    'Share of the lines from which on the reading is doubted',
    0.3,
    (odd: number) => accused(40, odd),
    [11, 12],
    [11, 0],
  ),
  edge('Lines from which on a reading is doubted', 3, (odd: number) => accused(6, odd), [2, 3], [2, 0]),
  edge('Share of numbers that are worked out on a sheet of ours', 0.5, workedOut, [9, 10], [1, 0]),
  edge('Sureness below which a column is asked about', 0.75, isAsked, ['Weight', 'Amount'], [true, false]),
  edge('Worth from which a column is asked about', 0.02, isThinAsked, [21, 19], [false, true]),
  edge(
    'Lines from which on a farm has a habit',
    8,
    isMeant,
    [
      [0, 7],
      [0, 8],
    ],
    [true, false],
  ),
  edge(
    'Part of the lines in which a habit holds',
    2,
    isMeant,
    [
      [8, 20],
      [12, 20],
    ],
    [false, true],
  ),
  edge('Lines in which a habit is looked for', 300, isMeantInLong, [598, 602], [true, false]),
  edge('Share of the work that is reading', 0.5, told, [0.64, 0.66], [0, 1]),
];

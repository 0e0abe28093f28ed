import type { Near } from '../../../base/near';
import type { Cell } from '../../../base/values';
import { sheetFromRange } from '../../read';
import { isKnownLabel } from '../../shape/forms';
import type { RecordTable } from '../../table';
import { recordTables } from '../../table';
import { dayParts } from '../../../units/dates';
import type { Line } from '../check';
import { dayAfter, edge, tablesOf } from '../check';
import { cellOf, KNOWN, laidOut, STRANGE } from './headings';

/** What belongs to a table, and what its cells say, changes at numbers somebody chose. */
const lines = (n: number, line: (i: number) => Line): readonly Line[] =>
  Array.from({ length: n }, (_, i) => line(i));
/** A sheet with a cell drawn over so many columns at its left top, and some cells shown as days. */
function tableOf(values: readonly Line[], over = 1, days: readonly number[] = []): RecordTable | undefined {
  const sheet = sheetFromRange(
    {
      name: 'A',
      top: 0,
      left: 0,
      values,
      formats: values.map((line) =>
        line.map((cell, c) => (days.includes(c) && typeof cell === 'number' ? 'd' : 'General')),
      ),
    },
    (format) => format === 'd',
  );
  const merges = over > 1 ? [{ top: 0, left: 0, bottom: 0, right: over - 1 }] : [];
  return recordTables([{ ...sheet, merges }])[0];
}

/** Is a cell over so many of twelve columns the name of their group? */
const isGroup = (over: number): boolean =>
  tableOf(
    [['Deaths'], KNOWN.slice(0, 12), ...lines(6, (i) => KNOWN.slice(0, 12).map((_, c) => cellOf(c, i)))],
    over,
  )?.mapping[0]?.parent === 'Deaths';
/** Headings of tanks under words that may be the name of the group. */
const under = (words: string): string =>
  laidOut([
    [null, words],
    ['Date', 'Tank 1', 'Tank 2', 'Tank 3'],
    ...lines(6, (i) => [dayAfter(i), 3 + i, 4, 5]),
  ])
    .join()
    .includes('>')
    ? 'group'
    : 'none';
/** Two forms below each other, under so many other labels. */
const forms = (others: number): number =>
  tablesOf([
    ...lines(others, (i) => [STRANGE[i] ?? '', 5 + i]),
    ...[0, 1].flatMap((form) => lines(5, (i) => [STRANGE[5 + i] ?? '', 12 + 3 * i + form])),
  ]).reduce((n, { length }) => n + length, 0);
/** Are these cells of a column read as days? */
const areDays = (cells: readonly Cell[]): boolean =>
  tablesOf([['Run', 'Eggs', 'Zrabe'], ...cells.map((cell, i): Line => [`R${i}`, 81_000 + 1111 * i, cell])])[0]
    ?.columns[2]?.moments !== undefined;
const someDays = ([days, all]: readonly [days: number, all: number]): boolean =>
  areDays(Array.from({ length: all }, (_, i) => (i < days ? dayAfter(i) : 40 + i)));
const fewDays = (days: number): boolean =>
  areDays(Array.from({ length: 6 }, (_, i) => (i < days ? dayAfter(i) : null)));
/** What is given to the water, by the name rules know. */
const material = (name: string): string =>
  tablesOf([
    ['Date', 'Material', 'Amount (g)', 'pH', 'pH after'],
    ...lines(6, (i) => [dayAfter(i), name, 30 + i, 6 + i / 10, 6.6 + i / 10]),
  ])[0]?.texts.material?.[0] ?? '';
/** The year of days written without one, beside others shown as days. */
const year = (serial: number): number =>
  dayParts(
    tableOf(
      [['Date', 'Eggs', 'Stocked on'], ...lines(6, (i) => [`${i + 3} May`, 81_000 + 1111 * i, serial + i])],
      1,
      [2],
    )?.numbers.date?.[0] ?? NaN,
  ).year;

export const NEAR: readonly Near[] = [
  edge('Columns up to which a cell over them names a group', 8, isGroup, [8, 9], [true, false]),
  edge('Score of words that name a group', 0.6, under, ['Fish taken', 'Fish before'], ['none', 'group']),
  edge('Score of a label that is known', 0.6, isKnownLabel, ['Date after', 'Date before'], [false, true]),
  edge('Labels above two forms', 2, forms, [2, 3], [2, 0]),
  edge('Days of a column that holds days', 2, fewDays, [1, 2], [false, true]),
  edge(
    'Share of days of a column that holds days',
    0.6,
    someDays,
    [
      [4, 7],
      [5, 8],
    ],
    [false, true],
  ),
  edge(
    'Score of words that name a material',
    0.45,
    material,
    ['the good lime', 'white good lime'],
    ['the good lime', 'quicklime'],
  ),
  edge('Number from which it may be a day of a book', 30_000, year, [29_000, 31_000], [2000, 1984]),
];

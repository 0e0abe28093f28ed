import type { Near } from '../../../base/near';
import { isKnownLabel } from '../../shape/forms';
import type { Line } from '../check';
import { dayAfter, edge, tablesOf } from '../check';
import { cellOf, KNOWN, laidOut, STRANGE } from './headings';

/** What is a line of headings, and what a form, by words and labels alone, changes at numbers somebody chose. */
const lines = (n: number, line: (i: number) => Line): readonly Line[] =>
  Array.from({ length: n }, (_, i) => line(i));
const found = (...sheets: readonly (readonly Line[])[]): string =>
  tablesOf(...sheets)
    .map(({ layout, length, mapping }) => `${layout} ${length} of ${mapping.length}`)
    .join(', ');
const known = (i: number): string => KNOWN[1 + i] ?? '';
/** Those that are near no word of a record book. */
const UNKNOWN = STRANGE.filter((word) => !isKnownLabel(word));
const strange = (i: number): string => UNKNOWN[i] ?? '';

/** Figures under so many headings. */
const headed = (columns: number, heading: (column: number) => string | number): string =>
  found([
    Array.from({ length: columns }, (_, c) => heading(c)),
    ...lines(6, (i) => Array.from({ length: columns }, (_, c) => cellOf(c, i))),
  ]);
const figured = ([words, all]: readonly [words: number, all: number]): string =>
  headed(all, (c) => (c < words ? (KNOWN[c] ?? '') : 5 + 3 * ((c * 5) % 7)));
/** Six different headings, the others again from the last. */
const repeated = (all: number): string => headed(all, (c) => KNOWN[c < 6 ? c : 11 - c] ?? '');
const under = (words: string): boolean =>
  laidOut([
    [null, words],
    ['Date', 'Tank 1', 'Tank 2', 'Tank 3'],
    ...lines(6, (i) => [dayAfter(i), 3 + i, 4, 5]),
  ])
    .join()
    .includes('>');

/** Two forms on sheets of their own, each of so many labels, the first of them the same. */
const small = (labels: number): string =>
  found(
    lines(labels, (i) => [known(i), 5 + i]),
    lines(labels, (i) => [known(2 * i), 6 + i]),
  );
/** Labels with a value beside each, so many of them known. */
const knownOf = ([some, all]: readonly [some: number, all: number]): string =>
  found(lines(all, (i) => [i % 2 === 0 && i < 2 * some ? known(i / 2) : strange(i), null, 5 + i]));
/** Two forms below each other of which so many labels are the same. */
const alike = ([same, all]: readonly [same: number, all: number]): string =>
  found(
    [0, 1].flatMap((form) =>
      lines(all, (i) => [`${strange(i)}${form === 1 && i >= same ? 'q' : ''}`, 12 + 3 * i + form]),
    ),
  );
/** Labels in the first so many of eighteen lines. */
const labelled = (labels: number): string =>
  found(lines(18, (i) => [i < labels ? known(i) : null, i === 0 ? 'Ziggy' : 5 + i * i]));

export const NEAR: readonly Near[] = [
  edge(
    'Share of words among headings',
    0.7,
    figured,
    [
      [9, 13],
      [7, 10],
    ],
    ['', 'rows 6 of 10'],
  ),
  edge('Share of different words among headings', 0.6, repeated, [11, 10], ['', 'rows 6 of 10']),
  edge(
    'Words that name a group',
    4,
    under,
    ['Temperature of the water', 'The temperature of the water'],
    [true, false],
  ),
  edge('Labels of a column of labels', 3, small, [2, 3], ['', 'forms 2 of 4']),
  edge(
    'Share of known labels in a column of labels',
    0.45,
    knownOf,
    [
      [4, 9],
      [5, 11],
    ],
    ['', 'forms 1 of 11'],
  ),
  edge(
    'Share of labels that two forms below each other have in common',
    0.6,
    alike,
    [
      [4, 7],
      [5, 8],
    ],
    ['', 'forms 2 of 11'],
  ),
  edge('Lines in which labels are looked for', 14, labelled, [10, 11], ['rows 17 of 2', 'forms 1 of 11']),
];

import type { Near } from '../../../base/near';
import type { Line } from '../check';
import { edge, tablesOf } from '../check';
import { KNOWN, STRANGE } from './headings';

/** What of a form is a run, a unit or a form of its own changes at numbers somebody chose. */
const lines = (n: number, line: (i: number) => Line): readonly Line[] =>
  Array.from({ length: n }, (_, i) => line(i));
/** Runs of each kind of form, and the label of the first value. */
const forms = (...sheets: readonly (readonly Line[])[]): string =>
  tablesOf(...sheets)
    .map(({ layout, length, mapping }) => `${layout} ${length} ${mapping[0]?.header ?? ''}`)
    .join(', ');
const label = (i: number): string => KNOWN[1 + (i % 12)] ?? '';
const UNITS = ['kg', 'g', 'no', 'g', 'g', 'mL', 'h', 'kg'];

/** Ten labels, beside so many of them a unit and beside some more a word that is none. */
const united = ([units, words]: readonly [units: number, words: number]): string =>
  forms(
    lines(10, (i) => [
      label(i),
      i < units ? (UNITS[i % 8] ?? '') : i < units + words ? (STRANGE[i] ?? '') : null,
      5 + 3 * i + (i % 2) / 2,
      7 + 2 * i,
    ]),
  );
/** So many empty columns between two runs. */
const apart = (columns: number): string =>
  forms(lines(6, (i) => [label(i), 5 + 3 * i, ...new Array<null>(columns).fill(null), 7 + 2 * i]));
/** A second run of so few values beside one of so many. */
const thinRun = ([few, all]: readonly [few: number, all: number]): string =>
  forms(lines(all, (i) => [label(i), 5 + 3 * i, i < few ? 7 + 2 * i : null]));
/** Three labels, so many of which have a value in the run. */
const short = (values: number): string =>
  forms([
    [label(0), 1.5, null],
    [label(1), 150, null],
    [label(4), values > 2 ? 9000 : null, values > 2 ? null : 9000],
  ]);
/** Two forms of so many labels, some of them the same. */
const alike = ([same, all]: readonly [same: number, all: number]): string =>
  forms(
    lines(all, (i) => [i < 6 ? label(i) : (STRANGE[i] ?? ''), 5 + i]),
    lines(all, (i) => [
      i < same ? (i < 6 ? label(i) : (STRANGE[i] ?? '')) : `${label(6 + (i % 5))} ${'abc'[i % 3] ?? ''}`,
      6 + i,
    ]),
  );

export const NEAR: readonly Near[] = [
  edge(
    'Units in a column of units',
    2,
    united,
    [
      [1, 0],
      [2, 0],
    ],
    ['forms 2 Female weight (kg)', 'forms 2 Female weight (kg) (kg)'],
  ),
  edge(
    'Share of units in a column of units',
    0.6,
    united,
    [
      [5, 2],
      [6, 2],
    ],
    ['forms 3 Female weight (kg)', 'forms 2 Female weight (kg) (kg)'],
  ),
  edge(
    'Columns from the labels within which runs may be apart',
    2,
    apart,
    [1, 2],
    ['forms 2 Female weight (kg)', 'forms 1 Female weight (kg)'],
  ),
  edge(
    'Share of the values of a run',
    0.4,
    thinRun,
    [
      [3, 8],
      [2, 5],
    ],
    ['forms 1 Female weight (kg)', 'forms 2 Female weight (kg)'],
  ),
  edge('Labels of a form with values', 3, short, [2, 3], ['', 'forms 1 Female weight (kg)']),
  edge(
    'Share of the labels two forms have in common',
    0.5,
    alike,
    [
      [5, 11],
      [4, 8],
    ],
    ['forms 1 Female weight (kg), forms 1 Female weight (kg)', 'forms 2 Female weight (kg)'],
  ),
];

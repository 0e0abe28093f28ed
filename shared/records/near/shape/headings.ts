// Long: small tables, as data
import type { Near } from '../../../base/near';
import type { Cell } from '../../../base/values';
import type { Line } from '../check';
import { dayAfter, edge, tablesOf } from '../check';

/** Where a table begins, and what is a form and no table, changes at numbers somebody chose. */
const lines = (n: number, line: (i: number) => Line): readonly Line[] =>
  Array.from({ length: n }, (_, i) => line(i));
/** Each table or form with its records and headings. */
export const laidOut = (values: readonly Line[]): readonly string[] =>
  tablesOf(values).map(
    ({ layout, length, mapping }) =>
      `${layout} ${length}: ${mapping.map(({ header, parent }) => (parent ? `${parent}>${header}` : header)).join(' ')}`,
  );
const layouts = (values: readonly Line[]): string =>
  tablesOf(values)
    .map(({ layout }) => layout)
    .join(' ');
const widths = (values: readonly Line[]): string =>
  tablesOf(values)
    .map(({ mapping }) => mapping.length)
    .join(' ');
const records = (values: readonly Line[]): string =>
  tablesOf(values)
    .map(({ length }) => length)
    .join(' ');

export const KNOWN = [
  'Date',
  'Female weight (kg)',
  'Egg weight (g)',
  'Eggs per gram',
  'Eggs',
  'Hatched',
  'Fry',
  'Temperature (°C)',
  'Feed (g)',
  'Dead',
  'Sold',
  'Volume (L)',
  'Hormone (mL)',
  'Injected at',
];
export const STRANGE = 'Zrabe Quolt Nimm Ferk Ulm Wrent Plim Vosk Tarn Gelb Hupp Jorn Kess Lind'.split(' ');
const NAMES = ['Eggs', 'Fry', 'Larvae', 'Feed', 'Dead', 'Sold', 'Males', 'Females', 'Tarn', 'Gelb'];
/** The columns of KNOWN, with what may stand in them. */
export const cellOf = (column: number, i: number): Cell =>
  [
    dayAfter(3 * i),
    1.2 + 0.1 * (i % 7),
    110 + 7 * ((i * 5) % 9),
    640 + 9 * ((i * 7) % 5),
    81_000 + 1237 * ((i * 5) % 7),
    41_000 + 977 * ((i * 3) % 7),
    21_000 + 577 * ((i * 4) % 7),
    26 + 0.1 * (i % 5),
  ][column] ?? 5 + 3 * i + column;
const row = (columns: number, i: number, from = 0): Line =>
  Array.from({ length: columns }, (_, c) => cellOf(from + c, i));
const blank = (n: number): readonly Line[] => lines(n, () => [null]);

const ofColumns = (n: number): string =>
  widths([KNOWN.slice(8 - n, 8), ...lines(6, (i) => row(n, i, 8 - n))]);
/** A month between headings and lines. */
const months = ([columns, n]: readonly [columns: number, months: number]): string =>
  widths([
    KNOWN.slice(0, columns),
    ...lines(n, (i) => [
      ['April', 'May', 'June', 'July'][i] ?? '',
      ...new Array<null>(columns - 1).fill(null),
    ]),
    ...lines(6, (i) => row(columns, i)),
  ]);
const gap = (n: number): string => widths([KNOWN.slice(0, 4), ...blank(n), ...lines(6, (i) => row(4, i))]);
/** Labels down the side with so many columns of values, some of the labels known. */
const labelled = ([known, all, values]: readonly [known: number, all: number, values: number]): string =>
  layouts(
    lines(all, (i) => [
      i < known ? (KNOWN[1 + (i % 7)] ?? '') : (STRANGE[i] ?? ''),
      ...Array.from({ length: values }, (_, c) =>
        i === 0 ? (c === 0 ? 'Ziggy' : (STRANGE[11 - c] ?? '')) : cellOf(1 + (i % 7), 2 * c),
      ),
    ]),
  );
/** Lines of which only so many have a label. */
const gappy = ([labels, all]: readonly [labels: number, all: number]): string =>
  layouts([
    ['Female weight (kg)', 'Run'],
    ...lines(all - 1, (i) => [i < labels - 1 ? (KNOWN[2 + i] ?? '') : null, 5 + i * i]),
  ]);
const underFigures = ([known, all]: readonly [known: number, all: number]): string =>
  layouts([
    ['Hormone (mL)', 0.6, 0.7],
    ['Officer', 'Eggs', 'Fry'],
    ...lines(all, (i) => [i < known ? (KNOWN[2 + i] ?? '') : (STRANGE[i] ?? ''), 5 + 3 * i, 7 + 3 * i]),
  ]);
const someFigures = ([figures, all]: readonly [figures: number, all: number]): string =>
  layouts([
    ['Hormone (mL)', ...Array.from({ length: all }, (_, c) => (c < figures ? 0.6 + 0.1 * c : 'x'))],
    ['Officer', ...NAMES.slice(0, all)],
    ...lines(6, (i) => [KNOWN[2 + i] ?? '', ...Array.from({ length: all }, (_, c) => 5 + 2 * c + 3 * i)]),
  ]);
/** Headings of which so many are known, over lines under known labels. */
const headed = ([known, all]: readonly [known: number, all: number]): string =>
  layouts([
    [
      'Female weight (kg)',
      ...Array.from({ length: all }, (_, c) => (c < known ? KNOWN[2 + c] : STRANGE[c]) ?? ''),
    ],
    ...lines(6, (i) => [KNOWN[2 + i] ?? '', ...Array.from({ length: all }, (_, c) => 5 + c + 3 * i)]),
  ]);
const mixed = ([all]: readonly [all: number]): string => labelled([0, all, 1]);
/** The same labels twice below each other, of which so many come again, and lines without a label. */
const twice = ([n, same, bare]: readonly [labels: number, same: number, bare: number]): string =>
  layouts(
    [0, 1].flatMap((b) => [
      ['Quolt', `Run ${b + 1}x`],
      ...lines(n, (i) => [
        `${STRANGE[i % 12] ?? ''}${b === 1 && i >= same ? 'q' : ''} ${'abcdef'[Math.floor(i / 12)] ?? ''}`,
        12 + 3 * i + b,
      ]),
      ...lines(bare, (i) => [null, 5 + i]),
    ]),
  );
/** A column without a heading beside the others, filled so far down. */
const beside = ([filled, all]: readonly [filled: number, all: number]): string =>
  widths([KNOWN.slice(0, 4), ...lines(all, (i) => [...row(4, i), i < filled ? 5 + i : null])]);
/** The same, filled from one line to another; with the number of records. */
const besideFrom = ([from, to, all]: readonly [from: number, to: number, all: number]): string => {
  const table = [KNOWN.slice(0, 4), ...lines(all, (i) => [...row(4, i), i < from || i >= to ? null : 5 + i])];
  return `${records(table)} of ${widths(table)}`;
};
const besides = (n: number): string =>
  `${n}: ${widths([
    KNOWN.slice(0, 4),
    ...lines(4, (i) => [...row(4, i), ...Array.from({ length: n }, (_, c) => 5 + i + c)]),
  ])}`;
/** A column between others without a heading, filled in the last lines. */
const between = ([filled, all]: readonly [filled: number, all: number]): string =>
  widths([
    ['Date', 'Female weight (kg)', null, 'Eggs per gram', 'Eggs'],
    ...lines(all, (i) => [
      cellOf(0, i),
      cellOf(1, i),
      i >= all - filled ? 5 + i : null,
      cellOf(3, i),
      cellOf(4, i),
    ]),
  ]);
/** Words under the headings but for the first, and a figure in every so many lines. */
const thin = ([columns, every]: readonly [columns: number, every: number]): string =>
  records([
    KNOWN.slice(1, columns + 1),
    ...lines(8, (i) =>
      Array.from({ length: columns }, (_, c) =>
        c === 0 && i % every === 0 ? 5 + i : `${'abc'[(i + c) % 3] ?? ''}${STRANGE[(c + i) % 12] ?? ''}`,
      ),
    ),
  ]);
const thinWide = ([columns, figures]: readonly [columns: number, figures: number]): string =>
  records([
    [...KNOWN.slice(0, 8), ...STRANGE].slice(0, columns),
    ...lines(8, (i) =>
      Array.from({ length: columns }, (_, c) =>
        c === 0
          ? `R${i}`
          : c <= figures
            ? 5 + i * c
            : `${'abc'[(i + c) % 3] ?? ''}${STRANGE[(c + i) % 12] ?? ''}`,
      ),
    ),
  ]);
const bare = (columns: number): readonly string[] =>
  KNOWN.slice(1, columns + 1).map((text) => text.replace(/ \(.*/, ''));
const UNITS = ['kg', 'g', 'no', 'pcs', 'no', 'no', '°C', 'g'];
/** A line below the headings of which so many cells are units: what the first column is headed. */
const unitsBelow = ([units, columns]: readonly [units: number, columns: number]): string | undefined =>
  tablesOf([
    bare(columns),
    Array.from({ length: columns }, (_, c) => (c < units ? UNITS[c] : STRANGE[c]) ?? ''),
    ...lines(6, (i) => row(columns, i, 1)),
  ])[0]?.mapping[0]?.header;
const numbersBelow = (n: number): readonly string[] =>
  laidOut([
    KNOWN.slice(0, 3),
    [1, 2, 3].map((x) => (x <= n ? `(${x})` : null)),
    ...lines(6, (i) => row(3, i)),
  ]);
const numbersFurther = (n: number): string =>
  widths([bare(4), ...blank(n), ['(1)', '(2)', '(3)', '(4)'], ...lines(6, (i) => row(4, i, 1))]);

export const NEAR: readonly Near[] = [
  edge('Words of a line of headings', 2, ofColumns, [1, 2], ['', '2']),
  edge(
    'Columns of a table with a line between headings and figures',
    4,
    months,
    [
      [3, 1],
      [4, 1],
    ],
    ['', '4'],
  ),
  edge(
    'Lines between headings and figures',
    3,
    months,
    [
      [4, 3],
      [4, 4],
    ],
    ['4', ''],
  ),
  edge('Lines down to the figures', 3, gap, [2, 3], ['4', '']),
  edge(
    'Labels of a form',
    3,
    gappy,
    [
      [2, 2],
      [3, 4],
    ],
    ['rows', 'forms'],
  ),
  edge(
    'Share of the lines of a form that have a label',
    0.75,
    gappy,
    [
      [5, 7],
      [6, 8],
    ],
    ['rows', 'forms'],
  ),
  edge(
    'Share of the labels of a form with a line of figures above that are known',
    0.5,
    underFigures,
    [
      [3, 10],
      [2, 5],
    ],
    ['rows', 'forms'],
  ),
  edge(
    'Share of the labels beside one column of values that are known',
    0.4,
    labelled,
    [
      [3, 8, 1],
      [2, 5, 1],
    ],
    ['rows', ''],
  ),
  edge(
    'Share of the labels beside several columns of values that are known',
    0.5,
    labelled,
    [
      [4, 11, 2],
      [5, 11, 2],
    ],
    ['rows', 'forms'],
  ),
  edge(
    'Share of the headings over the values that are known',
    0.5,
    headed,
    [
      [4, 11],
      [2, 4],
    ],
    ['forms', 'rows'],
  ),
  edge(
    'Share of figures in the line above',
    0.6,
    someFigures,
    [
      [4, 7],
      [3, 5],
    ],
    ['rows', 'forms'],
  ),
  edge('Share of values of one kind beside labels nobody knows', 0.8, mixed, [[4], [5]], ['', 'rows']),
  edge(
    'Lines down to which a form comes again',
    60,
    twice,
    [
      [57, 57, 0],
      [63, 63, 0],
    ],
    ['forms', 'rows'],
  ),
  edge(
    'Labels that come again in a line of forms',
    2,
    twice,
    [
      [1, 1, 1],
      [2, 2, 1],
    ],
    ['rows', 'forms'],
  ),
  edge(
    'Share of labels that come again in order',
    0.8,
    twice,
    [
      [4, 3, 0],
      [5, 4, 0],
    ],
    ['rows', 'forms'],
  ),
  edge(
    'Lines in which a column without a heading is looked for',
    6,
    besideFrom,
    [
      [3, 6, 6],
      [0, 3, 7],
    ],
    ['6 of 5', '7 of 5'],
  ),
  edge(
    'Lines in which a column without a heading is filled',
    2,
    beside,
    [
      [1, 2],
      [2, 2],
    ],
    ['4', '5'],
  ),
  edge(
    'Part of the lines in which a column without a heading is filled',
    2,
    beside,
    [
      [2, 6],
      [3, 6],
    ],
    ['4', '5'],
  ),
  edge('Columns without a heading beside the others', 2, besides, [2, 3], ['2: 6', '3: 6']),
  edge(
    'Lines in which a column between others is looked for',
    7,
    between,
    [
      [2, 6],
      [2, 7],
    ],
    ['5', '2 2'],
  ),
  edge(
    'Lines in which a column between others is filled',
    2,
    between,
    [
      [1, 6],
      [2, 6],
    ],
    ['2 2', '5'],
  ),
  edge(
    'Lines for each with a figure, below headings',
    2,
    thin,
    [
      [2, 2],
      [2, 3],
    ],
    ['8', '2'],
  ),
  edge(
    'Share of the columns with a figure below',
    0.2,
    thinWide,
    [
      [11, 2],
      [10, 2],
    ],
    ['', '8'],
  ),
  edge(
    'Share of units in a line of units',
    0.6,
    unitsBelow,
    [
      [4, 7],
      [3, 5],
    ],
    ['kg', 'Female weight (kg)'],
  ),
  edge(
    'Numbers in brackets below headings',
    2,
    numbersBelow,
    [1, 2],
    [[], ['rows 6: Date Female weight (kg) Egg weight (g)']],
  ),
  edge('Lines down to the units and numbers of the columns', 2, numbersFurther, [1, 2], ['4', '']),
];

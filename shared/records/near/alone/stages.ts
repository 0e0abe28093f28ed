// Long: small columns half understood, as data
import type { Near } from '../../../base/near';
import type { Given } from '../../columns/steps/given';
import type { Looked } from '../../columns/steps/looked';
import { byClocks, byOnlyDate, bySpans } from '../../columns/steps/moments';
import { refuted } from '../../columns/steps/refuted';
import { byStages } from '../../columns/steps/stages';
import { sumsOfOneKind } from '../../columns/steps/sumKinds';
import type { FieldName } from '../../fields';
import { edge } from '../check';
import type { May } from './looked';
import { best, column, link } from './looked';

/** What columns are read as by moments, stages and sums, asked alone, changes at numbers somebody chose. */
const ELSEWHERE = { decimal: undefined, order: undefined } as const;
const ten = (line: (i: number) => number): Float64Array =>
  Float64Array.from({ length: 10 }, (_, i) => line(i));
const many = (n: number, line: (i: number) => number): Float64Array =>
  Float64Array.from({ length: n }, (_, i) => line(i));

/** Hours between two columns of so many clocks in a hundred cells, against a reading that leads by so much. */
const between = ([clocks, lead]: readonly [clocks: number, lead: number]): string => {
  const content = { filled: 100, clocks };
  const told = column([
    ['minutes', 1 + lead],
    ['latency', 1],
  ]);
  const columns = [
    column([['injected', 2]], { cells: Array.from({ length: 10 }, (_, i) => `20:${10 + i}`), content }),
    column([['stripped', 2]], {
      cells: Array.from({ length: 10 }, (_, i) => `0${3 + (i % 6)}:${10 + i}`),
      content,
    }),
    told,
  ];
  bySpans(columns, [new Float64Array(0), new Float64Array(0), ten((i) => 7 + (i % 6))], ELSEWHERE);
  return best(told);
};
/** Clocks of injections beside those of strippings, against a reading that leads by so much. */
const clocks = (lead: number): string => {
  const first = column(
    [
      ['clock', 1 + lead],
      ['injected', 1],
    ],
    { cells: Array.from({ length: 6 }, (_, i) => `20:${10 + i}`) },
  );
  byClocks(
    [first, column([['stripped', 2]], { cells: Array.from({ length: 6 }, (_, i) => `07:${10 + i}`) })],
    ELSEWHERE,
  );
  return best(first);
};
interface Dated {
  readonly filled?: number;
  readonly dates?: number;
  /** Columns to its left. */
  readonly place?: number;
  /** Words of what else it may be. */
  readonly words?: number;
}
/** The only dates of a table. */
const onlyDates = ({ filled = 100, dates = filled, place = 0, words = 0 }: Dated): string => {
  const dated = column(
    [
      ['hatchedOn', 2, words],
      ['date', 1],
    ],
    { content: { filled, dates } },
  );
  byOnlyDate([...Array.from({ length: place }, () => column([['vat', 2]])), dated]);
  return best(dated);
};

const holding = (columns: readonly Looked[], fields: readonly (FieldName | undefined)[]): Given =>
  new Map(
    columns.flatMap((one, i) => {
      const field = fields[i];
      const may = one.candidates.find((candidate) => candidate.field === field);
      return may ? [[one, may] as const] : [];
    }),
  );
/** Eggs that come out of their weight in so many of so many lines: is one of the readings taken back? */
const taken = ([comes, all]: readonly [comes: number, all: number]): boolean => {
  const columns = (['eggs', 'eggWeight', 'eggsPerGram'] as const).map((field) => column([[field, 2, 0.5]]));
  const off = (i: number): number => (i < comes ? 0 : i % 2 ? 0.3 : -0.3);
  const one = many(all, () => 1);
  return refuted(
    [many(all, (i) => 10 ** off(i)), one, one],
    columns,
    holding(columns, ['eggs', 'eggWeight', 'eggsPerGram']),
  );
};

interface Counts {
  readonly hatched?: (line: number) => number;
  readonly lines?: number;
  /** Of columns of percent behind the larvae: how many, and the highest in them. */
  readonly shares?: number;
  readonly high?: number;
}
const HUNDRED: May = ['note', 1];
/** What the last column is taken for: behind eggs, larvae and shares, counts that nobody named. */
const behind = ({ hatched = () => 600, lines = 10, shares = 0, high = 90 }: Counts): string => {
  const columns = [
    column([['eggs', 3, 0.9]]),
    column([['hatched', 3, 0.9]]),
    ...Array.from({ length: shares }, () => column([HUNDRED], { unit: '%', content: { middle: 60, high } })),
    column([['note', 1]]),
  ];
  const given = holding(columns, ['eggs', 'hatched']);
  const plain = [
    many(lines, () => 1000),
    many(lines, hatched),
    ...Array.from({ length: shares }, () => many(lines, () => 60)),
    many(lines, () => 5),
  ];
  byStages(columns, plain, given);
  const last = columns.at(-1);
  return (last && given.get(last)?.field) ?? 'open';
};
/** What is called fry is larvae where counts so many columns further on are a part of it. */
const further = (by: number): string => {
  const columns = [
    column([['eggs', 3, 0.9]]),
    column([['fry', 3, 0.6]]),
    ...Array.from({ length: by - 1 }, () =>
      column([HUNDRED], { unit: '%', content: { middle: 60, high: 90 } }),
    ),
    column([['note', 1]]),
  ];
  const given = holding(columns, ['eggs', 'fry']);
  byStages(
    columns,
    [ten(() => 1000), ten(() => 600), ...Array.from({ length: by - 1 }, () => ten(() => 60)), ten(() => 300)],
    given,
  );
  return columns.map((one) => given.get(one)?.field ?? 'open').join(' ');
};

/** Meals under words that say so much, and their sum: is it known what they add up to? */
const meals = ([saying, of, words, sum]: readonly [
  saying: number,
  of: number,
  words: number,
  sum: number,
]): number => {
  const columns = [
    ...Array.from({ length: of }, (_, i) => column([], { words: { feed: i < saying ? words : 0 } })),
    column([], { words: { feed: sum } }),
  ];
  return sumsOfOneKind(
    [
      link(
        'sum',
        of,
        columns.slice(0, of).map((_, i) => i),
      ),
    ],
    columns,
    new Map(),
  ).length;
};

export const NEAR: readonly Near[] = [
  edge(
    'Share of clocks among cells that may be moments',
    0.6,
    between,
    [
      [59, 1],
      [61, 1],
    ],
    ['minutes', 'latency'],
  ),
  edge(
    'Worth of being the time between two moments',
    2,
    between,
    [
      [100, 2.1],
      [100, 1.9],
    ],
    ['minutes', 'latency'],
  ),
  edge('Worth of a clock beside the clock it goes with', 1.2, clocks, [1.22, 1.18], ['clock', 'injected']),
  edge(
    'Dates of the only column of dates',
    2,
    onlyDates,
    [{ filled: 1 }, { filled: 2 }],
    ['hatchedOn', 'date'],
  ),
  edge(
    'Share of dates in the only column of dates',
    0.8,
    onlyDates,
    [{ dates: 79 }, { dates: 81 }],
    ['hatchedOn', 'date'],
  ),
  edge(
    'Columns to the left of the only dates',
    2,
    onlyDates,
    [{ place: 2 }, { place: 3 }],
    ['date', 'hatchedOn'],
  ),
  edge(
    'Words that say what else the only dates are',
    0.9,
    onlyDates,
    [{ words: 0.89 }, { words: 0.91 }],
    ['date', 'hatchedOn'],
  ),
  edge(
    'Share of lines in which a product must come out',
    0.5,
    taken,
    [
      [9, 20],
      [10, 20],
    ],
    [true, false],
  ),
  edge(
    'Lines in which a product that does not come out is refuted',
    4,
    taken,
    [
      [0, 3],
      [0, 4],
    ],
    [false, true],
  ),
  edge(
    'Percent above which nothing is a share',
    100,
    behind,
    [
      { shares: 1, high: 99 },
      { shares: 1, high: 101 },
    ],
    ['fry', 'open'],
  ),
  edge(
    'Share of lines in which larvae stand between eggs and fry',
    0.95,
    behind,
    [
      { lines: 19, hatched: (i) => (i === 0 ? 1200 : 600) },
      { lines: 21, hatched: (i) => (i === 0 ? 1200 : 600) },
    ],
    ['open', 'fry'],
  ),
  edge(
    'Part of the eggs that their larvae may be',
    1.02,
    behind,
    [{ hatched: () => 1018 }, { hatched: () => 1022 }],
    ['fry', 'open'],
  ),
  edge(
    'Part of the eggs that their larvae must be',
    0.02,
    behind,
    [{ hatched: () => 19 }, { hatched: () => 21 }],
    ['open', 'fry'],
  ),
  edge(
    'Columns from the larvae to fry that nobody named',
    2,
    behind,
    [{ shares: 1 }, { shares: 2 }],
    ['fry', 'open'],
  ),
  edge(
    'Columns from larvae called fry to the fry',
    2,
    further,
    [2, 3],
    ['eggs hatched open fry', 'eggs fry open open open'],
  ),
  edge(
    'Words that say what a sum adds up',
    0.5,
    meals,
    [
      [0, 2, 0, 0.49],
      [0, 2, 0, 0.51],
    ],
    [0, 1],
  ),
  edge(
    'Part of the columns that must say what they are the parts of',
    2,
    meals,
    [
      [1, 3, 0.9, 0],
      [1, 2, 0.9, 0],
    ],
    [0, 1],
  ),
];

// Long: small columns half understood, as data
import type { Near } from '../../../base/near';
import { assign, kindWord } from '../../columns/recognise';
import { byChains } from '../../columns/steps/chains';
import { byCompany } from '../../columns/steps/company';
import { byLines } from '../../columns/steps/lines';
import { byLinks } from '../../columns/steps/links';
import { isClaim } from '../../columns/steps/looked';
import { dayAfter, edge } from '../check';
import { best, column, link } from './looked';

/** What columns are read as by steps that are asked alone changes at numbers somebody chose. */

/** Fish put in where a stock is kept, against a reading that leads by so much. */
const stocked = (lead: number): string => {
  const columns = [
    column([['opening', 1]]),
    column([
      ['feed', 1 + lead],
      ['stocked', 1],
    ]),
    column([['closing', 1]]),
  ];
  byChains([link('carry', 0, [2]), link('sum', 2, [0, 1])], columns);
  return best(columns[1]);
};
/** So many counts side by side with their sum, beside a weight whose words say so much. */
const sorted = ([counts, words]: readonly [counts: number, words: number]): string => {
  const columns = [
    ...Array.from({ length: counts }, () => column([['sold', 1]])),
    column([['sold', 1]]),
    column([['weight', 2, words]]),
  ];
  byChains(
    [
      link(
        'sum',
        counts,
        Array.from({ length: counts }, (_, i) => i),
      ),
    ],
    columns,
  );
  return best(columns[0]);
};

/** Weight of a pack beside its feed, against a length that leads by so much. */
const packed = ([lead, words]: readonly [lead: number, words: number]): string => {
  const pack = column([
    ['length', 1 + lead],
    ['packWeight', 1],
  ]);
  byCompany([column([['quantity', 3, words]]), pack]);
  return best(pack);
};
/** Money beside so many columns of a sale. */
const sale = (columns: number): string => {
  const money = column([
    ['length', 1],
    ['amount', 1],
  ]);
  byCompany([
    ...(['customer', 'receipt'] as const).slice(0, columns).map((field) => column([[field, 3, 0.9]])),
    money,
  ]);
  return best(money);
};

interface Lines {
  /** Of a hundred cells. */
  readonly dates?: number;
  readonly words?: number;
  readonly kinds?: number;
  /** Days in a column that stands before the dates. */
  readonly early?: number;
}
/** Tags of lines of which three each have one day. */
const tags = ({ dates = 100, words = 100, kinds = 100, early = 0 }: Lines): string => {
  const tag = column(
    [
      ['run', 2],
      ['female', 1.9],
    ],
    { content: { filled: 100, words, wordKinds: (kinds * words) / 100 } },
  );
  byLines([
    column([['hatchedOn', 2]], { content: { filled: early, dates: early } }),
    column([['date', 3]], {
      cells: Array.from({ length: 12 }, (_, i) => dayAfter(Math.floor(i / 3))),
      content: { filled: 100, dates },
    }),
    column([['femaleWeight', 3, 0.9]]),
    tag,
  ]);
  return best(tag);
};

/** What an injection is read as that is so many times the weight of the female by a dose, all in said units. */
const injected = (factor: number): string => {
  const given = column(
    [
      ['eggWeight', 2.5],
      ['hormoneVolume', 2, 0.9],
    ],
    { unit: 'ml' },
  );
  byLinks(
    [link('product', 0, [1, 2], { factor })],
    [
      given,
      column([['femaleWeight', 3, 0.9]], { unit: 'kg' }),
      column([['hormoneDose', 3, 0.9]], { unit: 'ml/kg' }),
    ],
  );
  return best(given);
};
/** Eggs from their weight by how many there are in a gram, said so clearly, in five lines. */
const eggs = (words: number): string => {
  const all = column([
    ['fry', 2.5],
    ['eggs', 2],
  ]);
  byLinks(
    [link('product', 0, [1, 2], { tried: 5, holds: 5 })],
    [all, column([['eggWeight', 3, 0.9]]), column([['eggsPerGram', 3, words]])],
  );
  return best(all);
};
/** What is owed of an amount less a deposit and what was paid, of which so many say so, in five lines. */
const owed = (saying: number): string => {
  const says = (column: number): number => (column < saying ? 0.9 : 0);
  const due = column([
    ['income', 2.5],
    ['due', 2],
  ]);
  byLinks(
    [link('sum', 0, [1, 2, 3], { signs: [-1, 1, -1], tried: 5, holds: 5 })],
    [
      due,
      column([['paid', 3, says(0)]]),
      column([['amount', 3, says(2)]]),
      column([['deposit', 3, says(1)]]),
    ],
  );
  return best(due);
};

/** A day that two columns may be, of which one leads and has nothing else to be but a clock. */
const exchanged = (lead: number): string => {
  const columns = [
    column([
      ['date', 2 + lead, 0.9],
      ['clock', 1.7, 0.9],
    ]),
    column([['date', 2, 0.9]]),
  ];
  const given = assign(columns);
  return columns.map((one) => given.get(one)?.field ?? 'open').join(' ');
};

export const NEAR: readonly Near[] = [
  edge(
    'Worth of a stock that is kept for what moves in and out',
    1.5,
    stocked,
    [1.52, 1.48],
    ['feed', 'stocked'],
  ),
  edge(
    'Words that say that fish are measured',
    0.6,
    sorted,
    [
      [3, 0.59],
      [3, 0.61],
    ],
    ['sold', 'gradeSmall'],
  ),
  edge(
    'Counts of sizes, at the least',
    3,
    sorted,
    [
      [2, 0.9],
      [3, 0.9],
    ],
    ['sold', 'gradeSmall'],
  ),
  edge(
    'Counts of sizes, at the most',
    4,
    sorted,
    [
      [4, 0.9],
      [5, 0.9],
    ],
    ['gradeSmall', 'sold'],
  ),
  edge(
    'Worth of a column that keeps company',
    0.28,
    packed,
    [
      [0.285, 0.5],
      [0.275, 0.5],
    ],
    ['length', 'packWeight'],
  ),
  edge(
    'Words of a column whose kin count',
    0.7,
    packed,
    [
      [0.4, 0.69],
      [0.4, 0.71],
    ],
    ['length', 'packWeight'],
  ),
  edge('Columns of a sale from which on money is likely', 2, sale, [1, 2], ['length', 'amount']),
  edge(
    'Days of a column that may be those of the lines',
    2,
    tags,
    [{ early: 1 }, { early: 2 }],
    ['female', 'run'],
  ),
  edge('Share of days in the days of lines', 0.8, tags, [{ dates: 79 }, { dates: 81 }], ['run', 'female']),
  edge('Share of words in tags', 0.8, tags, [{ words: 79 }, { words: 81 }], ['run', 'female']),
  edge(
    'Share of tags that stand in one line only',
    0.95,
    tags,
    [{ kinds: 94 }, { kinds: 96 }],
    ['run', 'female'],
  ),
  edge(
    'How far a product may stand from what its units say, as a logarithm',
    0.05,
    injected,
    [1.0502, 1.0525],
    ['hormoneVolume', 'eggWeight'],
  ),
  edge('Words with which a column speaks for a relation', 0.4, eggs, [0.39, 0.41], ['fry', 'eggs']),
  edge('Columns that must speak for a relation', 2, owed, [1, 2], ['income', 'due']),
  edge(
    'Least score of a reading',
    1.7,
    (score: number) => isClaim({ field: 'date', score, words: 1 }),
    [1.68, 1.72],
    [false, true],
  ),
  edge(
    'Score that an exchange of two readings must gain',
    0.05,
    exchanged,
    [1.652, 1.648],
    ['date open', 'clock date'],
  ),
  edge(
    'Part of the cells that must be days for a column of days',
    2,
    (dates: number) => kindWord({ filled: 10, dates, clocks: 0, words: 0 }),
    [5, 6],
    ['numbers', 'dates or times'],
  ),
  edge(
    'Part of the cells that must be words for a column of words',
    2,
    (words: number) => kindWord({ filled: 10, dates: 0, clocks: 0, words }),
    [5, 6],
    ['numbers', 'words'],
  ),
];

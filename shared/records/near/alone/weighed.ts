// Long: small columns half understood, as data
import type { Near } from '../../../base/near';
import type { Given } from '../../columns/steps/given';
import { byChains } from '../../columns/steps/chains';
import { byLines } from '../../columns/steps/lines';
import type { Looked } from '../../columns/steps/looked';
import { byOrder } from '../../columns/steps/order';
import { refuted } from '../../columns/steps/refuted';
import { byWorkOrder } from '../../columns/steps/settle';
import { byShares, byStages } from '../../columns/steps/stages';
import { sumsOfOneKind } from '../../columns/steps/sumKinds';
import type { FieldName } from '../../fields';
import { dayAfter, edge } from '../check';
import { best, column, link } from './looked';

/** What columns are read as by relations and words, each step asked alone, changes at numbers somebody chose. */
const all = (n: number, line: (i: number) => number): Float64Array =>
  Float64Array.from({ length: n }, (_, i) => line(i));
const holding = (columns: readonly Looked[], fields: readonly (FieldName | undefined)[]): Given =>
  new Map(
    columns.flatMap((one, i) => {
      const may = one.candidates.find((candidate) => candidate.field === fields[i]);
      return may ? [[one, may] as const] : [];
    }),
  );
const readAs = (columns: readonly Looked[], given: Given): string =>
  columns.map((one) => given.get(one)?.field ?? 'open').join(' ');

/** Three counts with their sum beside a weight, by a relation that holds in so many of so many lines. */
const sorted = ([holds, tried]: readonly [holds: number, tried: number]): string => {
  const columns = [...[0, 1, 2, 3].map(() => column([['sold', 1]])), column([['weight', 2, 0.9]])];
  byChains([link('sum', 3, [0, 1, 2], { holds, tried })], columns);
  return best(columns[0]);
};
/** What goes on by one column and back by another, one of which may be of fish. */
const box = (fish: number): string => {
  const columns = [
    column([
      ['note', 1],
      ['balance', 0],
    ]),
    column([['income', 1]], { words: { dead: fish } }),
    column([['expense', 1]]),
  ];
  byChains([link('sum', 0, [1, 2], { signs: [1, -1], isRunning: true })], columns);
  return best(columns[0]);
};
/** What begins each line with the end of the line above, where that may be money. */
const stock = (money: number): string => {
  const columns = [
    column([
      ['feed', 2],
      ['opening', 1],
    ]),
    column([['stocked', 1]]),
    column([['closing', 1]], { words: { amount: money } }),
  ];
  byChains([link('carry', 0, [2]), link('sum', 2, [0, 1])], columns);
  return best(columns[0]);
};
/** A factor of a sale that has so many kinds of numbers in a hundred. */
const priced = (kinds: number): string => {
  const factor = column(
    [
      ['sold', 1],
      ['priceEach', 0.5],
    ],
    { content: { kinds, numbers: 100 } },
  );
  byChains(
    [link('product', 0, [1, 2]), link('sum', 4, [0, 3], { signs: [1, -1] })],
    [column([['amount', 1]]), factor, column([['sold', 1]]), column([['paid', 1]]), column([['due', 1]])],
  );
  return best(factor);
};
/** What follows from a weight said so clearly to be a female's, by a rate said to be males, of so many kinds. */
const dosed = ([weight, other, kinds]: readonly [weight: number, other: number, kinds: number]): string => {
  const given = column([
    ['eggWeight', 1],
    ['hormoneVolume', 0.1],
  ]);
  byChains(
    [link('product', 0, [1, 2])],
    [given, column([['femaleWeight', 2, weight]]), column([['males', 1, other]], { content: { kinds } })],
  );
  return best(given);
};

interface Lines {
  readonly lines?: number;
  readonly days?: number;
  /** By how much the tags are likelier something else. */
  readonly run?: number;
  readonly female?: number;
}
const tags = ({ lines = 100, days = 40, run, female }: Lines): string => {
  const tag = column(
    run !== undefined
      ? [
          ['run', 2],
          ['note', 2 - run],
        ]
      : [
          ['note', 2 + (female ?? 0.4)],
          ['female', 2],
        ],
    { content: { filled: 100, words: 100, wordKinds: 100 } },
  );
  byLines([
    column([['date', 3]], {
      cells: Array.from({ length: lines }, (_, i) => dayAfter(i % days)),
      content: { filled: 100, dates: 100 },
    }),
    column([['femaleWeight', 3, 0.9]]),
    tag,
  ]);
  return best(tag);
};
/** Eggs right behind the run, against a price that leads by so much. */
const ordered = (lead: number): string => {
  const eggs = column([
    ['priceEach', 1 + lead],
    ['eggs', 1],
  ]);
  byOrder([column([['run', 3, 0.9]]), eggs, column([['material', 3, 0.9]])]);
  return best(eggs);
};

/** Eggs that are off their weight by so many powers of ten, under words so clear: is a reading taken back? */
const off = ([by, words]: readonly [by: number, words: number]): boolean => {
  const fields = ['eggs', 'eggWeight', 'eggsPerGram'] as const;
  const columns = fields.map((field) => column([[field, 2, words]]));
  const one = all(10, () => 1);
  return refuted([all(10, () => 10 ** by), one, one], columns, holding(columns, fields));
};
/** Larvae that are such a part of a million eggs in so many of a hundred lines, under words so clear. */
const few = ([part, lines, words]: readonly [part: number, lines: number, words: number]): boolean => {
  const columns = [column([['eggs', 2, 0.9]]), column([['hatched', 2, words]])];
  return refuted(
    [all(100, () => 1e6), all(100, (i) => (i < lines ? part : 0.5) * 1e6)],
    columns,
    holding(columns, ['eggs', 'hatched']),
  );
};
/** Larvae behind fry: what the change of places costs. */
const places = (cost: number): string => {
  const columns = [
    column([
      ['fry', 3],
      ['hatched', 3],
    ]),
    column([
      ['hatched', 3],
      ['fry', 3 - cost],
    ]),
  ];
  const given = holding(columns, ['fry', 'hatched']);
  byWorkOrder(columns, given);
  return readAs(columns, given);
};
/** Larvae that are so many times the eggs by two shares. */
const shares = (times: number): string => {
  const percent = { unit: '%', content: { middle: 60, high: 90 } } as const;
  const larvae = column([
    ['alive', 2],
    ['hatched', 1],
  ]);
  byShares(
    [column([['eggs', 3]]), column([['note', 1]], percent), column([['note', 1]], percent), larvae],
    [all(10, () => 1000), all(10, () => 50), all(10, () => 60), all(10, () => 300 * times)],
  );
  return best(larvae);
};
/** Eggs, counts between, fry: under words that say so clearly what else the counts are. */
const amid = (words: number): string => {
  const columns = [column([['eggs', 3]]), column([['alive', 3, words]]), column([['fry', 3]])];
  const given = holding(columns, ['eggs', 'alive', 'fry']);
  byStages(columns, [all(10, () => 1000), all(10, () => 600), all(10, () => 300)], given);
  return readAs(columns, given);
};
/** Eggs, what is called fry and fingerlings so clearly, in this order. */
const later = ([fry, fingerlings]: readonly [fry: number, fingerlings: number]): string => {
  const columns = [
    column([['eggs', 3]]),
    column([['fry', 3, fry]]),
    column([['fingerlings', 3, fingerlings]]),
  ];
  const given = holding(columns, ['eggs', 'fry', 'fingerlings']);
  byStages(columns, [all(10, () => 1000), all(10, () => 600), all(10, () => 300)], given);
  return readAs(columns, given);
};
/** Two meals and their sum that holds in so many of a hundred lines; one is said so clearly to be another thing. */
const meals = ([holds, other]: readonly [holds: number, other: number]): number => {
  const columns = [column([['weight', 2, other]]), column([]), column([], { words: { feed: 0.9 } })];
  return sumsOfOneKind([link('sum', 2, [0, 1], { holds, tried: 100 })], columns, holding(columns, ['weight']))
    .length;
};

export const NEAR: readonly Near[] = [
  edge(
    'Lines in which a relation must be tried to be sure',
    5,
    sorted,
    [
      [4, 4],
      [5, 5],
    ],
    ['sold', 'gradeSmall'],
  ),
  edge(
    'Share of lines in which a sure relation holds',
    0.8,
    sorted,
    [
      [79, 100],
      [81, 100],
    ],
    ['sold', 'gradeSmall'],
  ),
  edge('Words that speak of fish', 0.6, box, [0.59, 0.61], ['balance', 'note']),
  edge('Words that speak of money', 0.6, stock, [0.59, 0.61], ['opening', 'feed']),
  edge('Share of kinds among numbers that are a price', 0.4, priced, [39, 41], ['priceEach', 'sold']),
  edge(
    'Words that say a weight is that of a female',
    0.6,
    dosed,
    [
      [0.59, 0, 2],
      [0.61, 0, 2],
    ],
    ['eggWeight', 'hormoneVolume'],
  ),
  edge(
    'Words that leave no doubt that a rate is another thing',
    0.8,
    dosed,
    [
      [0.9, 0.79, 2],
      [0.9, 0.81, 2],
    ],
    ['hormoneVolume', 'eggWeight'],
  ),
  edge(
    'Rates among which females are given',
    3,
    dosed,
    [
      [0.9, 0, 3],
      [0.9, 0, 4],
    ],
    ['hormoneVolume', 'eggWeight'],
  ),
  edge(
    'Share of lines that have the day of another',
    0.4,
    tags,
    [{ days: 61 }, { days: 59 }],
    ['note', 'female'],
  ),
  edge(
    'Lines of days shared',
    6,
    tags,
    [
      { lines: 5, days: 1, female: 0.1 },
      { lines: 6, days: 1, female: 0.1 },
    ],
    ['note', 'female'],
  ),
  edge(
    'What a tag of one line of several is less a run',
    -0.9,
    tags,
    [{ run: 0.92 }, { run: 0.88 }],
    ['run', 'note'],
  ),
  edge(
    'What a tag of one line of several is more a female',
    0.5,
    tags,
    [{ female: 0.52 }, { female: 0.48 }],
    ['note', 'female'],
  ),
  edge(
    'What columns say that stand at the left of every table',
    0.2,
    ordered,
    [0.082, 0.078],
    ['priceEach', 'eggs'],
  ),
  edge(
    'Powers of ten by which a product may miss',
    0.052,
    off,
    [
      [0.051, 0.5],
      [0.053, 0.5],
    ],
    [false, true],
  ),
  edge(
    'Words too clear for a product to overrule',
    0.7,
    off,
    [
      [0.3, 0.69],
      [0.3, 0.71],
    ],
    [true, false],
  ),
  edge(
    'Part of the eggs below which nothing is larvae',
    0.005,
    few,
    [
      [0.0049, 100, 0.5],
      [0.0051, 100, 0.5],
    ],
    [true, false],
  ),
  edge(
    'Share of lines that are most',
    0.8,
    few,
    [
      [0.001, 79, 0.5],
      [0.001, 81, 0.5],
    ],
    [false, true],
  ),
  edge(
    'Words too clear for a tiny part to overrule',
    0.85,
    few,
    [
      [0.001, 100, 0.84],
      [0.001, 100, 0.86],
    ],
    [true, false],
  ),
  edge('What a change of places may cost', 1, places, [0.98, 1.02], ['hatched fry', 'fry hatched']),
  edge(
    'How far larvae may be from eggs times two shares',
    0.03,
    shares,
    [1.029, 1.031],
    ['hatched', 'alive'],
  ),
  edge(
    'Words that a place between eggs and fry overrules',
    0.85,
    amid,
    [0.84, 0.86],
    ['eggs hatched fry', 'eggs alive fry'],
  ),
  edge(
    'Words that keep fingerlings fingerlings',
    0.7,
    later,
    [
      [0.6, 0.69],
      [0.6, 0.71],
    ],
    ['eggs hatched fry', 'eggs fry fingerlings'],
  ),
  edge(
    'Words that keep fry fry',
    0.95,
    later,
    [
      [0.94, 0.6],
      [0.96, 0.6],
    ],
    ['eggs hatched fry', 'eggs fry fingerlings'],
  ),
  edge(
    'Share of lines in which parts add up',
    0.8,
    meals,
    [
      [79, 0],
      [81, 0],
    ],
    [0, 1],
  ),
  edge(
    'Words that say a part is another thing',
    0.65,
    meals,
    [
      [100, 0.64],
      [100, 0.66],
    ],
    [1, 0],
  ),
];

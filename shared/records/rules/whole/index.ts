// Long: the record of every rule that needs no meaning, or little, beside its example
import type { RecordTable } from '../../table';
import type { SheetExample, TableRule, TableVerdict } from '../rule';
import { plain } from '../show';
import { bySuspectLinks } from './byLinks';
import { brokenChains, leapsInMatrix, moreWithAge, unlikeItsGroup } from './byChains';
import { negatives, offNumbers, overHundred, strangeWords, wildNumbers } from './byColumns';
import { bySuspectMoments } from './byMoments';
import { spanFaults, statedSpans } from './bySpans';
import { morePartThanWhole, risesAlone, shrinking, warmMornings } from './byParts';
import { beyondNature, ownRatios, twinColumns } from './byRatios';
import { copiedDown, repeatedNames, repeatedRows } from './byRows';
import type { Blamed } from './suspect';
import { blame, shownAt, spotOf } from './suspect';
import { wrongTotals } from './totals';

const judgements = new WeakMap<RecordTable, readonly Blamed[]>();
/** All that does not fit in a table, resolved to the fewest cells; judged once for all rules. */
function judged(table: RecordTable): readonly Blamed[] {
  let found = judgements.get(table);
  if (!found) {
    const rows = repeatedRows(table);
    const twice = new Set(rows.flatMap(({ cells }) => cells.map(({ record }) => record)));
    const others = [
      ...bySuspectLinks(table),
      ...strangeWords(table),
      ...negatives(table),
      ...overHundred(table),
      ...wildNumbers(table),
      ...offNumbers(table),
      ...ownRatios(table),
      ...beyondNature(table),
      ...twinColumns(table),
      ...bySuspectMoments(table),
      ...spanFaults(table),
      ...statedSpans(table),
      ...morePartThanWhole(table),
      ...risesAlone(table),
      ...warmMornings(table),
      ...shrinking(table),
      ...repeatedNames(table),
      ...copiedDown(table),
      ...brokenChains(table),
      ...unlikeItsGroup(table),
      ...leapsInMatrix(table),
      ...moreWithAge(table),
    ];
    // What a line entered twice breaks is explained by that.
    const open = others.filter(({ cells }) => !cells.some(({ record }) => twice.has(record)));
    judgements.set(table, (found = blame([...rows, ...open])));
  }
  return found;
}

/** What the blamed cells of a table were meant to be. */
function mendedOf(table: RecordTable): ReadonlyMap<number, ReadonlyMap<number, number>> {
  const mended = new Map<number, Map<number, number>>();
  for (const { at, meant } of judged(table)) {
    if (meant === undefined) continue;
    const column = mended.get(at.column) ?? new Map<number, number>();
    mended.set(at.column, column.set(at.record, meant));
  }
  return mended;
}

const verdictsOf = (table: RecordTable, id: string): TableVerdict[] =>
  judged(table)
    .filter(({ main }) => main.rule === id)
    .flatMap(({ at, main, also, or, meant }): TableVerdict[] => {
      const spot = spotOf(table, at);
      if (!spot) return [];
      const spots = (list: typeof also): NonNullable<TableVerdict['related']> =>
        list.flatMap((one) => spotOf(table, one) ?? []);
      return [
        {
          spot,
          related: spots(also),
          or: spots(or),
          seen: shownAt(table, at),
          expected: meant === undefined ? 'as the other lines' : plain(meant, 9),
          ...(meant === undefined ? {} : { proposal: plain(meant, 9) }),
          sentence: main.sentence,
          ...(main.severity ? { severity: main.severity } : {}),
        },
      ];
    });

const round1 = (x: number): number => Math.round(10 * x) / 10;
type Row = readonly (string | number | null)[];
const HEAD: Row = ['Col A', 'Col B', 'Col C'];
const product = (odd: number, value: number): SheetExample['sheets'] => ({
  Sheet: [
    HEAD,
    ...Array.from({ length: 9 }, (_, i): Row => [
      11 + 3 * i,
      7 + 2 * ((i * 5) % 9),
      i === odd ? value : (11 + 3 * i) * (7 + 2 * ((i * 5) % 9)),
    ]),
  ],
});
const column = (values: readonly (number | string)[]): SheetExample['sheets'] => ({
  Sheet: [['Name', 'Amount X'], ...values.map((value, i): Row => [`N${i + 1}`, value])],
});
const CLEAN = [41, 44, 39, 42, 45, 40, 43, 38, 46, 41];
const withOne = (value: number | string): readonly (number | string)[] =>
  CLEAN.map((x, i) => (i === 4 ? value : x));

const rule = (
  id: string,
  title: string,
  checks: string,
  why: string,
  examples: readonly SheetExample[],
  severity: TableRule['severity'] = 'unlikely',
): TableRule => ({
  id,
  scope: 'table',
  severity,
  title,
  needs: [[]],
  check: (table) => verdictsOf(table, id),
  checks,
  why,
  sources: ['PRACTICE'],
  examples,
});
const quiet = (sheets: SheetExample['sheets']): SheetExample => ({ sheets, because: 'All lines are alike.' });
const fires = (sheets: SheetExample['sheets'], says: string, because: string): SheetExample => ({
  sheets,
  says,
  because,
});
const dated = (odd: number): SheetExample['sheets'] => ({
  Sheet: [
    ['Date', 'Figure'],
    ...Array.from({ length: 10 }, (_, i): Row => [
      `2026-03-${String(i === 5 ? odd : 3 + 2 * i).padStart(2, '0')}`,
      CLEAN[i] ?? 40,
    ]),
  ],
});

export const wholeRules: readonly TableRule[] = [
  rule(
    'WHOLE.RELATION',
    'A line breaks what all others keep',
    'Sums, products, running sums and carried figures that hold in two lines of three, whatever the columns mean.',
    'One of the figures was typed wrongly, or a formula reads the wrong cell.',
    [
      fires(product(4, 1000), 'does not follow', 'A times B is C in all lines but one.'),
      quiet(product(-1, 0)),
    ],
  ),
  rule(
    'WHOLE.WORD',
    'A word among numbers',
    'Text that cannot be read in a column of numbers and stands there once.',
    'The line is missing from everything worked out from the column.',
    [fires(column(withOne('4o')), '"4o"', 'A letter for a nought.'), quiet(column(CLEAN))],
  ),
  rule(
    'WHOLE.MOMENT',
    'No such day or hour',
    'Text in a column of dates or hours that names no day of the calendar and no hour of the clock.',
    'Nothing can be worked out from it, and the line drops out of every order by time.',
    [
      fires(
        {
          Sheet: [
            ['Tank', 'At'],
            ...['07:10', '07:30', '25:40', '07:20', '07:45', '07:05'].map((at, i): Row => [`T${i}`, at]),
          ],
        },
        '25:40',
        'No clock shows it.',
      ),
      quiet({
        Sheet: [
          ['Tank', 'At'],
          ...['07:10', '07:30', '07:40', '07:20', '07:45', '07:05'].map((at, i): Row => [`T${i}`, at]),
        ],
      }),
    ],
  ),
  rule(
    'WHOLE.NEGATIVE',
    'A number below nothing',
    'One negative number in a column in which no other is.',
    'A sign slipped in, or more was taken than there was.',
    [fires(column(withOne(-45)), 'below nothing', 'All others count up.'), quiet(column(CLEAN))],
    'impossible',
  ),
  rule(
    'WHOLE.HUNDRED',
    'Over a hundred percent',
    'Numbers over 100 under a heading of percent in which nearly all others are below.',
    'A part cannot be more than the whole.',
    [
      fires(
        { Sheet: [['Name', 'Good %'], ...withOne(145).map((x, i): Row => [`N${i}`, x])] },
        'more than the whole',
        '145 % of the eggs.',
      ),
      quiet({ Sheet: [['Name', 'Good %'], ...CLEAN.map((x, i): Row => [`N${i}`, x])] }),
    ],
    'impossible',
  ),
  rule(
    'WHOLE.WILD',
    'Nothing like the others',
    'Numbers far from the middle of a column whose numbers lie close together, in spreads of that column.',
    'A nought too many, a mark that moved, or another unit.',
    [fires(column(withOne(450)), 'nothing like', 'Ten times the others.'), quiet(column(CLEAN))],
  ),
  rule(
    'WHOLE.FAHRENHEIT',
    'Fahrenheit among Celsius',
    'Numbers far above the others that come among them when turned from °F to °C.',
    'A thermometer or a hand changed scale.',
    [
      fires(
        {
          Sheet: [
            ['Name', 'Water °C'],
            ...[26.5, 27.1, 26.8, 80.6, 27, 26.2, 26.9, 27.3, 26.4, 26.7].map((x, i): Row => [`N${i}`, x]),
          ],
        },
        '°F',
        '80.6 °F is 27 °C.',
      ),
      quiet({
        Sheet: [
          ['Name', 'Water °C'],
          ...[26.5, 27.1, 26.8, 27, 26.2, 26.9, 27.3, 26.4, 26.7, 26.6].map((x, i): Row => [`N${i}`, x]),
        ],
      }),
    ],
  ),
  rule(
    'WHOLE.RATIO',
    'Out of proportion to its line',
    'Two numbers of a line whose ratio is a habit of the farm, against the middle and spread of that ratio.',
    'One of the two is wrong by a factor, though each alone could be right.',
    [
      fires(
        {
          Sheet: [
            ['Fish', 'Female weight (kg)', 'Hormone (mL)'],
            ...[1, 1.4, 0.8, 2, 1.6, 1.2, 0.9, 1.8].map((x, i): Row => [`F${i}`, x, i === 3 ? 0.4 : x / 2]),
          ],
        },
        'less of it',
        'Two kilograms with the dose of 0.8.',
      ),
      quiet({
        Sheet: [
          ['Fish', 'Female weight (kg)', 'Hormone (mL)'],
          ...[1, 1.4, 0.8, 2, 1.6, 1.2, 0.9, 1.8].map((x, i): Row => [`F${i}`, x, x / 2]),
        ],
      }),
    ],
  ),
  rule(
    'WHOLE.CHAIN',
    'A product that does not come out',
    'Larvae by eggs and shares, amounts by rate and volume, money by number and price, whatever the units.',
    'One of the figures of the line is wrong by a factor.',
    [
      fires(
        {
          Sheet: [
            ['Run', 'Eggs', 'Fertilised %', 'Hatched %', 'Larvae'],
            ...[70, 62, 75, 15, 68, 72].map((hatch, i): Row => [
              `R${i + 1}`,
              90000 + 7300 * i,
              80,
              hatch,
              Math.round((90000 + 7300 * i) * 0.008 * (i === 3 ? 60 : hatch)),
            ]),
          ],
        },
        'too much',
        'Four times the larvae that 15 % would give.',
      ),
      quiet({
        Sheet: [
          ['Run', 'Eggs', 'Fertilised %', 'Hatched %', 'Larvae'],
          ...[70, 62, 75, 60, 68, 72].map((hatch, i): Row => [
            `R${i + 1}`,
            90000 + 7300 * i,
            80,
            hatch,
            Math.round((90000 + 7300 * i) * 0.008 * hatch),
          ]),
        ],
      }),
    ],
  ),
  rule(
    'WHOLE.KEPT',
    'A tank or a bag of another size',
    'The water of a tank and the weight of a bag, which stay from line to line.',
    'A digit was mistyped; the dose worked out from it is wrong.',
    [
      fires(
        {
          Sheet: [
            ['Tank', 'Volume (L)', 'pH'],
            ...Array.from({ length: 12 }, (_, i): Row => [
              `T${1 + (i % 2)}`,
              i === 5 ? 505 : i % 2 ? 550 : 800,
              round1(6.5 + 0.1 * (i % 5)),
            ]),
          ],
        },
        'in the other lines',
        '505 L where the tank holds 550.',
      ),
      quiet({
        Sheet: [
          ['Tank', 'Volume (L)', 'pH'],
          ...Array.from({ length: 12 }, (_, i): Row => [
            `T${1 + (i % 2)}`,
            i % 2 ? 550 : 800,
            round1(6.5 + 0.1 * (i % 5)),
          ]),
        ],
      }),
    ],
  ),
  rule(
    'WHOLE.NATURE',
    'No fish is like that',
    'Egg weight by body weight, eggs by egg weight and the like against bounds that no farm goes beyond.',
    'One of the two was written in another unit or with a nought too many.',
    [
      fires(
        {
          Sheet: [
            ['Female', 'Female weight (kg)', 'Egg weight (g)'],
            ['F1', 1, 130],
            ['F2', 1.4, 1800],
            ['F3', 0.8, 95],
            ['F4', 1.2, 140],
            ['F5', 1.1, 120],
          ],
        },
        'cannot be',
        '1,800 g of eggs from 1.4 kg.',
      ),
      quiet({
        Sheet: [
          ['Female', 'Female weight (kg)', 'Egg weight (g)'],
          ['F1', 1, 130],
          ['F2', 1.4, 180],
          ['F3', 0.8, 95],
          ['F4', 1.2, 140],
          ['F5', 1.1, 120],
        ],
      }),
    ],
    'impossible',
  ),
  rule(
    'WHOLE.DATE',
    'A date out of its order',
    'Dates of lines that follow each other in time, each against the lines above and below.',
    'A month or a year slipped; everything counted from the day is wrong.',
    [fires(dated(28), 'breaks the order', 'The 28th between the 11th and the 15th.'), quiet(dated(13))],
  ),
  rule(
    'WHOLE.GAP',
    'Two days too far apart',
    'The days between two dates of a line against those of the other lines.',
    'One of the dates has slipped.',
    [
      fires(
        {
          Sheet: [
            ['Start day', 'End day'],
            ...[14, 5, 18, 11, 3, 8].map((d, i): Row => [
              `2026-03-${String(d).padStart(2, '0')}`,
              `2026-${i === 2 ? '06' : '03'}-${String(d + 2).padStart(2, '0')}`,
            ]),
          ],
        },
        'days',
        'Three months instead of two days.',
      ),
      quiet({
        Sheet: [
          ['Start day', 'End day'],
          ...[14, 5, 18, 11, 3, 8].map((d): Row => [
            `2026-03-${String(d).padStart(2, '0')}`,
            `2026-03-${String(d + 2).padStart(2, '0')}`,
          ]),
        ],
      }),
    ],
  ),
  rule(
    'WHOLE.HOUR',
    'Not at this hour',
    'Clock times against those of the other lines, around the dial.',
    'Morning and evening are easily exchanged; everything counted from the hour is then twelve hours off.',
    [
      fires(
        {
          Sheet: [
            ['Tank', 'At'],
            ...['07:10', '07:30', '07:40', '19:20', '07:45', '07:05', '07:15', '07:25'].map((at, i): Row => [
              `T${i}`,
              at,
            ]),
          ],
        },
        'far from the usual',
        'All read in the morning.',
      ),
      quiet({
        Sheet: [
          ['Tank', 'At'],
          ...['07:10', '07:30', '07:40', '07:20', '07:45', '07:05', '07:15', '07:25'].map((at, i): Row => [
            `T${i}`,
            at,
          ]),
        ],
      }),
    ],
  ),
  rule(
    'WHOLE.SPAN',
    'Too many hours or too few',
    'The hours between two clock times of a line against those of the other lines.',
    'One of the two was written wrongly.',
    [
      fires(
        {
          Sheet: [
            ['In', 'Out'],
            ...[
              ['20:00', '07:00'],
              ['21:00', '08:10'],
              ['22:00', '09:05'],
              ['20:30', '07:20'],
              ['21:40', '16:40'],
              ['22:10', '09:20'],
            ].map((x): Row => x),
          ],
        },
        'hours',
        'Nineteen instead of eleven.',
      ),
      quiet({
        Sheet: [
          ['In', 'Out'],
          ...[
            ['20:00', '07:00'],
            ['21:00', '08:10'],
            ['22:00', '09:05'],
            ['20:30', '07:20'],
            ['21:40', '08:40'],
            ['22:10', '09:20'],
          ].map((x): Row => x),
        ],
      }),
    ],
  ),
  rule(
    'WHOLE.STATED',
    'The time stated is not the time between',
    'A column that is the time between two moments of its line, where that holds in most lines.',
    'One of the three is wrong.',
    [
      fires(
        {
          Sheet: [
            ['In', 'Out', 'Mins'],
            ...[
              ['08:00', '08:30', 30],
              ['09:00', '09:45', 45],
              ['10:00', '10:20', 20],
              ['11:00', '11:50', 90],
              ['12:00', '12:35', 35],
            ].map((x): Row => x),
          ],
        },
        'says 90',
        'Fifty minutes are stated as ninety.',
      ),
      quiet({
        Sheet: [
          ['In', 'Out', 'Mins'],
          ...[
            ['08:00', '08:30', 30],
            ['09:00', '09:45', 45],
            ['10:00', '10:20', 20],
            ['11:00', '11:50', 50],
            ['12:00', '12:35', 35],
          ].map((x): Row => x),
        ],
      }),
    ],
  ),
  rule(
    'WHOLE.PART',
    'More out than in',
    'Larvae and eggs, dead and stocked, sold and held, paid and owed, line by line.',
    'A part cannot be more than the whole.',
    [
      fires(
        {
          Sheet: [
            ['Tank', 'Stocked', 'Dead'],
            ['T1', 5000, 120],
            ['T2', 4000, 6000],
            ['T3', 4500, 90],
            ['T4', 5200, 75],
          ],
        },
        'More under',
        '6,000 dead of 4,000.',
      ),
      quiet({
        Sheet: [
          ['Tank', 'Stocked', 'Dead'],
          ['T1', 5000, 120],
          ['T2', 4000, 600],
          ['T3', 4500, 90],
          ['T4', 5200, 75],
        ],
      }),
    ],
    'impossible',
  ),
  rule(
    'WHOLE.RISE',
    'The pH moves with nothing given',
    'pH before and after in lines without a dose, where other lines have one.',
    'The dose was not written down, or a reading is wrong.',
    [
      fires(
        {
          Sheet: [
            ['pH before', 'Soda ash (g)', 'pH after'],
            [5.6, 40, 6.8],
            [5.7, 40, 6.9],
            [5.8, 0, 7.2],
            [5.5, 45, 6.8],
            [5.6, 40, 6.9],
          ],
        },
        'nothing given',
        'No soda, yet 1.4 higher.',
      ),
      quiet({
        Sheet: [
          ['pH before', 'Soda ash (g)', 'pH after'],
          [5.6, 40, 6.8],
          [5.7, 40, 6.9],
          [5.8, 0, 5.9],
          [5.5, 45, 6.8],
          [5.6, 40, 6.9],
        ],
      }),
    ],
  ),
  rule(
    'WHOLE.SHRINKS',
    'Smaller than before',
    'Mean weight and length of a group from one sampling to the next, and its number.',
    'Fish do not get smaller or become more by themselves; a figure or a tank was exchanged.',
    [
      fires(
        {
          Sheet: [
            ['Date', 'Mean weight (g)', 'No of fish'],
            ...[1.2, 1.9, 2.8, 1.1, 5.9, 7.4].map((x, i): Row => [
              `2026-03-${String(2 + 4 * i).padStart(2, '0')}`,
              x,
              900 - 10 * i,
            ]),
          ],
        },
        'do not get smaller',
        '2.8 g, then 1.1 g.',
      ),
      quiet({
        Sheet: [
          ['Date', 'Mean weight (g)', 'No of fish'],
          ...[1.2, 1.9, 2.8, 4.1, 5.9, 7.4].map((x, i): Row => [
            `2026-03-${String(2 + 4 * i).padStart(2, '0')}`,
            x,
            900 - 10 * i,
          ]),
        ],
      }),
    ],
  ),
  rule(
    'WHOLE.TWICE',
    'A record entered twice',
    'Lines of which everything typed stands in an earlier line too.',
    'Counted twice, it changes every total.',
    [
      fires(
        {
          Sheet: [
            ['Buyer', 'Sold', 'Price', 'Amount'],
            ['A', 120, 30, 3600],
            ['B', 200, 35, 7000],
            ['C', 90, 30, 2700],
            ['B', 200, 35, 7000],
            ['D', 150, 35, 5250],
          ],
        },
        'entered twice',
        'B stands there twice.',
      ),
      quiet({
        Sheet: [
          ['Buyer', 'Sold', 'Price', 'Amount'],
          ['A', 120, 30, 3600],
          ['B', 200, 35, 7000],
          ['C', 90, 30, 2700],
          ['D', 150, 35, 5250],
        ],
      }),
    ],
  ),
  rule(
    'WHOLE.NAME',
    'A number used twice',
    'Runs, receipts and tags of which nearly every line has its own.',
    'Two records under one name are later taken for one.',
    [
      fires(
        {
          Sheet: [
            ['Run', 'Eggs'],
            ...['R1', 'R2', 'R3', 'R4', 'R4', 'R6', 'R7'].map((x, i): Row => [x, 50000 + 3171 * i]),
          ],
        },
        'twice',
        'R4 comes again.',
      ),
      quiet({
        Sheet: [
          ['Run', 'Eggs'],
          ...['R1', 'R2', 'R3', 'R4', 'R5', 'R6', 'R7'].map((x, i): Row => [x, 50000 + 3171 * i]),
        ],
      }),
    ],
  ),
  rule(
    'WHOLE.COPIED',
    'Figures of the line above left standing',
    'Lines of which most fine figures are those of the line above, where that is not usual.',
    'The line was copied as a form and not filled in.',
    [
      fires(
        {
          Sheet: [
            ['Name', 'P', 'Q', 'R'],
            ...[
              [11.2, 301, 7.13],
              [12.9, 288, 6.92],
              [10.7, 342, 7.71],
              [10.7, 342, 7.71],
              [13.3, 279, 6.35],
              [11.8, 315, 7.48],
              [12.2, 297, 6.6],
            ].map((x, i): Row => [`N${i}`, ...x]),
          ],
        },
        'line above',
        'All three are copied.',
      ),
      quiet({
        Sheet: [
          ['Name', 'P', 'Q', 'R'],
          ...[
            [11.2, 301, 7.13],
            [12.9, 288, 6.92],
            [10.7, 342, 7.71],
            [11.1, 333, 7.02],
            [13.3, 279, 6.35],
            [11.8, 315, 7.48],
            [12.2, 297, 6.6],
          ].map((x, i): Row => [`N${i}`, ...x]),
        ],
      }),
    ],
  ),
  {
    ...rule(
      'WHOLE.TOTAL',
      'A total is not its lines',
      'Typed totals, averages and sums by formula against the lines above them.',
      'A line was left out, or a figure changed after it was added up.',
      [
        fires(
          {
            Sheet: [
              ['Tank', 'Fed', 'Lost'],
              ['T1', 120, 3],
              ['T2', 140, 5],
              ['T3', 131, 2],
              ['Total', 391, 12],
            ],
          },
          'the lines give',
          'Lost is 10, not 12.',
        ),
        quiet({
          Sheet: [
            ['Tank', 'Fed', 'Lost'],
            ['T1', 120, 3],
            ['T2', 140, 5],
            ['T3', 131, 2],
            ['Total', 391, 10],
          ],
        }),
      ],
    ),
    check: (table) => wrongTotals(table, mendedOf(table)),
  },
];

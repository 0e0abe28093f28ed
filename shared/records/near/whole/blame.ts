// Long: small tables, as data
import type { Near } from '../../../base/near';
import type { Cell } from '../../../base/values';
import { shownWorkedOut } from '../../rules/show';
import type { Line } from '../check';
import { dayAfter, edge, findingsOf, found, times } from '../check';
import { leap } from './parts';

/** Which cell is blamed, and for what, changes at numbers somebody chose. */
const lines = (n: number, line: (i: number) => Line): readonly Line[] =>
  Array.from({ length: n }, (_, i) => line(i));
const varied = (i: number, c: number): number =>
  1000 + ((Math.imul(Math.imul(i + 7, 0x9e3779b1) ^ (c + 3), 0x85ebca6b) >>> 9) % 977);
/** Rules that accuse, with the cell and the cells that could be to blame nearly as well. */
const accused = (values: readonly Line[]): readonly string[] =>
  findingsOf(values)
    .filter(({ severity }) => severity !== 'look')
    .map(({ rule, place, or = [] }) => [rule, place.cell, ...or.map(({ cell }) => cell)].join(' '));
const wrongCells = (rule: string, ...sheets: readonly (readonly Line[])[]): readonly string[] =>
  found(rule, ...sheets).map(({ place }) => `${place.sheet} ${place.cell}`);

/** A product of columns nobody knows, in the third of so many lines so many times too much. */
const product = ([n, times]: readonly [lines: number, times: number]): readonly string[] =>
  accused([
    ['Name', 'Zrabe', 'Quolt', 'Nimm'],
    ...lines(n, (i) => {
      const [a, b] = [110 + 17 * ((i * 5) % 7), 640 + 9 * ((i * 7) % 5)];
      return [`N${i}`, a, b, Number((a * b * (i === 2 ? times : 1)).toPrecision(8))];
    }),
  ]);
/** The same of eggs, where another rule would name the cell. */
const eggs = (n: number): number =>
  times('WHOLE.RELATION', [
    ['Run', 'Egg weight (g)', 'Eggs per gram', 'Eggs'],
    ...lines(n, (i) => {
      const [grams, perGram] = [110 + 17 * ((i * 5) % 7), 640 + 9 * ((i * 7) % 5)];
      return [`R${i + 1}`, grams, perGram, Math.round(grams * perGram * (i === 2 ? 1.3 : 1))];
    }),
  ]);
/** Feed of so many tanks; in one line a tank has ten times its feed and the total is off by as much more. */
const twoFaults = (tanks: number): readonly string[] =>
  accused([
    ['Feed (g)'],
    ['Date', ...Array.from({ length: tanks }, (_, t) => `Tank ${t + 1}`), 'Total'],
    ...[10, 14, 20, 28, 40, 56, 68, 113, 160, 226, 320, 450].map((one, i): Line => {
      const fed = Array.from({ length: tanks }, (_, t) =>
        t === 1 ? one : 330 + 11 * ((i * (3 + t) + t) % (7 + t)),
      );
      const total = fed.reduce((a, b) => a + b, 0);
      if (i === 6) fed[1] = 680;
      return [dayAfter(i), ...fed, total + (i === 6 ? 969 : 0)];
    }),
  ]);
/** Deaths of so many tanks with their sum: five of fifteen typed sums are wrong, five more are formulas. */
const deaths = (tanks: number): number =>
  times('WHOLE.RELATION', [
    ['Dead'],
    ['Date', ...Array.from({ length: tanks }, (_, t) => `Tank ${t + 1}`), 'Total'],
    ...lines(20, (i) => {
      const isFormula = i % 4 === 0;
      const seven = tanks === 2 ? [3, 4] : [2, 2, 3];
      const dead = isFormula
        ? seven
        : Array.from({ length: tanks }, (_, t) => 3 + ((i * (5 + t) + 3 * t) % (11 + t)));
      const sum = dead.reduce((a, b) => a + b, 0) + (i % 4 === 1 ? 7 + i : 0);
      return [dayAfter(i), ...dead, isFormula ? '=SUM(B3:D3)' : sum];
    }),
  ]);
/** Stocks of which some lines begin with another number than the line above ended with. */
const carried = (broken: number): number => {
  let open = 90_000;
  return times('WHOLE.RELATION', [
    ['Date', 'Opening', 'Dead', 'Closing'],
    ...lines(41, (i) => {
      const dead = 211 + 7 * ((i * 5) % 23);
      if (i > 0 && i % 3 === 1 && i < 3 * broken) open += 900 + 31 * i;
      const line: Line = [dayAfter(i), open, dead, open - dead];
      open -= dead;
      return line;
    }),
  ]);
};

/** A line that says the same as an earlier one: so many words, and one column of eggs. */
const repeated = ([words, columns]: readonly [words: number, columns: number]): number =>
  times('WHOLE.TWICE', [
    [...Array.from({ length: columns - 1 }, (_, c) => `Zq${c}`), 'Eggs'],
    ...lines(16, (i) => {
      const said = i === 15 ? 0 : i;
      return [
        ...Array.from({ length: columns - 1 }, (_, c): Cell =>
          c < words ? `w${said}x${c}` : varied(said, c),
        ),
        80_000 + varied(said, 9),
      ];
    }),
  ]);

/** Runs of which four lines of another sheet are the sum; of one of them a line is ten times this. */
const inASum = (larvae: number): readonly string[] => {
  const of = (i: number, k: number): number => (i === 4 && k === 2 ? larvae : 900 + varied(i, k) / 5);
  return wrongCells(
    'WHOLE.SHEETS',
    [['Run', 'Larvae'], ...lines(8, (i) => [`R${i + 1}`, of(i, 0) + of(i, 1) + of(i, 2) + of(i, 3)])],
    [
      ['Date', 'Run', 'Larvae out'],
      ...lines(32, (j) => {
        const [i, k] = [j % 8, Math.floor(j / 8)];
        return [dayAfter(j), `R${i + 1}`, (i === 4 && k === 2 ? 10 : 1) * of(i, k)];
      }),
    ],
  );
};
const inTwoSheets = (there: number): readonly string[] =>
  wrongCells(
    'WHOLE.SHEETS',
    [['Run', 'Larvae'], ...lines(12, (i) => [`R${i + 1}`, i === 4 ? 52_000 : 41_000 + varied(i, 1)])],
    [
      ['Run', 'Larvae out', 'Feed (g)'],
      ...lines(12, (i) => [`R${i + 1}`, i === 4 ? there : 41_000 + varied(i, 1), 300 + varied(i, 2)]),
    ],
  );

/** Injection and strip of twenty runs, of which the first few have the day only; the last but one is odd. */
const stamped = (days: number): number =>
  times('WHOLE.SPAN', [
    ['Run', 'Injected', 'Stripped'],
    ...lines(20, (i) => {
      const [from, to] = [dayAfter(i), dayAfter(i + 1)];
      return i < days
        ? [`R${i}`, from, to]
        : [`R${i}`, `${from} 20:${10 + i}`, `${to} ${i === 18 ? '20' : '07'}:${10 + 2 * i}`];
    }),
  ]);
/** Is morning for evening what is said of a strip so many minutes more than twelve hours late? */
const exchanged = (minutes: number): boolean | undefined =>
  found('WHOLE.SPAN', [
    ['Run', 'Injected', 'Stripped'],
    ...lines(14, (i) => {
      const strip = 20 * 60 + 420 + 7 * ((i * 5) % 4) + (i === 5 ? 720 + minutes : 0);
      const clock = [Math.floor((strip % 1440) / 60), strip % 60].map((x) => String(x).padStart(2, '0'));
      return [
        `R${i}`,
        `${dayAfter(2 * i)} 20:00`,
        `${dayAfter(2 * i + Math.floor(strip / 1440))} ${clock.join(':')}`,
      ];
    }),
  ])[0]?.sentence.includes('evening');

/** Totals of which so many hold for one column, and one that holds for none. */
const habit = (weeks: number): number =>
  times('WHOLE.TOTAL', [
    ['Date', 'Dead', 'Sold'],
    ...Array.from({ length: weeks + 1 }, (_, w): readonly Line[] => [
      ...lines(4, (i) => [dayAfter(7 * w + i), 12 + 5 * i + 3 * w, 300 + 50 * i + 20 * w]),
      w < weeks ? ['Total', 78 + 12 * w, null] : ['Total', 89 + 12 * w, 1630 + 80 * w],
    ]).flat(),
  ]);
const thinTotal = (sales: number): number =>
  times('WHOLE.TOTAL', [
    ['Date', 'Dead', 'Sold'],
    ...lines(6, (i) => [dayAfter(i), 12 + 5 * i, i < sales ? 300 + 50 * i : null]),
    ['Total', 147, sales === 1 ? 390 : 840],
  ]);

/** Eggs ten times too many where weight and number a gram are low by the same share. */
const tenfold = (share: number): readonly string[] =>
  accused([
    ['Run', 'Egg weight (g)', 'Eggs per gram', 'Eggs'],
    ...lines(12, (i) => {
      const low = Math.sqrt(0.31623 * share);
      const [grams, perGram] = [Number((131 * low).toFixed(1)), Math.round(658 * low)];
      const [a, b] = [110 + 7 * ((i * 5) % 7), 640 + 9 * ((i * 7) % 5)];
      return i === 5 ? ['R5', grams, perGram, Math.round(grams * perGram * 10)] : [`R${i}`, a, b, a * b];
    }),
  ]).filter((one) => !one.startsWith('EGGS.PERGRAM'));
/** Feed conversion of twelve tanks; of one the weight at the start is ten times too much, at the end it is this. */
const conversion = (end: number): readonly string[] =>
  accused([
    ['Tank', 'Fish stocked', 'Start weight (g)', 'Fish alive', 'End weight (g)', 'Feed (kg)', 'FCR'],
    ...lines(12, (i) => {
      const [start, n, alive, feed] = [1.8 + 0.1 * (i % 4), 1000 + 10 * i, 900 + 10 * i, 6 + 0.1 * i];
      const last = i === 5 ? end : 7 + 0.2 * (i % 5);
      const gain = (last * alive - start * n) / 1000;
      return [`T${i}`, n, i === 5 ? 10 * start : start, alive, last, feed, Number((feed / gain).toFixed(3))];
    }),
  ]);

export const NEAR: readonly Near[] = [
  edge(
    'Share of the best score from which on a cell could be to blame as well',
    0.75,
    (off: number) => product([5, off]),
    [1.3, 0.8],
    [['WHOLE.RELATION D4 C4'], ['WHOLE.RELATION C4 D4 B4']],
  ),
  edge(
    'Numbers of a column from which on one can be odd',
    5,
    (n: number) => product([n, 0.8]),
    [4, 5],
    [['WHOLE.RELATION D4 B4 C4'], ['WHOLE.RELATION C4 D4 B4']],
  ),
  edge('Lines from which on a relation is sure', 6, eggs, [6, 7], [0, 1]),
  edge(
    'Share of the blame from which on a cell explains a fault',
    0.12,
    twoFaults,
    [7, 8],
    [['WHOLE.RELATION C9'], ['WHOLE.RELATION J9', 'WHOLE.WILD C9']],
  ),
  edge('Tanks whose sum is no chance', 3, deaths, [2, 3], [0, 5]),
  edge('Share of lines that may not go on from the line above', 0.25, carried, [10, 11], [10, 0]),
  edge(
    'Numbers of a line beside its words that is known again',
    2,
    repeated,
    [
      [4, 5],
      [4, 6],
    ],
    [0, 1],
  ),
  edge(
    'Spreads a line of a sum is off before a slip in it explains the sum',
    1.5,
    inASum,
    [127, 128],
    [['A B6'], ['B C22']],
  ),
  edge(
    'Times a number of one sheet is odder than that of the other',
    2,
    inTwoSheets,
    [28_000, 28_500],
    [['B B6'], ['A B6']],
  ),
  edge('Share of moments with day and hour', 0.8, stamped, [5, 4], [0, 1]),
  edge('Hours about twelve that are morning for evening', 1.5, exchanged, [85, 95], [true, false]),
  edge('Other columns or lines that show how a total is meant', 2, habit, [1, 2], [0, 2]),
  edge('Numbers that have a total', 2, thinTotal, [1, 2], [0, 1]),
  edge(
    'How much stranger a number put right may be',
    0.3,
    tenfold,
    [0.87, 0.885],
    [['EGGS.PRODUCT D7'], ['SLIP.TEN D7']],
  ),
  edge(
    'Share by which a number put right must still move the result',
    0.04,
    conversion,
    [7.5, 7.75],
    [['SLIP.TEN C7'], ['FCR.STATED G7', 'SLIP.HISTORY C7']],
  ),
  edge('Times a leap is too much for its neighbours', 10, leap, [1900, 1940], [1, 0]),
  edge(
    'Count worked out from which on no decimals are shown',
    10,
    (x: number) => shownWorkedOut('eggs', x),
    [9.5, 10.4],
    ['9.5', '10'],
  ),
];

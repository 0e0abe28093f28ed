// Long: small columns, as data
import type { Near } from '../../../base/near';
import type { Cell } from '../../../base/values';
import { contentOf } from '../../columns/cells/content';
import { FIELD_NAMES } from '../../fields';
import { evidenceOf, scoreOf } from '../../meaning/fit';
import { edge } from '../check';
import { STRANGE } from '../shape/headings';

/** What one column alone is read as, no neighbour asked, changes at numbers somebody chose. */
export const contentIn = (cells: readonly Cell[]): ReturnType<typeof contentOf> =>
  contentOf({
    length: cells.length,
    cellAt: (i) => cells[i] ?? null,
    numberAt: (i) => Number(cells[i] ?? NaN),
    isDate: () => false,
  });
interface Column {
  readonly heading: string;
  readonly parent?: string;
  readonly cells: readonly Cell[];
}
/** The likeliest meaning; `open` where none is likely. */
function meant({ heading, parent = '', cells }: Column): string {
  const [evidence, content] = [evidenceOf(heading, parent), contentIn(cells)];
  const scores = FIELD_NAMES.map((field) => ({ field, score: scoreOf(field, evidence, content) }));
  const best = scores.reduce((a, b) => (b.score > a.score ? b : a));
  return best.score > 2 ? best.field : 'open';
}
/** The same heading over two columns. */
const over = (
  heading: string,
  number: string,
  value: number,
  [below, above]: readonly [below: readonly Cell[], above: readonly Cell[]],
  answers: Near['answers'],
): Near =>
  edge(
    number,
    value,
    meant,
    [
      { heading, cells: below },
      { heading, cells: above },
    ],
    answers,
  );

type Make = (i: number) => Cell;
const all = (n: number, make: Make): readonly Cell[] => Array.from({ length: n }, (_, i) => make(i));
/** The first so many cells of one kind, the others of another. */
const some = (n: number, of: number, one: Make, other: Make): readonly Cell[] =>
  all(of, (i) => (i < n ? one(i) : other(i)));
const WORDS = [...STRANGE, ...STRANGE.map((word) => `${word} ferro`)];
const word: Make = (i) => WORDS[i] ?? '';
/** Words of so many kinds. */
const wordOf =
  (kinds: number): Make =>
  (i) =>
    word(i % kinds);
const count: Make = (i) => 240 + 7 * ((i * 5) % 9);
const broken: Make = (i) => Number(count(i)) + 0.5;
const from =
  (least: number): Make =>
  (i) =>
    least + ((i * 5) % 3);
const two = (x: number): string => String(x).padStart(2, '0');
const day: Make = (i) => `${two(i + 1)}/04/2025`;
const stamp: Make = (i) => `${two(i + 1)}/04/2025 20:15`;
const serial: Make = (i) => 45_000 + i;
const always =
  (cell: Cell): Make =>
  () =>
    cell;

const HEADINGS: readonly Near[] = [
  edge(
    'Worth of a guess by the lists of spellings',
    0.95,
    meant,
    [
      { heading: 'Date fish', cells: all(9, count) },
      { heading: 'Date eggs', cells: all(9, count) },
    ],
    ['fish', 'eggWeight'],
  ),
  edge(
    'Worth of words from which a heading needs none above it',
    0.78,
    meant,
    [
      { heading: 'Date pH', parent: 'Temp (°C)', cells: all(9, (i) => 6.5 + i / 10) },
      { heading: 'Weight', parent: 'Temp (°C)', cells: all(9, (i) => 6.5 + i / 10) },
    ],
    ['open', 'weight'],
  ),
  edge(
    'Letters of a size',
    3,
    meant,
    [
      { heading: 'To', cells: all(9, count) },
      { heading: 'Mid', cells: all(9, count) },
    ],
    ['open', 'gradeMiddle'],
  ),
  edge(
    'Words of a heading that says a size',
    3,
    meant,
    [
      { heading: 'The little ones', cells: all(9, count) },
      { heading: 'The little ones here', cells: all(9, count) },
    ],
    ['gradeSmall', 'open'],
  ),
  edge(
    'Worth of a size that is said',
    0.55,
    meant,
    [
      { heading: 'Large size', cells: all(9, count) },
      { heading: 'Alive large', cells: all(9, count) },
    ],
    ['gradeBig', 'alive'],
  ),
  edge(
    'Worth of words below which they say nothing',
    0.3,
    meant,
    [
      { heading: 'Water kg', cells: all(9, count) },
      { heading: 'Sold kg', cells: all(9, count) },
    ],
    ['open', 'biomass'],
  ),
];

const NUMBERS: readonly Near[] = [
  over(
    'Females',
    'Share of counts that are not whole',
    0.2,
    [some(4, 21, broken, count), some(5, 24, broken, count)],
    ['females', 'female'],
  ),
  over(
    'Dead',
    'Share of counts that are parts of one',
    0.5,
    [some(10, 21, (i) => 0.12 + i / 100, always(0)), some(11, 21, (i) => 0.12 + i / 100, always(0))],
    ['dead', 'eggsDead'],
  ),
  over(
    'Survival (%)',
    'Middle above which numbers are no percents',
    100.5,
    [all(9, from(99)), all(9, from(101))],
    ['survival', 'open'],
  ),
  over(
    'Weight',
    'Share of numbers in a column of numbers',
    0.4,
    [some(3, 8, count, word), some(3, 7, count, word)],
    ['open', 'weight'],
  ),
  over(
    'Grade',
    'Share of numbers of which one is no size',
    0.8,
    [some(7, 9, count, word), some(8, 10, count, word)],
    ['size', 'open'],
  ),
  over(
    'Big size',
    'Number above which it is no size',
    60,
    [all(9, always(58)), all(9, always(62))],
    ['size', 'gradeBig'],
  ),
  over(
    'How many fish in tank',
    'Fish below which they are a sample',
    120,
    [all(9, from(116)), all(9, from(123))],
    ['volume', 'fish'],
  ),
];

const MOMENTS: readonly Near[] = [
  over(
    'Date',
    'Share of days with an hour among plain numbers',
    0.9,
    [some(8, 9, (i) => 45_000.5 + i, serial), some(10, 11, (i) => 45_000.5 + i, serial)],
    ['date', 'open'],
  ),
  over(
    'Date',
    'Share of days in a column of moments',
    0.4,
    [some(3, 8, day, word), some(3, 7, day, word)],
    ['open', 'date'],
  ),
  over(
    'Eggs',
    'Digits from which numbers may be hours',
    700,
    [all(7, (i) => 650 + i), all(7, (i) => 710 + i)],
    ['open', 'fertilisedAt'],
  ),
  over(
    'Injected',
    'Share of days with their hour',
    0.3,
    [some(2, 7, stamp, day), some(6, 19, stamp, day)],
    ['injectedOn', 'injected'],
  ),
  over(
    'Date',
    'Times the middle the highest day may be',
    1.15,
    [all(9, (i) => (i > 6 ? 45_000 : 40_000)), all(9, (i) => (i > 6 ? 47_000 : 40_000))],
    ['date', 'open'],
  ),
  over(
    'Date',
    'Number from which it may be a day',
    30_000,
    [all(9, from(29_000)), all(9, from(31_000))],
    ['open', 'date'],
  ),
  over(
    'Date',
    'Number up to which it may be a day',
    80_000,
    [all(9, from(78_000)), all(9, from(82_000))],
    ['date', 'open'],
  ),
];

const TEXTS: readonly Near[] = [
  over(
    'Lot',
    'Words of which none may come again in a column of names',
    5,
    [all(4, wordOf(1)), all(5, wordOf(2))],
    ['run', 'size'],
  ),
  over(
    'Lot',
    'Share of different words in a column of names',
    0.5,
    [all(21, wordOf(10)), all(21, wordOf(11))],
    ['size', 'run'],
  ),
  over(
    'Kind',
    'Different words of which none is a kind',
    6,
    [all(5, word), all(6, word)],
    ['category', 'feedType'],
  ),
  over(
    'Kind',
    'Share of different words of which none is a kind',
    0.8,
    [some(7, 9, word, count), some(8, 10, word, count)],
    ['category', 'feedType'],
  ),
  over(
    'Kind',
    'Share of words that differ where none is a kind',
    0.9,
    [all(9, wordOf(8)), all(11, wordOf(10))],
    ['category', 'feedType'],
  ),
  over(
    'Week deaths',
    'Share of words or days among weeks by their number',
    0.3,
    [some(2, 7, word, always(5)), some(6, 19, word, always(5))],
    ['dead', 'week'],
  ),
  over(
    'Note',
    'Share of days in a column that is no text',
    0.5,
    [some(10, 21, day, word), some(11, 21, day, word)],
    ['note', 'open'],
  ),
  over(
    'Note',
    'Share of numbers in a column that is no text',
    0.5,
    [some(10, 21, count, word), some(11, 21, count, word)],
    ['note', 'open'],
  ),
  over(
    'Female',
    'Share of decimals in a column of names',
    0.3,
    [some(2, 7, broken, count), some(6, 19, broken, count)],
    ['female', 'femaleWeight'],
  ),
];

export const NEAR: readonly Near[] = [...HEADINGS, ...NUMBERS, ...MOMENTS, ...TEXTS];

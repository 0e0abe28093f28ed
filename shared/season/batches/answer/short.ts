import { within } from '../../../base/steps';
import type { OrderBook } from '../../book/orderBook';
import type { SeasonShort, TriedChange } from '../../types';
import type { BatchProblem } from '../problem';
import { batchProblemOf } from '../problem';
import type { BatchSchedule } from '../search/schedule';
import type { BatchEffort } from '../search/search';
import { searchSteps, worthOf } from '../search/search';
import { isMetTask } from '../search/serve';
import { writtenNumber } from '../../../units/writtenNumber';

/** What stands in the way of a season, and which changes were tried against it. */

interface Step {
  readonly what: string;
  readonly book: OrderBook;
}
type Change = (book: OrderBook) => OrderBook;

const unusedName = (wish: string, names: readonly string[]): string => {
  const taken = new Set(names.map((n) => n.toLowerCase()));
  let name = wish;
  for (let i = 2; taken.has(name.toLowerCase()); i++) name = `${wish} ${i}`;
  return name;
};
const tagsOf = (list: readonly { readonly tag: string }[]): string[] => list.map(({ tag }) => tag);
export const meanWeight = ({ females }: OrderBook): number =>
  females.length > 0 ? females.reduce((sum, f) => sum + f.kilograms, 0) / females.length : 1;

export const moreFemales =
  (n: number): Change =>
  (book) => {
    const females = [...book.females];
    for (let i = 0; i < n; i++)
      females.push({ tag: unusedName('another female', tagsOf(females)), kilograms: meanWeight(book) });
    return { ...book, females };
  };
export const moreMales =
  (n: number): Change =>
  (book) => {
    const males = [...book.males];
    for (let i = 0; i < n; i++) males.push({ tag: unusedName('another male', tagsOf(males)) });
    return { ...book, males };
  };
const largestOf = ({ vats }: OrderBook): number => Math.max(500, ...vats.map(({ litres }) => litres));
const moreVats =
  (n: number): Change =>
  (book) => {
    const vats = [...book.vats];
    for (let i = 0; i < n; i++)
      vats.push({
        name: unusedName(
          'another vat',
          vats.map(({ name }) => name),
        ),
        litres: largestOf(book),
        holds: ['eggs', 'fry', 'nursing'],
      });
    return { ...book, vats };
  };
const moreHands: Change = (book) => ({
  ...book,
  staff: { ...book.staff, femalesPerDay: 2 * book.staff.femalesPerDay },
});
const anyHour: Change = (book) => ({
  ...book,
  staff: {
    ...book.staff,
    weekdays: [1, 2, 3, 4, 5, 6, 7],
    daysOff: [],
    stripFrom: 0,
    stripTo: 24,
    injectFrom: 0,
    injectTo: 24,
  },
});
export const later =
  (short: ReadonlySet<string>, days: number): Change =>
  (book) => ({
    ...book,
    orders: book.orders.map((o) => (short.has(o.name) ? { ...o, due: o.due + days } : o)),
  });
const all =
  (...changes: readonly Change[]): Change =>
  (book) =>
    changes.reduce((changed, change) => change(changed), book);

/** Changes a hatchery can make. Resting fish less is not among them. */
function singleSteps(book: OrderBook, short: ReadonlySet<string>): (readonly [string, Change])[] {
  const { staff } = book;
  const isHeld =
    staff.weekdays.length < 7 ||
    staff.daysOff.length > 0 ||
    staff.stripTo - staff.stripFrom < 24 ||
    staff.injectTo - staff.injectFrom < 24;
  const kilograms = meanWeight(book).toFixed(1);
  const litres = writtenNumber(largestOf(book));
  const isUnsure = book.certainty > 0.7;
  return [
    [`one more female of ${kilograms} kg`, moreFemales(1)],
    ['two more unrelated males', moreMales(2)],
    [`one more vat of ${litres} L`, moreVats(1)],
    ...(book.cleaningDays > 0
      ? ([
          ['a day less for cleaning a vat', (b: OrderBook) => ({ ...b, cleaningDays: b.cleaningDays - 1 })],
        ] as const)
      : []),
    [`hands for ${2 * staff.femalesPerDay} females a day`, moreHands],
    ...(isHeld ? ([['stripping on any day at any hour', anyHour]] as const) : []),
    ['the short orders a week later', later(short, 7)],
    [
      'goods delivered a week sooner',
      (b) => ({
        ...b,
        leadDays: {
          hormone: Math.max(0, b.leadDays.hormone - 7),
          cysts: Math.max(0, b.leadDays.cysts - 7),
          feed: Math.max(0, b.leadDays.feed - 7),
        },
      }),
    ],
    ...(isUnsure
      ? ([['planning them at 70 % instead', (b: OrderBook) => ({ ...b, certainty: 0.7 })]] as const)
      : []),
  ];
}
/** Tried when no single change helps. */
const jointSteps = (book: OrderBook, short: ReadonlySet<string>): (readonly [string, Change])[] => {
  const kilograms = meanWeight(book).toFixed(1);
  const litres = writtenNumber(largestOf(book));
  const [females, vats] = [`three more females of ${kilograms} kg`, `two more vats of ${litres} L`];
  return [
    [`${females} and three more unrelated males`, all(moreFemales(3), moreMales(3))],
    [`${vats}, ${females} and three more unrelated males`, all(moreVats(2), moreFemales(3), moreMales(3))],
    ['the short orders a month later', later(short, 30)],
    [
      `the short orders a month later, ${vats}, ${females} and three more unrelated males`,
      all(later(short, 30), moreVats(2), moreFemales(3), moreMales(3)),
    ],
    [
      'water and days at which fish can be stripped: water of 27 °C all year, any day at any hour',
      all(anyHour, (b) => ({ ...b, temperatures: b.temperatures.map(() => 27) })),
    ],
  ];
};

const LIMITS = [
  ['vats', 'water in vats'],
  ['females', 'rested females'],
  ['males', 'unrelated males'],
  ['hands', 'hands on the day of stripping'],
] as const;
/** Less than this share more is chance of searching, not the limit. */
const NOTICED = 0.002;

const fishOf = (schedule: BatchSchedule): number =>
  schedule.problem.tasks.reduce((sum, { wanted }, t) => sum + wanted - (schedule.need[t] ?? 0), 0);

/** Fish that orders still lack. */
const lackOf = (problem: BatchProblem): number => problem.tasks.reduce((sum, { wanted }) => sum + wanted, 0);

/** What binds, and what each change would bring. Yields the share done. */
export function* shortSteps(
  book: OrderBook,
  found: BatchSchedule,
  effort: BatchEffort,
): Generator<number, SeasonShort> {
  const { problem } = found;
  const less: BatchEffort = {
    ...effort,
    looks: effort.looks / 10,
    mostTries: Math.ceil(effort.mostTries / 10),
    sequences: 2,
  };
  const whole = problem.tasks.reduce((sum, t) => sum + t.value * t.wanted, 0);
  const short = new Set(problem.tasks.filter((_, t) => !isMetTask(found, t)).map(({ order }) => order.name));
  const singles = singleSteps(book, short);
  const joint = jointSteps(book, short);
  const total = 1 + LIMITS.length + singles.length + joint.length;
  let done = 0;
  function* again(what: BatchProblem): Generator<number, BatchSchedule> {
    const schedule = yield* within(searchSteps(what, less), done / total, 1 / total);
    done++;
    return schedule;
  }
  // Compared with what the same small effort finds as things stand.
  const now = yield* again(problem);
  const [worth, fish] = [worthOf(now), fishOf(now)];
  const freed: { readonly words: string; readonly gain: number }[] = [];
  for (const [without, words] of LIMITS)
    freed.push({ words, gain: worthOf(yield* again({ ...problem, without })) - worth });
  const noDay = problem.tasks.filter((t) => short.has(t.order.name) && t.candidates.length === 0).length;
  const tried: (TriedChange & Step & { readonly worth: number })[] = [];
  function* tryAll(list: readonly (readonly [string, Change])[]): Generator<number, void> {
    for (const [what, change] of list) {
      const changed = change(book);
      const next = yield* again(batchProblemOf(changed).problem);
      tried.push({
        what,
        book: changed,
        gain: Math.round(fishOf(next) - fish),
        worth: worthOf(next) - worth,
      });
    }
  }
  const helps = (): TriedChange[] =>
    tried
      .filter(({ gain, worth: more }) => gain >= Math.min(1, lackOf(problem)) && more > NOTICED * whole)
      .sort((a, b) => b.worth - a.worth)
      .map(({ what, gain }) => ({ what, gain }));
  yield* tryAll(singles);
  if (helps().length === 0) yield* tryAll(joint);
  const binding = [...freed]
    .filter(({ gain }) => gain > NOTICED * whole)
    .sort((a, b) => b.gain - a.gain)[0]?.words;
  return {
    binding:
      noDay > 0 && noDay >= short.size
        ? 'days on which a batch can be stripped'
        : (binding ?? 'several things at once'),
    changes: helps(),
    tried: tried.map(({ what }) => what),
  };
}

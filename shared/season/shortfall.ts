import type { OrderBook } from './orderBook';
import type { Problem } from './problem';
import { problemOf } from './problem';
import type { Change, Shortfall } from './result';
import type { Effort } from './solve';
import { deliveredOf, solveSteps, worthOf } from './solve';
import { within } from '../base/steps';
import type { Schedule } from './place';

/** A change one could make, and the order book after it. */
interface Step {
  readonly what: string;
  readonly book: OrderBook;
}

const unusedName = (wish: string, names: readonly string[]): string => {
  const taken = new Set(names.map((n) => n.toLowerCase()));
  let name = wish;
  for (let i = 2; taken.has(name.toLowerCase()); i++) name = `${wish} ${i}`;
  return name;
};
const FEWEST = 1;

/** Changes a hatchery can make one at a time. Resting fish less is not among them. */
function stepsFrom(book: OrderBook, short: ReadonlySet<string>): Step[] {
  const weight =
    book.females.reduce((sum, f) => sum + f.kilograms, 0) / Math.max(FEWEST, book.females.length) || 1;
  const largest = Math.max(0, ...book.vats.map((v) => v.litres));
  const { staff } = book;
  const isHeld =
    staff.weekdays.length < 7 || staff.daysOff.length > 0 || staff.stripTo - staff.stripFrom < 24;
  const another = (list: readonly { readonly tag: string }[], word: string): string =>
    unusedName(
      word,
      list.map(({ tag }) => tag),
    );
  const males = [another(book.males, 'another male'), another(book.males, 'one more male')];
  return [
    {
      what: `one more female of ${weight.toFixed(1)} kg`,
      book: {
        ...book,
        females: [...book.females, { tag: another(book.females, 'another female'), kilograms: weight }],
      },
    },
    {
      what: 'two more unrelated males',
      book: { ...book, males: [...book.males, ...males.map((tag) => ({ tag }))] },
    },
    {
      what: `one more vat of ${largest.toLocaleString('en')} L`,
      book: {
        ...book,
        vats: [
          ...book.vats,
          {
            name: unusedName(
              'another vat',
              book.vats.map(({ name }) => name),
            ),
            litres: largest,
            holds: ['eggs', 'fry', 'nursing'],
          },
        ],
      },
    },
    ...(book.cleaningDays > 0
      ? [{ what: 'a day less for cleaning a vat', book: { ...book, cleaningDays: book.cleaningDays - 1 } }]
      : []),
    {
      what: `hands for ${2 * staff.femalesPerDay} females a day`,
      book: { ...book, staff: { ...staff, femalesPerDay: 2 * staff.femalesPerDay } },
    },
    ...(isHeld
      ? [
          {
            what: 'stripping on any day at any hour',
            book: {
              ...book,
              staff: {
                ...staff,
                weekdays: [1, 2, 3, 4, 5, 6, 7],
                daysOff: [],
                stripFrom: 0,
                stripTo: 24,
                injectFrom: 0,
                injectTo: 24,
              },
            },
          },
        ]
      : []),
    {
      what: 'the short orders a week later',
      book: { ...book, orders: book.orders.map((o) => (short.has(o.name) ? { ...o, due: o.due + 7 } : o)) },
    },
    {
      what: 'goods delivered a week sooner',
      book: {
        ...book,
        leadDays: {
          hormone: Math.max(0, book.leadDays.hormone - 7),
          cysts: Math.max(0, book.leadDays.cysts - 7),
          feed: Math.max(0, book.leadDays.feed - 7),
        },
      },
    },
  ];
}

const LIMITS = [
  ['vats', 'water in vats'],
  ['females', 'rested females'],
  ['males', 'unrelated males'],
  ['hands', 'hands on the day of stripping'],
] as const;
/** Less than this share more is chance of searching, not the limit. */
const NOTICED = 0.002;

const fishOf = (fish: readonly number[]): number => fish.reduce((sum, n) => sum + n, 0);

/** What binds, and what each single change would bring. Yields the share done. */
export function* shortfallSteps(
  book: OrderBook,
  problem: Problem,
  delivered: readonly number[],
  effort: Effort,
): Generator<number, Shortfall> {
  const less: Effort = { ...effort, work: effort.work / 8, mostTries: Math.ceil(effort.mostTries / 8) };
  const whole = problem.tasks.reduce((sum, t) => sum + t.value * t.wanted, 0);
  const short = new Set(
    problem.tasks.filter((t, i) => (delivered[i] ?? 0) < t.wanted * (1 - 1e-5)).map((t) => t.order.name),
  );
  const steps = stepsFrom(book, short);
  let done = 0;
  function* again(what: Problem): Generator<number, Schedule> {
    const schedule = yield* within(solveSteps(what, less), done, 1 / (1 + LIMITS.length + steps.length));
    done += 1 / (1 + LIMITS.length + steps.length);
    return schedule;
  }
  // Compared with what the same small effort finds as things stand, so that searching less is not taken for a
  // loss.
  const now = yield* again(problem);
  const [worth, fishNow] = [worthOf(now), fishOf(deliveredOf(now))];
  const freed: { readonly words: string; readonly gain: number }[] = [];
  for (const [without, words] of LIMITS)
    freed.push({ words, gain: worthOf(yield* again({ ...problem, without })) - worth });
  const noDay = problem.tasks.filter((t) => short.has(t.order.name) && t.candidates.length === 0).length;
  const changes: (Change & { readonly worth: number })[] = [];
  for (const { what, book: changed } of steps) {
    const next = yield* again(problemOf(changed).problem);
    const gain = fishOf(deliveredOf(next)) - fishNow;
    changes.push({ what, fish: fishOf(delivered) + gain, gain, worth: worthOf(next) - worth });
  }
  const binding = freed
    .filter(({ gain }) => gain > NOTICED * whole)
    .sort((a, b) => b.gain - a.gain)[0]?.words;
  return {
    binding: noDay > 0 && noDay >= short.size ? 'days on which a run can be stripped' : binding,
    changes: changes
      .filter(({ worth: more, gain }) => more > NOTICED * whole && gain >= FEWEST)
      .sort((a, b) => b.worth - a.worth)
      .map(({ what, fish, gain }) => ({ what, fish, gain })),
  };
}

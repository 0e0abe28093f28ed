import { isoDateOfSerial } from '../units/dates';
import { formatNumber } from '../sheet/formula/textFormat';
import type { OrderBook } from './orderBook';
import type { Problem, Task } from './problem';
import type { PlannedOrder, PlannedRun, SeasonFinding, SeasonMoney, Shortfall } from './result';

const many = (n: number): string => Math.floor(n + 1e-6).toLocaleString('en');
const WHY: Readonly<Record<string, string>> = {
  'day off': 'nobody strips on those days',
  'no temperature': 'the water of the month is not known',
  temperature: 'the water is outside what was published for African catfish',
  hours: 'strip and injection cannot both fall into the allowed hours',
  'lead time': 'goods ordered today come too late, or the day lies in the past',
};

function noDays({ order, refused }: Task): string {
  const why = Object.entries(refused)
    .sort((a, b) => b[1] - a[1])
    .map(([key]) => WHY[key] ?? key);
  return `${order.name}: there is no day to strip for ${isoDateOfSerial(order.due)}: ${why.length > 0 ? why.join('; ') : 'no day leaves the fish enough time'}.`;
}

function shortOrders(problem: Problem, orders: readonly PlannedOrder[]): SeasonFinding[] {
  return problem.tasks.flatMap((task, t): SeasonFinding[] => {
    const expected = orders[t]?.expected ?? 0;
    if (expected >= task.underway + task.wanted * (1 - 1e-5)) return [];
    if (task.candidates.length === 0)
      return [{ kind: 'cannot', about: task.order.name, message: noDays(task) }];
    const isOnlySpare = expected >= task.order.number * (1 - 1e-5);
    return [
      {
        kind: isOnlySpare ? 'care' : 'cannot',
        about: task.order.name,
        message: isOnlySpare
          ? `${task.order.name}: ${many(expected)} fish are planned; the whole spare does not fit.`
          : `${task.order.name}: ${many(expected)} of ${many(task.order.number)} ${task.order.product} can be had by ${isoDateOfSerial(task.order.due)}.`,
      },
    ];
  });
}

function whatHelps(shortfall: Shortfall | undefined): SeasonFinding[] {
  if (!shortfall) return [];
  const { binding, changes } = shortfall;
  const [first, second] = changes;
  return [
    {
      kind: 'cannot',
      about: 'season',
      message: binding
        ? `What binds is ${binding}: with more of that the season would deliver more.`
        : 'No single thing binds: several are short at once.',
    },
    {
      kind: 'cannot',
      about: 'season',
      message: first
        ? `What helps most: ${first.what}, ${many(first.gain)} more fish${second ? `; next ${second.what}, ${many(second.gain)} more` : ''}.`
        : 'No single change that was tried helps: promise less, or change several things together.',
    },
  ];
}

/** Below this certainty an order is worth a sentence, and this many sentences are read. */
const UNSURE = 0.8;
const MOST_SENTENCES = 5;
function odds(orders: readonly PlannedOrder[]): SeasonFinding[] {
  const unsure = orders
    .flatMap((o) => (o.odds && o.expected > 0 && o.odds.certainty < UNSURE ? [{ ...o, odds: o.odds }] : []))
    .sort((a, b) => a.odds.certainty - b.odds.certainty);
  const said = unsure
    .slice(0, MOST_SENTENCES)
    .map(({ order, odds: range, femalesForNinety }): SeasonFinding => {
      const poor = range.p10 < 1 ? 'nothing' : `fewer than ${many(range.p10)}`;
      const more =
        femalesForNinety !== undefined && Number.isFinite(femalesForNinety)
          ? ` Nine in ten would take ${femalesForNinety} females, and vats for what they bring.`
          : '';
      return {
        kind: 'care',
        about: order.name,
        message: `${order.name}: is met in ${formatNumber(range.certainty, '0%')} of seasons; one in ten brings ${poor}.${more}`,
      };
    });
  const rest = unsure.length - said.length;
  return rest > 0
    ? [
        ...said,
        {
          kind: 'care',
          about: 'orders',
          message: `${rest} more orders are met in fewer than ${formatNumber(UNSURE, '0%')} of seasons; their odds stand beside them.`,
        },
      ]
    : said;
}

function parents(book: OrderBook, orders: readonly PlannedOrder[]): SeasonFinding[] {
  return orders
    .filter(({ order, parents: n }) => order.forBreeding && n < book.leastParents)
    .map(({ order, parents: n }): SeasonFinding => ({
      kind: 'cannot',
      about: order.name,
      message: `Too few parents for future brood fish, ${order.name}: they count as ${formatNumber(n, '0.0')} where ${book.leastParents} are wanted. Spread the order over more runs with other parents.`,
    }));
}

/** A pair of one family is never planned; what is said is that some could not be paired. */
const kinship = (book: OrderBook): SeasonFinding[] => {
  const unknown = book.females.filter((f) => !f.family).length + book.males.filter((m) => !m.family).length;
  return unknown > 0 && unknown < book.females.length + book.males.length
    ? [
        {
          kind: 'care',
          about: 'females',
          message: `${unknown} brood fish have no family written down: whether they pair with a relative cannot be seen.`,
        },
      ]
    : [];
};

function moneyFindings(book: OrderBook, money: SeasonMoney): SeasonFinding[] {
  return [
    ...(money.leastBalance < 0
      ? [
          {
            kind: 'care',
            about: 'cash',
            message: `Money runs out: ${many(-money.leastBalance)} must be found before the first sale covers it.`,
          } as const,
        ]
      : []),
    ...(money.sales > 0 && money.profit < 0
      ? [
          {
            kind: 'care',
            about: 'money',
            message: `The season loses ${many(-money.profit)}: a fish costs ${formatNumber(money.costPerFish, '0.000')}, and sells for ${formatNumber(money.costPerFish + (money.profit * money.costPerFish) / money.cost, '0.000')} on average.`,
          } as const,
        ]
      : []),
    ...(book.orders.some(({ price }) => price === undefined)
      ? [
          {
            kind: 'care',
            about: 'orders',
            message: 'Some orders have no price: their sales count as nothing.',
          } as const,
        ]
      : []),
  ];
}

const nights = (runs: readonly PlannedRun[]): SeasonFinding[] => {
  const count = runs.filter(({ injectAt }) => injectAt % 1 < 6 / 24 || injectAt % 1 >= 22 / 24).length;
  return count > 0
    ? [
        {
          kind: 'care',
          about: 'staff',
          message: `${count} of ${runs.length} injections fall between 22:00 and 6:00.`,
        },
      ]
    : [];
};

export const seasonFindings = (
  book: OrderBook,
  problem: Problem,
  impossible: readonly string[],
  orders: readonly PlannedOrder[],
  runs: readonly PlannedRun[],
  money: SeasonMoney,
  shortfall: Shortfall | undefined,
): SeasonFinding[] => [
  ...impossible.map((message): SeasonFinding => ({ kind: 'cannot', about: 'orders', message })),
  ...shortOrders(
    problem,
    orders.filter(({ product }) => product !== undefined),
  ),
  ...whatHelps(shortfall),
  ...parents(book, orders),
  ...odds(orders),
  ...moneyFindings(book, money),
  ...nights(runs),
  ...kinship(book),
];

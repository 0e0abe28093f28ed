import { isoDateOfSerial } from '../../units/dates';
import type { BookedOrder, OrderBook } from '../orderBook';
import type { Task } from '../problem';
import type { OrderPlan, PlanFinding, SeasonShort } from '../types';
import type { BatchProblem } from './problem';

/** What is said of a plan, in sentences, after everything is decided. */

const many = (n: number): string => Math.floor(n + 1e-6).toLocaleString('en');
const WHY: Readonly<Record<string, string>> = {
  'day off': 'nobody strips on those days',
  'no temperature': 'the water of the month is not known',
  temperature: 'the water is outside what was published for African catfish',
  hours: 'strip and injection cannot both fall into the allowed hours',
  'lead time': 'goods ordered today come too late, or the day lies in the past',
};

/** Why nothing can be planned for an order; undefined when days there are. */
export function whyNot(
  book: OrderBook,
  order: BookedOrder,
  task: Task | undefined,
  impossible: readonly string[],
): string | undefined {
  if (order.cancelled) return 'cancelled';
  if (order.due < book.plannedOn) return 'its day is past';
  if (!task) return impossible.find((sentence) => sentence.startsWith(`${order.name}:`));
  if (task.candidates.length > 0) return undefined;
  const why = Object.entries(task.refused)
    .sort((a, b) => b[1] - a[1])
    .map(([key]) => WHY[key] ?? key);
  return why.length > 0 ? why.join('; ') : 'no day leaves the fish enough time';
}

function orderSentence(
  book: OrderBook,
  { order, promise, delivered, certainty, why, batches }: OrderPlan,
): PlanFinding | undefined {
  const fish = order.number.toLocaleString('en');
  const due = isoDateOfSerial(order.due);
  if (delivered >= order.number) return undefined;
  if (why !== undefined && batches.length === 0)
    return {
      kind: 'cannot',
      about: order.name,
      message: `${order.name}: there is no day to strip for ${due}: ${why}.`,
    };
  if (batches.length === 0)
    return {
      kind: 'cannot',
      about: order.name,
      message: `${order.name}: none of ${fish} ${order.product} can be promised for ${due}.`,
    };
  if (certainty >= book.certainty - 0.02) return undefined;
  const odds = `${Math.round(certainty * 100)} %`;
  return {
    kind: certainty < 0.4 ? 'cannot' : 'care',
    about: order.name,
    message: `${order.name}: promise ${many(promise)} of ${fish} ${order.product} for ${due}; the whole order comes in ${odds} of seasons.`,
  };
}

function shortSentences(short: SeasonShort | undefined): PlanFinding[] {
  if (!short) return [];
  const [first, second] = short.changes;
  return [
    {
      kind: 'cannot',
      about: 'season',
      message: `What binds is ${short.binding ?? 'several things at once'}.`,
    },
    {
      kind: 'cannot',
      about: 'season',
      message: first
        ? `What helps most: ${first.what}, ${many(first.gain)} more fish${second ? `; next ${second.what}, ${many(second.gain)} more` : ''}.`
        : `None of these helps: ${short.tried.join('; ')}. Promise less, or later.`,
    },
  ];
}

/** This many sentences about orders are read. */
const MOST_SENTENCES = 8;
export function planFindings(
  book: OrderBook,
  problem: BatchProblem,
  impossible: readonly string[],
  orders: readonly OrderPlan[],
  short: SeasonShort | undefined,
): PlanFinding[] {
  const said = orders.flatMap((order) => orderSentence(book, order) ?? []);
  const rest = said.length - MOST_SENTENCES;
  const parents = orders
    .filter(
      ({ order, batches, parents: n }) => order.forBreeding && batches.length > 0 && n < book.leastParents,
    )
    .map(({ order, parents: n }): PlanFinding => ({
      kind: 'care',
      about: order.name,
      message: `${order.name}: Too few parents for future brood fish: they count as ${many(n)}, ${many(book.leastParents)} are wanted.`,
    }));
  return [
    ...impossible.map((message): PlanFinding => ({ kind: 'cannot', about: 'orders', message })),
    ...said.slice(0, MOST_SENTENCES),
    ...(rest > 0
      ? [
          {
            kind: 'care',
            about: 'orders',
            message: `${rest} more orders are less sure than wanted; their odds stand beside them.`,
          } as const,
        ]
      : []),
    ...shortSentences(short),
    ...parents,
    ...(problem.vats.length === 0
      ? [{ kind: 'cannot', about: 'vats', message: 'There are no vats.' } as const]
      : []),
  ];
}

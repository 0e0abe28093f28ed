import { highest, lowest } from '../../../families/timing/kernels/rateCurve';
import { evidenceAt } from '../../../families/timing/kernels/profile';
import { MONTH_NAMES, isoDateOfSerial, monthIndexOf } from '../../../units/dates';
import { stagesFor, temperatureOn } from '../../figures/clock';
import type { BookedOrder, OrderBook } from '../../book/orderBook';
import type { Task } from '../../problem';
import { sameLines } from '../../book/orderNames';
import type { OrderPlan, PlanFinding, SeasonBatch, SeasonShort } from '../../types';
import type { BatchProblem } from '../problem';
import { NEAR_WANTED } from '../chance/unsure';
import { writtenNumber } from '../../../units/writtenNumber';

/** What is said of a plan, in sentences, after everything is decided. */

const many = (n: number): string => writtenNumber(Math.floor(n + 1e-6));
const WHY: Readonly<Record<string, string>> = {
  'day off': 'nobody strips on those days',
  'no temperature': 'the water of the month is not known',
  hours: 'strip and injection cannot both fall into the allowed hours',
  'lead time': 'goods ordered today come too late, or the day lies in the past',
};

const WAY_OUT =
  'Shade the vats, bring in cooler or warmer water, strip at night, or type the water you can hold';
/** Days from the strip to the first food, near enough to name a month. */
const DAYS_TO_FOOD = 4;
/** Water outside all evidence: the month, what is expected, the limits and what to do. */
function waterSentence(book: OrderBook, order: BookedOrder, task: Task): string {
  const { rearingDays, nurseryDays } = task.product;
  const day = order.due - rearingDays - nurseryDays - DAYS_TO_FOOD;
  const water = temperatureOn(book.temperatures, day + 0.5);
  const curves = Object.values(stagesFor(book.preparation)).flatMap((profile) => profile?.curve ?? []);
  const [low, high] = [Math.max(...curves.map(lowest)), Math.min(...curves.map(highest))];
  return `the water expected in ${MONTH_NAMES[monthIndexOf(day)] ?? 'that month'} is ${water.toFixed(1)} °C, and hours are published for ${low} to ${high} °C only, with ${book.preparation}. ${WAY_OUT}`;
}

/** Why nothing can be planned for an order; undefined when days there are. */
export function whyNot(
  book: OrderBook,
  order: BookedOrder,
  task: Task | undefined,
  impossible: readonly string[],
): string | undefined {
  if (order.cancelled) return 'cancelled';
  if (order.due < book.plannedOn) return 'its day is past';
  const about = `${order.name}: `;
  if (!task) return impossible.find((sentence) => sentence.startsWith(about))?.slice(about.length);
  if (task.candidates.length > 0) return undefined;
  const why = Object.entries(task.refused)
    .sort((a, b) => b[1] - a[1])
    .map(([key]) => (key === 'temperature' ? waterSentence(book, order, task) : (WHY[key] ?? key)));
  return why.length > 0 ? why.join('; ') : 'no day leaves the fish enough time';
}

function orderSentence(
  book: OrderBook,
  { order, promise, delivered, certainty, why, batches }: OrderPlan,
): PlanFinding | undefined {
  const fish = writtenNumber(order.number);
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
  if (certainty >= book.certainty - NEAR_WANTED) return undefined;
  const odds = `${Math.round(certainty * 100)} %`;
  return {
    kind: certainty < 0.4 ? 'cannot' : 'care',
    about: order.name,
    message: `${order.name}: promise ${many(promise)} of ${fish} ${order.product} for ${due}; the whole order comes in ${odds} of seasons.`,
  };
}

/** So many lines that say the same are named one by one. */
const MOST_SAME = 3;
/** An order that stands twice, word for word, may have been typed twice; two orders of one buyer are usual. */
function sameSentences({ orders: all, plannedOn }: OrderBook): PlanFinding[] {
  const orders = all.filter(({ due }) => due >= plannedOn);
  const same = [...sameLines(orders)].flatMap(([place, first]): PlanFinding[] => {
    const [order, other] = [orders[place], orders[first]];
    return order && other
      ? [
          {
            kind: 'care',
            about: order.name,
            message: `${order.name}: says the same as ${other.key ?? other.name}, ${writtenNumber(order.number)} ${order.product} for ${isoDateOfSerial(order.due)}. If it was typed twice, cancel one.`,
          },
        ]
      : [];
  });
  const rest = same.length - MOST_SAME;
  return rest <= 0
    ? same
    : [
        ...same.slice(0, MOST_SAME),
        {
          kind: 'care',
          about: 'orders',
          message: `${rest} more ${rest === 1 ? 'order says' : 'orders say'} the same as another. If they were typed twice, cancel one of each.`,
        },
      ];
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
            message: `${rest} more ${rest === 1 ? 'order is less sure than wanted; its odds stand beside it' : 'orders are less sure than wanted; their odds stand beside them'}.`,
          } as const,
        ]
      : []),
    ...sameSentences(book),
    ...shortSentences(short),
    ...parents,
    ...(problem.vats.length === 0
      ? [{ kind: 'cannot', about: 'vats', message: 'There are no vats.' } as const]
      : []),
  ];
}

/** Batches in water where hours are carried from trials at other temperatures. */
export function thinWater(book: OrderBook, batches: readonly SeasonBatch[]): PlanFinding[] {
  const { latency } = stagesFor(book.preparation);
  const thin = batches.filter(
    ({ state, temperature }) =>
      state === 'planned' &&
      latency !== undefined &&
      // As it is said: 25.96 is 26.0, where trials were.
      evidenceAt(latency, Number(temperature.toFixed(1))) === 'thin',
  );
  const [first] = thin;
  if (!first || !latency) return [];
  const names = thin.map(({ name }) => name).join(', ');
  return [
    {
      kind: 'care',
      about: 'water',
      message: `${names}: at ${first.temperature.toFixed(1)} °C no trial with ${book.preparation} was read (tried from ${latency.tested[0]} to ${latency.tested[1]} °C); the hours are carried there. Look earlier and more often, and write your own hours down.`,
    },
  ];
}

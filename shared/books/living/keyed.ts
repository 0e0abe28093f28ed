import type { OrderBook } from '../../season/book/orderBook';
import { highestKey, keyOf, withOrderKeys } from '../../season/book/orderKeys';
import { buyerOf } from '../../season/book/orderNames';
import type { PlanFinding, SeasonBatch } from '../../season/types';
import { BOOK_LANGUAGES } from '../words';
import { keptBeginnings } from '../words/words';
import type { BookPlan } from './layout';
import type { TypedActuals, TypedLine } from './reading/typed';

/**
 * In a book every sheet names an order by its key; the buyer's name stands in one column of Orders. Plans name
 * orders by buyers: here is the way from one to the other and back.
 */

type Rename = (order: string) => string;
const inEvents = (events: SeasonBatch['events'], rename: Rename): SeasonBatch['events'] =>
  events.map((event) => (event.order === undefined ? event : { ...event, order: rename(event.order) }));

/** Sentences about an order begin with it. */
function inFinding(finding: PlanFinding, names: ReadonlyMap<string, string>): PlanFinding {
  const { message } = finding;
  const about = [...names.keys()]
    .filter((name) => message.startsWith(name) && /^(:|,| is )/.test(message.slice(name.length)))
    .reduce((longest, name) => (name.length > longest.length ? name : longest), '');
  return about === ''
    ? finding
    : {
        ...finding,
        about: names.get(finding.about) ?? finding.about,
        message: `${names.get(about) ?? about}${message.slice(about.length)}`,
      };
}

/** A plan with its orders under other names. */
export function planUnder(plan: BookPlan, names: ReadonlyMap<string, string>): BookPlan {
  const rename: Rename = (order) => names.get(order) ?? order;
  return {
    ...plan,
    batches: plan.batches.map((batch) =>
      batch.events.length === 0 ? batch : { ...batch, events: inEvents(batch.events, rename) },
    ),
    orders: plan.orders.map((one) => ({ ...one, order: { ...one.order, name: rename(one.order.name) } })),
    allocations: plan.allocations.map((share) => ({ ...share, order: rename(share.order) })),
    findings: plan.findings.map((finding) => inFinding(finding, names)),
  };
}

function bookUnder(book: OrderBook, names: ReadonlyMap<string, string>): OrderBook {
  const rename: Rename = (order) => names.get(order) ?? order;
  return {
    ...book,
    orders: book.orders.map((order) => ({ ...order, name: rename(order.name) })),
    batches: book.batches.map((batch) => ({ ...batch, events: [...inEvents(batch.events, rename)] })),
    booked: book.booked.map((entry) =>
      entry.order === undefined ? entry : { ...entry, order: rename(entry.order) },
    ),
  };
}

export interface Keyed {
  /** Both name orders by their keys. */
  readonly book: OrderBook;
  readonly plan: BookPlan;
  /** The name of the buyer by key. */
  readonly buyers: ReadonlyMap<string, string>;
  /** The key by the name plans know an order by. */
  readonly keys: ReadonlyMap<string, string>;
}
export function keyed(book: OrderBook, plan: BookPlan): Keyed {
  const own = withOrderKeys(book);
  const names = new Map(own.orders.map((order) => [order.name, keyOf(order)]));
  return {
    book: bookUnder(own, names),
    plan: planUnder(plan, names),
    buyers: new Map(own.orders.map((order) => [keyOf(order), buyerOf(order)])),
    keys: names,
  };
}

const KEPT = keptBeginnings(Object.values(BOOK_LANGUAGES));
/** What was typed before, kept in a remark: which order it was for stands between commas at its beginning. */
function noteUnder(note: string, names: ReadonlyMap<string, string>): string {
  if (!KEPT.some((beginning) => note.startsWith(beginning))) return note;
  for (const [name, key] of names)
    if (note.includes(`, ${name}, `)) return note.replace(`, ${name}, `, `, ${key}, `);
  return note;
}
const lineUnder = (line: TypedLine, names: ReadonlyMap<string, string>): TypedLine => ({
  ...line,
  ...(typeof line.order === 'string' ? { order: names.get(line.order.trim()) ?? line.order } : {}),
  ...(typeof line.note === 'string' ? { note: noteUnder(line.note, names) } : {}),
});

/** What was typed, with the keys of orders where somebody wrote the name of a buyer; `names`: name to key. */
export function typedUnder(typed: TypedActuals, names: ReadonlyMap<string, string>): TypedActuals {
  const lines = (list: readonly TypedLine[]): TypedLine[] => list.map((line) => lineUnder(line, names));
  return { ...typed, calendar: lines(typed.calendar), log: lines(typed.log) };
}

/** Names of buyers that mean one order: not the key of another, and not of a buyer who comes twice. */
export function namesToKeys(buyers: ReadonlyMap<string, string>): ReadonlyMap<string, string> {
  const times = new Map<string, number>();
  for (const name of buyers.values()) times.set(name, (times.get(name) ?? 0) + 1);
  return new Map(
    [...buyers].flatMap(([key, name]) =>
      buyers.has(name) || times.get(name) !== 1 ? [] : [[name, key] as const],
    ),
  );
}

/** The first number no order of a book, and nothing typed in it, was ever tied to. */
export const freeNumber = (book: OrderBook, typed: TypedActuals | undefined): number =>
  1 +
  highestKey([
    ...book.orders.map(({ name }) => name),
    ...book.batches.flatMap(({ events }) => events.map(({ order }) => order)),
    ...book.booked.map(({ order }) => order),
    ...(typed ? [...typed.log, ...typed.calendar].flatMap(({ order, note }) => [order, note]) : []),
  ]);

/** The text of a task of an order, with the buyer beside the key. */
export const withBuyer = (text: string, key: string, buyer: string): string =>
  key !== '' && buyer !== '' && buyer !== key && text.startsWith(`${key}:`)
    ? `${key} ${buyer}${text.slice(key.length)}`
    : text;

import type { OrderBook } from './orderBook';

/**
 * A buyer may come twice, and a plan must tell his orders apart: it knows an order by the name of the buyer, and
 * where two orders have one buyer, by key and buyer ("O4 Hill ponds").
 */

export interface NamedOrder {
  readonly key?: string | undefined;
  readonly name: string;
  readonly buyer?: string | undefined;
}

export const buyerOf = ({ buyer, name }: NamedOrder): string => buyer ?? name;
const lower = (text: string): string => text.trim().toLowerCase();

function countOf(texts: readonly string[]): ReadonlyMap<string, number> {
  const count = new Map<string, number>();
  for (const text of texts) count.set(lower(text), (count.get(lower(text)) ?? 0) + 1);
  return count;
}

/** What plans call the orders, in the order of the lines; no two alike where each has a key of its own. */
export function planNames(orders: readonly NamedOrder[]): readonly string[] {
  const buyers = countOf(orders.map(buyerOf));
  const names = orders.map((order) => {
    const buyer = buyerOf(order);
    return buyers.get(lower(buyer)) === 1 || order.key === undefined || order.key === buyer
      ? buyer
      : `${order.key} ${buyer}`;
  });
  // Somebody is called as another order would be: "O4 Hill ponds".
  const said = countOf(names);
  return names.map((name, i) => (said.get(lower(name)) === 1 ? name : (orders[i]?.key ?? name)));
}

export type Meant =
  | { readonly kind: 'one'; readonly place: number }
  | { readonly kind: 'several'; readonly places: readonly number[] };

/** The order a text means: what plans call it, a key, or a buyer; undefined where none is meant. */
export function meaningIn(orders: readonly NamedOrder[]): (text: string) => Meant | undefined {
  const places = new Map<string, number>();
  const add = (text: string | undefined, place: number): void => {
    if (text !== undefined && !places.has(lower(text))) places.set(lower(text), place);
  };
  planNames(orders).forEach(add);
  const several = new Map<string, number[]>();
  orders.forEach((order, i) => {
    const list = several.get(lower(buyerOf(order))) ?? [];
    several.set(lower(buyerOf(order)), list);
    list.push(i);
  });
  // A buyer's own name goes before a key that is spelled like it.
  orders.forEach(({ key }, i) => {
    if (key !== undefined && !several.has(lower(key))) add(key, i);
  });
  return (text) => {
    const place = places.get(lower(text));
    if (place !== undefined) return { kind: 'one', place };
    const found = several.get(lower(text));
    return found && { kind: 'several', places: found };
  };
}

/** A text for each order that an order book takes to mean it, whatever orders come beside it later. */
export function lastingNames(orders: readonly NamedOrder[]): readonly string[] {
  const buyers = countOf(orders.map(buyerOf));
  const names = planNames(orders);
  return orders.map(({ key }, i) => (key === undefined || buyers.has(lower(key)) ? (names[i] ?? '') : key));
}

type Orders = Pick<OrderBook, 'orders' | 'batches' | 'booked'>;

/** The book with its orders as plans call them, and what was sold and booked under those names. */
export function withPlanNames<B extends Orders>(book: B): B {
  const { orders } = book;
  const names = planNames(orders);
  const meaning = meaningIn(orders);
  const named = (text: string): string => {
    const meant = meaning(text);
    return meant?.kind === 'one' ? (names[meant.place] ?? text) : text;
  };
  return {
    ...book,
    orders: orders.map((given, i) => {
      const name = names[i] ?? given.name;
      const { buyer = given.name, ...order } = given;
      return name === buyer ? { ...order, name } : { ...order, name, buyer };
    }),
    batches: book.batches.map((batch) =>
      batch.events.some(({ order }) => order !== undefined)
        ? {
            ...batch,
            events: batch.events.map((event) =>
              event.order === undefined ? event : { ...event, order: named(event.order) },
            ),
          }
        : batch,
    ),
    booked: book.booked.map((entry) =>
      entry.order === undefined ? entry : { ...entry, order: named(entry.order) },
    ),
  };
}

/** What was sold or booked under the name of a buyer with two orders: which of them is not told. */
export function openNames(
  book: Orders,
): readonly { readonly path: (string | number)[]; readonly message: string }[] {
  const meaning = meaningIn(book.orders);
  const open = (text: string | undefined, path: (string | number)[]) => {
    const meant = text === undefined ? undefined : meaning(text);
    if (text === undefined || meant?.kind !== 'several') return [];
    const keys = meant.places.map((i) => book.orders[i]?.key ?? '').join(', ');
    return [{ path, message: severalSentence(text, keys) }];
  };
  return [
    ...book.batches.flatMap(({ events }, b) =>
      events.flatMap(({ order }, e) => open(order, ['batches', b, 'events', e, 'order'])),
    ),
    ...book.booked.flatMap(({ order }, i) => open(order, ['booked', i, 'order'])),
  ];
}
export const severalSentence = (buyer: string, keys: string): string =>
  `${buyer}: has more than one order (${keys}). Write the key of the one that is meant.`;

/** Lines that say the same as one before them: buyer, product, number and day. Each with the place of that one. */
export function sameLines(
  orders: readonly (NamedOrder & {
    readonly product: string;
    readonly number: number | string;
    readonly due: number | string;
    readonly cancelled?: boolean | undefined;
  })[],
): ReadonlyMap<number, number> {
  const seen = new Map<string, number>();
  const same = new Map<number, number>();
  orders.forEach((order, i) => {
    if (order.cancelled === true || lower(buyerOf(order)) === '') return;
    const word = [lower(buyerOf(order)), order.product, order.number, order.due].join('|');
    const first = seen.get(word);
    if (first === undefined) seen.set(word, i);
    else same.set(i, first);
  });
  return same;
}

import type { BookedOrder, OrderBook } from './orderBook';

/**
 * Every order has a neutral key (O1, O2 …) beside the name of its buyer: sheets name orders by it, so that
 * names can be left out of a copy. A key stays with its order; a number that was ever used is not given again.
 */

const NUMBERED = /\bO(\d{1,6})\b/g;

/** The highest number of a key in texts, 0 where there is none. */
export const highestKey = (texts: Iterable<unknown>): number => {
  let most = 0;
  for (const text of texts)
    if (typeof text === 'string')
      for (const [, digits] of text.matchAll(NUMBERED)) most = Math.max(most, Number(digits));
  return most;
};

export const isOrderKey = (text: string): boolean => /^O\d{1,6}$/.test(text);
export const keyNumbered = (n: number): string => `O${n}`;
/** The key of an order, or its name where none was given yet. */
export const keyOf = ({ key, name }: Pick<BookedOrder, 'key' | 'name'>): string => key ?? name;
/** "O3 Hill ponds": key and buyer side by side. */
export const calledOf = ({ key, name }: Pick<BookedOrder, 'key' | 'name'>): string =>
  key === undefined || key === name || name.startsWith(`${key} `) ? name : `${key} ${name}`;

/** Keys that things of a book were tied to. */
const mentioned = ({ orders, batches, booked }: Pick<OrderBook, 'orders' | 'batches' | 'booked'>): number =>
  highestKey([
    ...orders.map(({ key }) => key),
    ...batches.flatMap(({ events }) => events.map(({ order }) => order)),
    ...booked.map(({ order }) => order),
  ]);

/** The book with a key for every order: those that have none get the next numbers, in the order of the lines. */
export function withOrderKeys<B extends Pick<OrderBook, 'orders' | 'batches' | 'booked'>>(book: B): B {
  if (book.orders.every(({ key }) => key !== undefined)) return book;
  let last = mentioned(book);
  return {
    ...book,
    orders: book.orders.map((order) =>
      order.key === undefined ? { ...order, key: keyNumbered(++last) } : order,
    ),
  };
}

import { rngOf } from '../../shared/maths/rng';
import type { OrderBook } from '../../shared/season';
import { isoDateOfSerial, serialOfIsoDate } from '../../shared/units/dates';
import { bookOf } from './support';

/** Invented hatcheries with many small orders, about sixty each. */

const START = serialOfIsoDate('2027-01-10') ?? NaN;
export function hatcheryOf(seed: number, changes: object = {}): OrderBook {
  const chance = rngOf(1000 + seed);
  const between = (low: number, high: number): number => Math.floor(low + (high - low + 1) * chance.even());
  const lines = between(3, 6);
  const females = between(12, 30);
  return bookOf({
    orders: Array.from({ length: between(56, 63) }, (_, i) => ({
      name: `order ${i + 1}`,
      product: chance.even() < 0.45 ? 'fry' : 'fingerlings',
      number: 100 * between(5, 60),
      due: isoDateOfSerial(START + 60 + between(0, 200)),
      price: 0.1,
    })),
    vats: Array.from({ length: between(8, 12) }, (_, i) => ({
      name: `Vat ${i + 1}`,
      litres: 100 * between(4, 15),
    })),
    females: Array.from({ length: females }, (_, i) => ({
      tag: `F${i + 1}`,
      kilograms: 0.1 * between(8, 20),
      family: `line ${1 + (i % lines)}`,
    })),
    males: Array.from({ length: between(10, 24) }, (_, i) => ({
      tag: `M${i + 1}`,
      family: `line ${1 + (i % lines)}`,
    })),
    ...changes,
  });
}

/**
 * Small orders brought together by hand: orders of one product due within three days of the first become one
 * order due on the first day; its fish may wait that much less.
 */
const TOGETHER = 3;
export function mergedByHand(book: OrderBook): {
  readonly book: OrderBook;
  readonly parts: ReadonlyMap<string, readonly OrderBook['orders'][number][]>;
} {
  const parts = new Map<string, OrderBook['orders'][number][]>();
  for (const product of ['fry', 'fingerlings']) {
    let open: OrderBook['orders'][number][] = [];
    const sorted = book.orders.filter((o) => o.product === product).sort((a, b) => a.due - b.due);
    for (const order of sorted) {
      if (open.length === 0 || order.due > (open[0]?.due ?? 0) + TOGETHER) {
        open = [];
        parts.set(`${product} ${parts.size}`, open);
      }
      open.push(order);
    }
  }
  const orders = [...parts].flatMap(([name, list]) => {
    const [first] = list;
    return first ? [{ ...first, name, number: list.reduce((sum, { number }) => sum + number, 0) }] : [];
  });
  return { parts, book: { ...book, orders, holdDays: book.holdDays - TOGETHER } };
}

import type { BatchOptions } from '../batches';
import { planBatches } from '../batches';
import type { OrderBook } from '../book/orderBook';
import { readOrderBook } from '../book/orderBook';
import type { SeasonPlan } from '../types';

/** A small invented hatchery for cases at the edge of numbers; each case changes what it is about. */

/** 10 January 2026. */
export const TODAY = 46_032;
const SMALL = {
  plannedOn: TODAY,
  orders: [{ name: 'Pond', product: 'fry', number: 10_000, due: TODAY + 68 }],
  vats: [
    { name: 'V1', litres: 1000 },
    { name: 'V2', litres: 500 },
  ],
  females: [
    { tag: 'F1', kilograms: 1 },
    { tag: 'F2', kilograms: 1.2 },
  ],
  males: [{ tag: 'M1' }, { tag: 'M2' }],
  temperatures: Array.from({ length: 12 }, () => 27),
};
/** The sentences about a book that cannot be used. */
export const faultsIn = (changes: object): readonly string[] => {
  const read = readOrderBook({ ...SMALL, ...changes });
  return 'faults' in read ? read.faults.map(({ message }) => message) : [];
};
export function smallBook(changes: object = {}): OrderBook {
  const read = readOrderBook({ ...SMALL, ...changes });
  if ('faults' in read) throw new Error(read.faults.map(({ message }) => message).join(' '));
  return read.book;
}
/** Its plan, without what helps and, unless asked for, without odds. */
export const smallPlan = (changes: object = {}, options: BatchOptions = {}): SeasonPlan =>
  planBatches(smallBook(changes), { draws: 0, explains: false, ...options });
/** So many of a kind, numbered. */
export const many = <T>(count: number, of: (i: number) => T): T[] =>
  Array.from({ length: count }, (_, i) => of(i + 1));

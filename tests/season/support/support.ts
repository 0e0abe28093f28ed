import { addressOf, parseAddress } from '../../../shared/sheet/formula/address';
import type { Cell } from '../../../shared/base/values';
import type { SheetModel } from '../../../shared/sheet/workbook/model';
import type { OrderBook } from '../../../shared/season/book/orderBook';
import { readOrderBook } from '../../../shared/season/book/orderBook';
import type { BatchClock } from '../../../shared/season/types';

/** The hours of a planned batch, as a book holds those of one that stands. */
export function clockOf(batch: BatchClock): BatchClock {
  const { temperature, latencyHours, injectAt, checkAt, stripAt, lateAt } = batch;
  const { hatchAt, hatchEndAt, firstFeedAt, feedFrom, weanedAt } = batch;
  return {
    ...{ temperature, latencyHours, injectAt, checkAt, stripAt, lateAt },
    ...{ hatchAt, hatchEndAt, firstFeedAt, feedFrom, weanedAt },
  };
}

/** An order book of an invented hatchery; every test changes what it is about. */
export const BOOK = {
  hatchery: 'Heron Reach Hatchery',
  plannedOn: '2027-01-10',
  orders: [
    { name: 'Lake farms', product: 'fingerlings', number: 60_000, due: '2027-03-31', price: 0.12 },
    { name: 'Pond club', product: 'fingerlings', number: 40_000, due: '2027-05-10', price: 0.12 },
  ],
  vats: Array.from({ length: 6 }, (_, i) => ({ name: `Vat ${i + 1}`, litres: 1000 })),
  females: Array.from({ length: 9 }, (_, i) => ({
    tag: `F${i + 1}`,
    kilograms: 1 + 0.1 * i,
    family: `line ${i % 3}`,
  })),
  males: Array.from({ length: 8 }, (_, i) => ({ tag: `M${i + 1}`, family: `line ${i % 3}` })),
  temperatures: [25, 26, 27, 27.5, 28, 27.5, 27, 27, 27, 26.5, 26, 25],
  prices: {
    cystsPerKilogram: 60,
    feedPerKilogram: 2,
    hormonePerMillilitre: 3,
    male: 8,
    perRun: 40,
    perVatDay: 0.5,
    perMonth: 300,
    atHand: 1500,
  },
} as const;

/** An order book that must be one: its faults are those of the test. */
export const checked = (input: unknown): OrderBook => {
  const read = readOrderBook(input);
  if ('faults' in read)
    throw new Error(read.faults.map(({ field, message }) => `${field}: ${message}`).join(' '));
  return read.book;
};
export const bookOf = (changes: object = {}): OrderBook => checked({ ...BOOK, ...changes });
export const faultsOf = (changes: object): string[] => {
  const read = readOrderBook({ ...BOOK, ...changes });
  return 'faults' in read ? read.faults.map(({ field, message }) => `${field} | ${message}`) : [];
};

/** The cells of a sheet as a host reads them. */
export function gridOf({ name, cells }: SheetModel): {
  readonly name: string;
  readonly top: number;
  readonly left: number;
  readonly values: Cell[][];
} {
  const places = Object.keys(cells).flatMap((address) => parseAddress(address) ?? []);
  const [rows, columns] = [
    Math.max(0, ...places.map((p) => p.row)) + 1,
    Math.max(0, ...places.map((p) => p.column)) + 1,
  ];
  return {
    name,
    top: 0,
    left: 0,
    values: Array.from({ length: rows }, (_, r) =>
      Array.from({ length: columns }, (_x, c): Cell => cells[addressOf(r, c)]?.value ?? null),
    ),
  };
}

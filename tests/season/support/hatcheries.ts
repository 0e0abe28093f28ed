import { rngOf } from '../../../shared/maths/rng';
import type { OrderBook } from '../../../shared/season';
import { isoDateOfSerial, serialOfIsoDate } from '../../../shared/units/dates';
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

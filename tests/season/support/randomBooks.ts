import { rngOf } from '../../../shared/maths/rng';
import type { OrderBook } from '../../../shared/season';
import { isoDateOfSerial, serialOfIsoDate } from '../../../shared/units/dates';
import { bookOf } from './support';

const START = serialOfIsoDate('2027-01-10') ?? NaN;
/** Order books of every kind: many and few of everything, rest of 0 days, no cleaning, night shifts, hard waits. */
export function randomBook(seed: number): OrderBook {
  const c = rngOf(50_000 + seed);
  const int = (low: number, high: number): number => Math.floor(low + (high - low + 1) * c.even());
  const one = <T>(...list: readonly T[]): T => list[int(0, list.length - 1)] as T;
  const families = int(1, 5);
  const kin = (): object => (c.even() < 0.7 ? { family: `line ${int(1, families)}` } : {});
  const used = (): object => (c.even() < 0.2 ? { lastUsed: isoDateOfSerial(START - int(0, 120)) } : {});
  return bookOf({
    orders: Array.from({ length: int(1, 25) }, (_, i) => {
      const product = one('fry', 'fingerlings');
      return {
        name: `order ${i + 1}`,
        product,
        number: one(int(1, 50), int(100, 6000), int(5000, 60_000)),
        due: isoDateOfSerial(START + int(5, 250)),
        ...(c.even() < 0.7 ? { price: 0.05 * int(1, 5) } : {}),
        ...(c.even() < 0.2 ? { grams: product === 'fry' ? 0.04 : 3 } : {}),
      };
    }),
    vats: Array.from({ length: int(1, 12) }, (_, i) => ({
      name: `v${i}`,
      litres: one(50, 300, 600, 1000, 2500),
      holds: one(
        ['eggs', 'fry', 'nursing'],
        ['eggs', 'fry', 'nursing'],
        ['eggs'],
        ['fry', 'nursing'],
        ['nursing'],
        ['eggs', 'fry'],
      ),
      ...(c.even() < 0.15
        ? { outFrom: isoDateOfSerial(START + int(0, 60)), outUntil: isoDateOfSerial(START + int(60, 120)) }
        : {}),
    })),
    females: Array.from({ length: int(0, 20) }, (_, i) => ({
      tag: `F${i}`,
      kilograms: 0.1 * int(5, 30),
      ...kin(),
      ...used(),
      ...(c.even() < 0.05 ? { goneOn: isoDateOfSerial(START) } : {}),
    })),
    males: Array.from({ length: int(0, 16) }, (_, i) => ({ tag: `M${i}`, ...kin(), ...used() })),
    restDays: one(0, 0, 1, 20, 90),
    malesSurvive: c.even() < 0.4,
    cleaningDays: int(0, 4),
    holdDays: int(0, 8),
    certainty: one(0.5, 0.7, 0.8, 0.9),
    spare: one(0, 0, 0.2),
    staff: {
      femalesPerDay: int(1, 12),
      weekdays: one([1, 2, 3, 4, 5, 6, 7], [1, 3, 5], [2]),
      stripFrom: one(0, 6, 18),
      stripTo: one(20, 24),
      injectFrom: one(0, 17),
      injectTo: 24,
    },
  });
}

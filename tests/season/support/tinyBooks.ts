import { rngOf } from '../../../shared/maths/rng';
import type { OrderBook } from '../../../shared/season';
import { isoDateOfSerial, serialOfIsoDate } from '../../../shared/units/dates';
import { bookOf } from './support';

const START = serialOfIsoDate('2027-01-10') ?? NaN;
/** Books so small that an exact solver can be asked, and so short of everything that the planner must choose. */
export function tinyBook(seed: number): OrderBook {
  const c = rngOf(9000 + seed);
  const int = (low: number, high: number): number => Math.floor(low + (high - low + 1) * c.even());
  const first = START + 60;
  return bookOf({
    orders: Array.from({ length: int(3, 5) }, (_, i) => ({
      name: `order ${i}`,
      product: c.even() < 0.5 ? 'fry' : 'fingerlings',
      number: 1000 * int(2, 30),
      due: isoDateOfSerial(first + int(0, 25)),
      price: 0.05 * int(1, 3),
    })),
    vats: Array.from({ length: int(2, 4) }, (_, i) => ({ name: `v${i}`, litres: 100 * int(2, 9) })),
    females: Array.from({ length: int(2, 4) }, (_, i) => ({
      tag: `F${i}`,
      kilograms: 0.1 * int(4, 14),
      family: `line ${int(1, 2)}`,
    })),
    males: Array.from({ length: int(1, 3) }, (_, i) => ({ tag: `M${i}`, family: `line ${int(1, 3)}` })),
    holdDays: int(0, 2),
    cleaningDays: int(0, 2),
    restDays: c.even() < 0.5 ? 90 : 5,
    malesSurvive: c.even() < 0.3,
  });
}

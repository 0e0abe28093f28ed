import type { Operand } from '../../sheet/formula';
import type { Assumed } from '../../families/assumptions';
import type { OrderBook } from '../book/orderBook';

/** What an order book gives to the lines of every run (shared/run/lines): figures, settings, months. */
export const givenBy = (
  book: Pick<OrderBook, 'plannedOn' | 'preparation' | 'leadDays' | 'temperatures' | 'eggShares' | 'water'>,
  a: Assumed,
): Record<string, Operand> => ({
  ...a,
  plannedOn: book.plannedOn,
  preparation: book.preparation,
  leadHormone: book.leadDays.hormone,
  leadCysts: book.leadDays.cysts,
  leadFeed: book.leadDays.feed,
  waterByMonth: book.temperatures.map((t) => [t ?? null]),
  eggShares: Array.from({ length: 12 }, (_, i) => [book.eggShares?.[i] ?? null]),
  ph: book.water.ph ?? null,
  phWanted: book.water.phWanted,
  alkalinity: book.water.alkalinity ?? null,
  material: book.water.material,
});

import type { OrderBook } from '../book/orderBook';
import type { SeasonBatch, SeasonPlan } from '../types';

/**
 * From a plan to the next: what is too near to move, or in the vats, becomes a full batch of the book; what is
 * there already stays as it is: parents, clock, counts, events, ticks, and the vats that hold its fish.
 */

const clockOf = (b: SeasonBatch): OrderBook['batches'][number]['clock'] => ({
  temperature: b.temperature,
  latencyHours: b.latencyHours,
  injectAt: b.injectAt,
  checkAt: b.checkAt,
  stripAt: b.stripAt,
  lateAt: b.lateAt,
  hatchAt: b.hatchAt,
  hatchEndAt: b.hatchEndAt,
  firstFeedAt: b.firstFeedAt,
  feedFrom: b.feedFrom,
  weanedAt: b.weanedAt,
});

/** Goods of a batch are ordered by that day: from then on it stands. */
export const standsFrom = ({ leadDays }: Pick<OrderBook, 'leadDays'>, { injectAt }: SeasonBatch): number =>
  Math.floor(injectAt) - leadDays.hormone;

const staysIn = ({ stays }: SeasonPlan, name: string): OrderBook['batches'][number]['stays'] =>
  stays.filter(({ batch }) => batch === name).map(({ vat, stage, from, to }) => ({ vat, stage, from, to }));

/** The batches of a book on a day, those of its last plan that stand by then included. */
export function carriedOver(book: OrderBook, plan: SeasonPlan, today: number): OrderBook['batches'] {
  const known = new Set(book.batches.map(({ name }) => name));
  const grown = book.batches.map((batch): OrderBook['batches'][number] => {
    if (batch.state === 'lost' || batch.state === 'over') return batch;
    const stays = staysIn(plan, batch.name);
    return {
      ...batch,
      state: batch.clock.stripAt < today ? 'growing' : batch.state,
      // Vats that hold its fish stay as they are; where they go next is what the last plan says.
      stays: stays.length > 0 ? stays : batch.stays,
    };
  });
  const fresh = plan.batches
    .filter(
      (batch) => batch.state === 'planned' && !known.has(batch.name) && standsFrom(book, batch) <= today,
    )
    .map((batch): OrderBook['batches'][number] => ({
      name: batch.name,
      state: batch.stripAt < today ? 'growing' : 'fixed',
      clock: clockOf(batch),
      pairs: batch.pairs.map((pair) => ({ ...pair })),
      eggs: batch.eggs,
      larvae: batch.larvae,
      feeding: batch.feeding,
      weaned: batch.weaned,
      counts: [],
      events: [],
      ticks: [],
      stays: staysIn(plan, batch.name),
    }));
  return [...grown, ...fresh];
}

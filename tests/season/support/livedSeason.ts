/* eslint-disable complexity -- a life is one thing after another */
import { rngOf } from '../../../shared/maths/rng';
import type { OrderBook } from '../../../shared/season';
import { carriedOver, planBatches, standingOf } from '../../../shared/season/batches';
import { readOrderBook } from '../../../shared/season/book/orderBook';
import type { SeasonPlan } from '../../../shared/season/types';
import { assumed } from '../../../shared/families/assumptions';
import { breachesOf } from './batchRules';
import { hatcheryOf } from './hatcheries';

/**
 * A season lived week by week with what chance brings, planned again each time. The ledger of fish and money is
 * kept here, on paper as it were, and compared with what the book and its plan say.
 */
export interface Lived {
  readonly wrong: string[];
  readonly sold: number;
  readonly batches: number;
  readonly plans: number;
}
type Booked = OrderBook['batches'][number];

export function liveSeason(seed: number, everyDays: number): Lived {
  const c = rngOf(70_000 + seed);
  const wrong: string[] = [];
  let book = hatcheryOf(seed % 20, { certainty: 0.7 });
  book = { ...book, orders: book.orders.slice(0, 24) };
  const start = book.plannedOn;
  const end = Math.max(...book.orders.map(({ due }) => due)) + 3;
  const paper = {
    sold: new Map<string, number>(),
    died: new Map<string, number>(),
    counted: new Map<string, number>(),
    money: 0,
    ticks: new Map<string, number>(),
  };
  let plan: SeasonPlan | undefined;
  let plans = 0;
  for (let today = start; today <= end; today += everyDays) {
    // Parents, clock, counts, events, ticks, and vats that were taken by the day of the last plan.
    const typed = (batch: Booked): string => {
      const begun = batch.stays
        .filter(({ from }) => from <= today - everyDays)
        .map(({ vat, stage, from }) => `${vat} ${stage} ${from}`);
      return JSON.stringify([
        batch.pairs,
        batch.clock,
        batch.counts,
        batch.events,
        batch.ticks,
        begun.sort(),
      ]);
    };
    const before = new Map(book.batches.map((batch) => [batch.name, typed(batch)]));
    if (plan) book = { ...book, batches: carriedOver(book, plan, today), plannedOn: today };
    // Nothing that was typed or that stood has changed by being carried over.
    for (const batch of book.batches) {
      const was = before.get(batch.name);
      if (was !== undefined && was !== typed(batch)) wrong.push(`${today}: ${batch.name} changed`);
    }
    for (const name of before.keys())
      if (!book.batches.some((batch) => batch.name === name)) wrong.push(`${today}: ${name} is gone`);
    book = { ...book, batches: book.batches.map((batch) => lived(batch, today)) };
    book = happened(book, today);
    const checked = readOrderBook(JSON.parse(JSON.stringify(book)));
    if ('faults' in checked) {
      wrong.push(`${today}: ${checked.faults.map(({ message }) => message).join(' ')}`);
      break;
    }
    book = checked.book;
    plan = planBatches(book, {
      draws: 0,
      explains: false,
      effort: { looks: 15_000, mostTries: 15, seed: 1, sequences: 1 },
    });
    plans++;
    for (const breach of breachesOf(book, plan)) wrong.push(`${today}: ${breach}`);
    // Every batch is in the new plan, as a full batch.
    for (const batch of book.batches) {
      const row = plan.batches.find(({ name }) => name === batch.name);
      if (!row) wrong.push(`${today}: ${batch.name} is not in the plan`);
      else if (
        JSON.stringify([row.pairs, row.counts, row.events, row.stripAt]) !==
        JSON.stringify([batch.pairs, batch.counts, batch.events, batch.clock.stripAt])
      )
        wrong.push(`${today}: ${batch.name} is not as it was`);
    }
    // Money: at hand, what was typed, and what is to come make the end of the cash table.
    const booked = plan.entries
      .filter(({ isBooked }) => isBooked)
      .reduce((sum, { amount }) => sum + amount, 0);
    if (Math.abs(booked - paper.money) > 1e-6 * Math.max(1, Math.abs(paper.money)))
      wrong.push(`${today}: booked ${booked}, paper ${paper.money}`);
    const close = plan.cash.at(-1)?.balance ?? book.prices.atHand;
    const all = book.prices.atHand + plan.entries.reduce((sum, { amount }) => sum + amount, 0);
    if (Math.abs(close - all) > 1e-6 * Math.max(1, Math.abs(all)))
      wrong.push(`${today}: cash ends at ${close}, not ${all}`);
  }
  // Fish: what was counted is what was sold, died and is left.
  const a = assumed(book.assumptions);
  for (const batch of book.batches) {
    const sum = (kind: string): number =>
      batch.events.filter((e) => e.kind === kind).reduce((n, e) => n + e.number, 0);
    if (sum('sold') !== (paper.sold.get(batch.name) ?? 0))
      wrong.push(`${batch.name}: sold ${sum('sold')}, paper ${paper.sold.get(batch.name) ?? 0}`);
    if (sum('died') !== (paper.died.get(batch.name) ?? 0)) wrong.push(`${batch.name}: died ${sum('died')}`);
    if (batch.ticks.length !== (paper.ticks.get(batch.name) ?? 0)) wrong.push(`${batch.name}: ticks lost`);
    const counted = paper.counted.get(batch.name);
    const last = batch.counts.at(-1);
    if (counted !== undefined && last?.number !== counted) wrong.push(`${batch.name}: count lost`);
    const { alive } = standingOf(batch, a, end);
    if (alive < 0 || (counted !== undefined && alive > counted))
      wrong.push(`${batch.name}: ${alive} alive of ${counted}`);
  }
  return {
    wrong,
    plans,
    batches: book.batches.length,
    sold: [...paper.sold.values()].reduce((x, y) => x + y, 0),
  };

  function lived(batch: Booked, today: number): Booked {
    if (batch.state === 'lost' || batch.state === 'over') return batch;
    let next = batch;
    if (batch.state === 'growing' && batch.counts.length === 0 && batch.clock.feedFrom < today) {
      if (c.even() < 0.06) return { ...batch, state: 'lost' };
      const number = Math.round((batch.feeding ?? batch.eggs * 0.4) * (0.3 + 1.2 * c.even()));
      paper.counted.set(batch.name, number);
      paper.ticks.set(batch.name, (paper.ticks.get(batch.name) ?? 0) + 1);
      next = {
        ...batch,
        counts: [{ at: batch.clock.feedFrom + 0.4, stage: 'feeding', number }],
        ticks: [{ task: 'Count the larvae', at: batch.clock.feedFrom + 0.4 }],
      };
    }
    const { alive } = standingOf(next, assumed(book.assumptions), today);
    if (next.counts.length > 0 && c.even() < 0.3 && alive > 200) {
      const number = Math.round(alive * 0.1 * c.even());
      paper.died.set(batch.name, (paper.died.get(batch.name) ?? 0) + number);
      next = { ...next, events: [...next.events, { at: today - 0.3, kind: 'died', number }] };
    }
    const gone = next.counts.length > 0 && Math.max(...next.stays.map(({ to }) => to), 0) < today - 60;
    return gone ? { ...next, state: 'over' } : next;
  }
  /** Buyers fetch what the last plan gave them, as far as it is there; they pay; other money is booked. */
  function happened(now: OrderBook, today: number): OrderBook {
    let next = now;
    for (const { batch: name, order, on, fish } of plan?.allocations ?? []) {
      if (on >= today || on < today - everyDays) continue;
      const batch = next.batches.find((b) => b.name === name);
      const price = next.orders.find((o) => o.name === order)?.price ?? 0;
      if (!batch || batch.state !== 'growing') continue;
      const { alive } = standingOf(batch, assumed(next.assumptions), on);
      const number = Math.min(fish, Math.floor(alive));
      if (number < 1) continue;
      const paid = Math.round(number * price * 100) / 100;
      paper.sold.set(name, (paper.sold.get(name) ?? 0) + number);
      paper.money += paid;
      const events = [...batch.events, { at: on + 0.4, kind: 'sold' as const, number, order, paid }];
      next = { ...next, batches: next.batches.map((b) => (b.name === name ? { ...b, events } : b)) };
    }
    const amount = -Math.round(100 * (5 + 40 * c.even())) / 100;
    paper.money += amount;
    next = { ...next, booked: [...next.booked, { date: today, what: 'feed, paid', amount }] };
    if (c.even() < 0.1)
      next = {
        ...next,
        orders: next.orders.map((o, i) => (i === Math.floor(c.even() * 24) ? { ...o, cancelled: true } : o)),
      };
    if (c.even() < 0.1)
      next = {
        ...next,
        females: next.females.map((f, i) => (i === Math.floor(c.even() * 12) ? { ...f, goneOn: today } : f)),
      };
    return next;
  }
}

import { planBatches } from '../../../shared/season';
import type { SeasonPlan } from '../../../shared/season/types';
import { expectKept } from '../../support/kept';
import { randomBook } from '../support/randomBooks';

/**
 * Order books of every kind, planned: many and few of everything, narrow hours, night shifts, hard waits. What is
 * kept of each is what a reader sees: batches, orders, who is where, money, and every sentence.
 */
const QUICK = { draws: 80, effort: { looks: 4000, mostTries: 6, seed: 3, sequences: 1 } } as const;
const BOOKS = Array.from({ length: 18 }, (_, i) => i + 1);
/** What binds and what would help is asked of some: it plans the season again for each thing tried. */
const EXPLAINED: ReadonlySet<number> = new Set([2, 5, 9]);

const row = (list: readonly unknown[]): string =>
  list
    .map((x) => (typeof x === 'number' ? Number(x.toPrecision(8)) : Array.isArray(x) ? x.join('+') : x))
    .join(' ¦ ');
const digest = (plan: SeasonPlan): unknown => ({
  all: row([plan.wanted, plan.promise, plan.hope, plan.fish.p10, plan.fish.p50, plan.fish.p90, plan.verdict]),
  batches: plan.batches.map((b) =>
    row([
      b.name,
      b.state,
      b.pairs.map(({ female, male, kilograms }) => `${female}×${male} ${kilograms.toFixed(2)}`),
      ...[b.temperature, b.latencyHours, b.injectAt, b.checkAt, b.stripAt, b.lateAt, b.hatchAt, b.hatchEndAt],
      ...[b.firstFeedAt, b.feedFrom, b.weanedAt, b.leavesOn],
      ...[b.hormone, b.eggs, b.larvae, b.feeding, b.weaned, b.promised, b.extra],
    ]),
  ),
  orders: plan.orders.map((o) =>
    row([
      o.order.name,
      o.batches,
      ...[o.delivered, o.promise, o.hope, o.range.p10, o.range.p90, o.certainty, o.verdict, o.expected],
      o.parents,
      o.why ?? '',
    ]),
  ),
  shares: plan.allocations.map((a) =>
    row([a.batch, a.order, a.on, a.ageDays, a.grams, a.fish, a.feeding, a.stage]),
  ),
  stays: plan.stays.map((s) => row([s.batch, s.vat, s.stage, s.from, s.to, s.cleanAt, s.fish, s.perLitre])),
  buys: plan.purchases.map((p) => row([p.week, p.item, p.amount, p.unit, p.cost, p.usedFrom])),
  cash: plan.cash.map((week) => row(Object.values(week))),
  // The first and last days of each batch say how it is fed; those between lie on the same lines.
  fed: plan.feeding.filter((_, i) => i % 9 === 0).map((f) => row(Object.values(f))),
  money: { ...plan.money, costs: plan.money.costs.map(({ what, amount }) => row([what, amount])) },
  odds: plan.odds,
  short: plan.short,
  said: plan.findings.map(({ kind, message }) => `${kind}: ${message}`),
});

test('eighteen books', () => {
  expectKept(
    'season-many',
    BOOKS.map((seed) => ({
      seed,
      plan: digest(planBatches(randomBook(seed), { ...QUICK, explains: EXPLAINED.has(seed) })),
    })),
  );
});

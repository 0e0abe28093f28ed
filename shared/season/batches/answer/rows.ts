// Long: one row after another.
import { effectiveNumber } from '../../../families/brood/kernels/inbreeding';
import type { Assumed } from '../../../families/assumptions';
import { hormoneFor } from '../../figures/goods';
import type { BookedBatch } from '../../book/living';
import type { BookedOrder, OrderBook } from '../../book/orderBook';
import type { Product } from '../../figures/product';
import { productOf } from '../../figures/product';
import { VAT_STAGES } from '../../figures/stages';
import type { Allocation, BatchClock, BatchStay, SeasonBatch } from '../../types';
import { liveShare } from '../alive';
import { feedingPerFish } from '../search/insert';
import { leftOver } from '../chance/odds';
import type { Given } from '../search/reserve';
import { giftsOf } from '../search/reserve';
import type { Batch, BatchSchedule, Share } from '../search/schedule';

/** A schedule of batches as rows: batches by the night they are stripped, what they give, where they stand. */

export interface BatchRows {
  readonly batches: readonly SeasonBatch[];
  readonly allocations: readonly Allocation[];
  readonly stays: readonly BatchStay[];
  /** Name of each batch of the schedule. */
  readonly names: ReadonlyMap<number, string>;
}

/**
 * A batch planned again for its night keeps its name; others are numbered on from the highest number there ever
 * was, so that what was typed for one batch never passes to another.
 */
function namesOf(book: OrderBook, batches: readonly Batch[]): Map<number, string> {
  const standing = new Set(book.batches.map(({ name }) => name));
  const byNight = new Map(
    book.earlier.flatMap(({ name, stripOn }) =>
      stripOn === undefined || standing.has(name) ? [] : [[stripOn, name] as const],
    ),
  );
  let last = [...book.batches, ...book.earlier].reduce(
    (most, { name }) => Math.max(most, Number(/^B(\d+)$/.exec(name)?.[1] ?? 0)),
    0,
  );
  const named = (batch: Batch): string => {
    const night = Math.floor(clockOf(batch)?.stripAt ?? NaN);
    const name = byNight.get(night) ?? `B${++last}`;
    byNight.delete(night);
    return name;
  };
  return new Map(batches.map((batch) => [batch.id, batch.fixed?.batch.name ?? named(batch)]));
}

const clockOf = (batch: Batch): BatchClock | undefined => {
  if (batch.fixed) return batch.fixed.batch.clock;
  const [share] = batch.shares;
  return share ? { ...share.candidate.clock, weanedAt: Infinity } : undefined;
};

interface Expected {
  readonly eggs: number;
  readonly larvae: number;
  readonly feeding: number;
  readonly weaned: number;
}
function expectedOf(schedule: BatchSchedule, batch: Batch, a: Assumed): Expected {
  const { problem } = schedule;
  if (batch.fixed) {
    const { batch: kept, standing } = batch.fixed;
    const { feeding } = standing;
    return {
      eggs: kept.eggs,
      larvae: kept.larvae ?? kept.eggs * a.hatch,
      feeding,
      weaned: feeding * a.frySurvival,
    };
  }
  const litresIn = (wanted: number): number =>
    batch.holds.reduce(
      (sum, { stage, vat }) => sum + (stage === wanted ? (problem.vats[vat]?.litres ?? 0) : 0),
      0,
    );
  // No more eggs are set than their vats hold, and no more larvae kept.
  const eggs = Math.min(
    batch.eggs * (batch.shares[0]?.candidate.eggFactor ?? 1),
    problem.without === 'vats' ? Infinity : litresIn(0) * a.eggsPerLitre,
  );
  const feeding = Math.min(eggs * a.hatch * a.yolkSurvival, litresIn(1) * a.larvaePerLitre);
  return { eggs, larvae: eggs * a.hatch, feeding, weaned: feeding * a.frySurvival };
}

/** Weight of a fish when its order's days are over, as the weighing of its batch tells it. */
function gramsOf({ fixed }: Batch, order: BookedOrder, usual: Product): number {
  const own = fixed ? productOf(order, fixed.assumed) : usual;
  return typeof own === 'string' ? usual.grams : own.grams;
}

/** Fish of a batch for its orders: what it gives of what each still lacks. */
function allocationsOf(
  schedule: BatchSchedule,
  batch: Batch,
  name: string,
  feedFrom: number,
  given: readonly Given[],
): Allocation[] {
  return batch.shares.flatMap(({ task, candidate }, i): Allocation[] => {
    const { order, product } = schedule.problem.tasks[task] ?? {};
    const whole = given[i]?.fish ?? 0;
    if (!order || !product || whole < 1) return [];
    return [
      {
        batch: name,
        order: order.name,
        on: order.due,
        ageDays: order.due - feedFrom,
        grams: gramsOf(batch, order, product),
        fish: whole,
        feeding: whole * feedingPerFish(schedule, task),
        stage: candidate.spans.length > 2 ? 'nursing' : 'fry',
      },
    ];
  });
}

/** Fish nobody has ordered, as expected on the day the last of the batch leaves. */
function extraOf(schedule: BatchSchedule, batch: Batch, feeding: number): number {
  const taken = batch.shares.reduce((sum, { task, fish }) => sum + fish * feedingPerFish(schedule, task), 0);
  const { assumed: a } = schedule.problem;
  const left = leftOver(schedule, batch);
  const each = a.frySurvival * left.scale * (left.isNursed ? a.nurserySurvival : 1);
  return Math.max(0, Math.floor((feeding - taken) * each));
}

const endOf = ({ candidate }: Share): number => candidate.spans.at(-1)?.[1] ?? 0;
/** Those that are nursed are weaned on the day that stands; else when they could be. */
const weanedAt = ({ fixed, shares }: Batch): number =>
  fixed?.batch.clock.weanedAt ??
  (shares.find(({ candidate }) => candidate.spans.length > 2) ?? shares[0])?.candidate.weanedAt ??
  NaN;
const pairRows = ({ problem }: BatchSchedule, { fixed, pairs }: Batch): SeasonBatch['pairs'] =>
  fixed?.batch.pairs ??
  pairs.map(({ female, male }) => ({
    female: problem.females[female]?.tag ?? '',
    male: problem.males[male]?.tag ?? '',
    kilograms: problem.females[female]?.kilograms ?? NaN,
  }));

/** What was typed of a batch. */
const keptOf = ({ counts, events, weighed }: BookedBatch) => ({
  counts,
  events,
  ...(weighed ? { weighed } : {}),
});

function batchRow(
  schedule: BatchSchedule,
  batch: Batch,
  name: string,
  book: OrderBook,
): SeasonBatch | undefined {
  const clock = clockOf(batch);
  if (!clock) return undefined;
  const a = schedule.problem.assumed;
  const expected = expectedOf(schedule, batch, a);
  const pairs = pairRows(schedule, batch);
  const leaves = Math.max(...batch.shares.map(endOf), ...batch.holds.map(({ to }) => to), clock.feedFrom);
  const row = {
    ...clock,
    weanedAt: weanedAt(batch),
    name,
    pairs,
    males: [...new Set(pairs.map(({ male }) => male))],
    hormone: hormoneFor(
      book,
      a,
      pairs.reduce((sum, { kilograms }) => sum + kilograms, 0),
    ),
    ...expected,
    promised: 0,
    extra: extraOf(schedule, batch, expected.feeding),
    leavesOn: Math.floor(leaves),
  };
  if (!batch.fixed) return { ...row, state: 'planned', counts: [], events: [], alive: undefined };
  const { batch: kept, standing } = batch.fixed;
  const alive = standing.isCounted
    ? standing.feeding * liveShare(a, clock.feedFrom, book.plannedOn)
    : undefined;
  return { ...row, state: kept.state, ...keptOf(kept), alive };
}

/** Batches that are over or lost stay in the book, for what was counted, sold and paid. */
const closedRows = (book: OrderBook, a: Assumed): SeasonBatch[] =>
  book.batches
    .filter(({ state }) => state === 'over' || state === 'lost')
    .map((kept) => ({
      ...kept.clock,
      name: kept.name,
      state: kept.state,
      pairs: kept.pairs,
      males: [...new Set(kept.pairs.map(({ male }) => male))],
      hormone: hormoneFor(
        book,
        a,
        kept.pairs.reduce((sum, { kilograms }) => sum + kilograms, 0),
      ),
      eggs: kept.eggs,
      larvae: kept.larvae ?? kept.eggs * a.hatch,
      feeding: kept.feeding ?? 0,
      weaned: kept.weaned ?? 0,
      promised: 0,
      extra: 0,
      leavesOn: Math.max(Math.floor(kept.clock.feedFrom), ...kept.stays.map(({ to }) => Math.floor(to))),
      ...keptOf(kept),
      alive: 0,
    }));

function staysOf(schedule: BatchSchedule, batch: Batch, row: SeasonBatch): BatchStay[] {
  const { problem } = schedule;
  const litresOf = (vat: number): number => problem.vats[vat]?.litres ?? 0;
  const past = (batch.fixed?.batch.stays ?? [])
    .filter(
      ({ vat, stage, from }) =>
        !batch.holds.some(
          (hold) =>
            problem.vats[hold.vat]?.name === vat && VAT_STAGES[hold.stage] === stage && hold.from === from,
        ) && from <= problem.today,
    )
    .map((stay) => ({
      batch: row.name,
      vat: stay.vat,
      stage: stay.stage,
      from: stay.from,
      to: stay.to,
      cleanAt: stay.to + problem.cleaningDays,
      fish: NaN,
      perLitre: NaN,
    }));
  const numbers = [row.eggs, row.feeding, row.weaned];
  return [
    ...past,
    ...batch.holds.map(({ stage, vat, from, to }): BatchStay => {
      const litres = batch.holds.reduce(
        (sum, hold) => sum + (hold.stage === stage ? litresOf(hold.vat) : 0),
        0,
      );
      const nursed = batch.shares.reduce(
        (sum, { task, candidate, fish }) =>
          sum +
          (candidate.spans.length > 2
            ? fish * (problem.tasks[task]?.product.stages[2]?.fishPerFish ?? 0)
            : 0),
        0,
      );
      const a = problem.assumed;
      const most = litres * ([a.eggsPerLitre, a.larvaePerLitre, a.nurseryPerLitre][stage] ?? Infinity);
      const number = Math.min(
        stage === 2 ? Math.max(nursed, Math.min(numbers[2] ?? 0, most)) : (numbers[stage] ?? 0),
        batch.fixed ? Infinity : most,
      );
      const goesOn = batch.holds.some(
        (hold) => hold.vat === vat && hold.stage > stage && Math.abs(hold.from - to) < 1e-6,
      );
      return {
        batch: row.name,
        vat: problem.vats[vat]?.name ?? '',
        stage: VAT_STAGES[stage] ?? 'eggs',
        from,
        to,
        cleanAt: goesOn ? to : to + problem.cleaningDays,
        fish: (number * litresOf(vat)) / litres,
        perLitre: number / litres,
      };
    }),
  ];
}

/** What the allocations promise of a batch. */
const withFish = (row: SeasonBatch, allocations: readonly Allocation[]): SeasonBatch => ({
  ...row,
  promised: allocations.reduce((sum, { batch, fish }) => sum + (batch === row.name ? fish : 0), 0),
});

export function rowsOf(book: OrderBook, schedule: BatchSchedule): BatchRows {
  const sorted = [...schedule.batches.values()]
    .filter((batch) => batch.fixed !== undefined || batch.shares.length > 0)
    .sort((x, y) => (clockOf(x)?.stripAt ?? 0) - (clockOf(y)?.stripAt ?? 0) || x.id - y.id);
  const names = namesOf(book, sorted);
  const found = sorted.flatMap((batch) => {
    const row = batchRow(schedule, batch, names.get(batch.id) ?? '', book);
    return row ? [{ batch, row }] : [];
  });
  const gifts = giftsOf(
    schedule,
    found.map(({ batch }) => batch),
  );
  const allocations = found.flatMap(({ batch, row }) =>
    allocationsOf(schedule, batch, row.name, row.feedFrom, gifts.get(batch.id) ?? []),
  );
  const place = new Map(book.vats.map(({ name }, i) => [name, i]));
  return {
    names,
    batches: [
      ...closedRows(book, schedule.problem.assumed),
      ...found.map(({ row }) => withFish(row, allocations)),
    ].sort((x, y) => x.stripAt - y.stripAt),
    allocations,
    stays: found
      .flatMap(({ batch, row }) => staysOf(schedule, batch, row))
      .sort((x, y) => (place.get(x.vat) ?? 0) - (place.get(y.vat) ?? 0) || x.from - y.from),
  };
}

/** Parents that count, of all batches together that serve an order. */
export function parentsOf({ problem }: BatchSchedule, batches: readonly Batch[]): number {
  const of = (key: 'female' | 'male'): number =>
    new Set(
      batches.flatMap(({ pairs, fixed }) =>
        fixed
          ? fixed.batch.pairs.map((pair) => pair[key])
          : pairs.map((pair) => (key === 'female' ? problem.females : problem.males)[pair[key]]?.tag ?? ''),
      ),
    ).size;
  const [females, males] = [of('female'), of('male')];
  return females > 0 && males > 0 ? effectiveNumber(females, males) : 0;
}

// Long: one drawn season from its parts.
import { liveShare } from '../alive';
import type { Rng } from '../../../maths/rng';
import { rngOf } from '../../../maths/rng';
import { binomial } from '../../../families/money/odds/binomial';
import type { ShareAt } from '../../../families/money/odds/shareSpread';
import { shareSpread } from '../../../families/money/odds/shareSpread';
import type { EggSpread } from '../../../families/money/odds/simulate';
import { eggsStripped } from '../../../families/money/odds/simulate';
import type { OrderBook } from '../../book/orderBook';
import type { SpreadShare } from '../../figures/spreads';
import { SPREAD_SHARES, eggSpreadOf, seasonShareOf, shareSpreadOf } from '../../figures/spreads';
import type { Batch, BatchSchedule } from '../search/schedule';
import { hasBegun, litresHeld } from '../search/schedule';

/**
 * Drawn seasons of a schedule. In each: deviations of the season, partly shared by all stages; batch by batch
 * the eggs of each female, runs lost, hatch, yolk, fry and nursing, each stage no more than its vats hold; then
 * orders by their day, each from its batches in turn, until it is met or the fish are gone.
 */
export interface Drawn {
  /** Fish handed over to each order, by task, in each draw. */
  readonly orders: readonly Float64Array[];
  /** Fish of each batch that nobody ordered, in each draw, by place in `batches`. */
  readonly extra: readonly Float64Array[];
  readonly batches: readonly Batch[];
}

interface Stage {
  readonly key: SpreadShare;
  readonly at: ShareAt;
  readonly shared: number;
  readonly own: number;
}
interface Link {
  readonly batch: number;
  /** Fish of a larva at first food beside the usual survivals, for longer and shorter stages and grading. */
  readonly scale: number;
  readonly isNursed: boolean;
}
interface BatchModel {
  readonly eggs: readonly number[];
  readonly ahead: 0 | 1 | 2;
  /** Larvae at first food (or eggs, where the hatch is ahead) of a batch that stands. */
  readonly standing: number | undefined;
  readonly eggRoom: number;
  readonly larvaRoom: number;
  readonly nursingRoom: number;
  readonly extraScale: number;
  readonly isExtraNursed: boolean;
}

const stagesOf = (book: OrderBook, { assumed }: BatchSchedule['problem']): Stage[] =>
  SPREAD_SHARES.map((key) => {
    const { mean, runs, season } = shareSpreadOf(book, assumed, key);
    const total = Math.hypot(runs, season);
    return {
      key,
      at: shareSpread(mean, total),
      shared: total > 0 ? season / total : 0,
      own: total > 0 ? runs / total : 0,
    };
  });

/** What longer or shorter stages, and grading, make of the usual survivals. */
export function scaleOf({ problem }: BatchSchedule, task: number): number {
  const { assumed: a } = problem;
  const product = problem.tasks[task]?.product;
  const [, , fry = 1, nursery = 1] = product?.survivals ?? [];
  return (
    (fry / a.frySurvival) *
    ((product?.nurseryDays ?? 0) > 0 ? nursery / a.nurserySurvival : 1) *
    a.gradingShare *
    a.arriving
  );
}
const isNursed = ({ problem }: BatchSchedule, task: number): boolean =>
  (problem.tasks[task]?.product.nurseryDays ?? 0) > 0;

/**
 * What becomes of the fish of a batch that nobody ordered: they leave with the last order it serves. Where it serves
 * none they are counted when they are weaned, or today where that is over.
 */
export function leftOver(
  schedule: BatchSchedule,
  batch: Batch,
): { readonly scale: number; readonly isNursed: boolean } {
  const { assumed: a, today } = schedule.problem;
  const endOf = (share: Batch['shares'][number]): number => share.candidate.spans.at(-1)?.[1] ?? 0;
  const last = batch.shares.reduce<Batch['shares'][number] | undefined>(
    (late, share) => (!late || endOf(share) > endOf(late) ? share : late),
    undefined,
  );
  if (last) return { scale: scaleOf(schedule, last.task), isNursed: isNursed(schedule, last.task) };
  const fed = batch.fixed?.batch.clock.feedFrom ?? today;
  const there = liveShare(a, fed, Math.max(fed + a.rearingDays, today)) / a.frySurvival;
  return { scale: there * a.gradingShare * a.arriving, isNursed: false };
}

function modelOf(schedule: BatchSchedule, batch: Batch): BatchModel {
  const { problem } = schedule;
  const { assumed: a } = problem;
  const { fixed } = batch;
  const left = leftOver(schedule, batch);
  const factor = batch.shares[0]?.candidate.eggFactor ?? 1;
  const isOpen = (stage: number): boolean =>
    fixed !== undefined && (hasBegun(batch, stage) || litresHeld(schedule, batch, stage) === 0);
  const room = (stage: number, perLitre: number): number =>
    problem.without === 'vats' || isOpen(stage) ? Infinity : litresHeld(schedule, batch, stage) * perLitre;
  return {
    eggs: batch.pairs.map(({ female }) => ((problem.females[female]?.eggs ?? 0) / a.ovulating) * factor),
    ahead: fixed?.standing.ahead ?? 0,
    standing: fixed?.standing.feeding,
    eggRoom: fixed ? Infinity : room(0, a.eggsPerLitre),
    larvaRoom: room(1, a.larvaePerLitre),
    nursingRoom: room(2, a.nurseryPerLitre),
    extraScale: left.scale,
    isExtraNursed: left.isNursed,
  };
}

interface Season {
  readonly z: number[];
  eggs: number;
}
const bell = (deviation: number, z: number): number =>
  deviation > 0 ? Math.exp(deviation * (z - deviation / 2)) : 1;

interface DrawnBatch {
  feeding: number;
  fry: number;
  nursery: number;
  nursing: number;
}
/** Share of a batch that lives through a stage. */
function lives(rng: Rng, stage: Stage | undefined, z = 0): number {
  if (!stage) return 1;
  return stage.at(stage.shared * z + (stage.own > 0 ? stage.own * rng.normal() : 0));
}

/** One batch of a drawn season: larvae at first food, and what lives of them. */
function drawBatch(
  rng: Rng,
  model: BatchModel,
  stages: readonly Stage[],
  season: Season,
  eggs: EggSpread,
  lost: number,
  ovulating: number,
): DrawnBatch {
  const [hatch, yolk] = [lives(rng, stages[0], season.z[0]), lives(rng, stages[1], season.z[1])];
  const [fry, nursery] = [lives(rng, stages[2], season.z[2]), lives(rng, stages[3], season.z[3])];
  const isLost = lost > 0 && rng.even() < lost;
  const bright = season.eggs * bell(eggs.runs, rng.normal());
  let feeding: number;
  if (model.standing === undefined) {
    const stripped = Math.min(model.eggRoom, bright * eggsStripped(rng, model.eggs, ovulating, eggs.females));
    feeding = isLost ? 0 : binomial(rng, Math.round(stripped), hatch * yolk);
  } else
    feeding =
      model.standing * relative(stages, model.ahead, hatch, yolk) * (model.ahead < 2 && isLost ? 0 : 1);
  feeding = Math.min(feeding, model.larvaRoom);
  return { feeding, fry, nursery, nursing: fry > 0 ? model.nursingRoom / fry : 0 };
}
/** Steps a standing batch still has before it, beside what was expected of them. */
function relative(stages: readonly Stage[], ahead: 0 | 1 | 2, hatch: number, yolk: number): number {
  const mean = (i: number): number => stages[i]?.at(0) ?? 1;
  return ahead === 2 ? 1 : (ahead === 0 ? hatch / mean(0) : 1) * (yolk / mean(1));
}

function linksOf(schedule: BatchSchedule, batches: readonly Batch[]): Link[][] {
  const links: Link[][] = schedule.problem.tasks.map(() => []);
  batches.forEach(({ shares }, batch) => {
    for (const { task } of shares)
      links[task]?.push({ batch, scale: scaleOf(schedule, task), isNursed: isNursed(schedule, task) });
  });
  return links;
}

/** When the last fish of a batch leave a stage. */
const lastEnd = ({ holds }: Batch, stage: number): number =>
  holds.reduce((last, hold) => (hold.stage === stage ? Math.max(last, hold.to) : last), -Infinity);

/** Batches an order that is short may hope for: its fish fit, and stand long enough for others' sake. */
export function hopesOf(schedule: BatchSchedule, batches: readonly Batch[]): Link[][] {
  const { problem } = schedule;
  const placeOf = new Map(batches.map(({ day, fixed }, i) => [fixed ? -1 - i : day, i]));
  return problem.tasks.map(({ candidates }, t) => {
    if ((schedule.need[t] ?? 0) < 0.5) return [];
    const fitting = [
      ...candidates.map((candidate) => ({ candidate, batch: placeOf.get(candidate.day) })),
      ...batches.flatMap(({ fixed }, batch) =>
        (fixed?.serves ?? []).filter(({ task }) => task === t).map(({ candidate }) => ({ candidate, batch })),
      ),
    ];
    return fitting.flatMap(({ candidate, batch: b }): Link[] => {
      const batch = batches[b ?? -1];
      const stage = candidate.spans.length - 1;
      const leaves = candidate.spans[stage]?.[1] ?? Infinity;
      return b === undefined || !batch || lastEnd(batch, stage) < leaves - 1e-6
        ? []
        : [{ batch: b, scale: scaleOf(schedule, t), isNursed: isNursed(schedule, t) }];
    });
  });
}

/** Fish of a drawn batch for an order, at most what it still needs. */
function take(drawn: DrawnBatch, { scale, isNursed: nursed }: Link, need: number): number {
  const each = drawn.fry * scale * (nursed ? drawn.nursery : 1);
  const larvae = Math.min(drawn.feeding, nursed ? drawn.nursing : Infinity, each > 0 ? need / each : 0);
  drawn.feeding -= larvae;
  if (nursed) drawn.nursing -= larvae;
  return larvae * each;
}

/** Fish of drawn batches for an order, one batch after another. */
function takeAll(drawn: readonly DrawnBatch[], links: readonly Link[], wanted: number): number {
  let need = wanted;
  for (const link of links) {
    const from = drawn[link.batch];
    if (from && need > 0) need -= take(from, link, need);
  }
  return wanted - need;
}

export function drawSeasons(book: OrderBook, schedule: BatchSchedule, draws: number, seed: number): Drawn {
  const { problem } = schedule;
  const rng = rngOf(seed);
  const batches = [...schedule.batches.values()].sort((a, b) => a.day - b.day || a.id - b.id);
  const models = batches.map((batch) => modelOf(schedule, batch));
  const links = linksOf(schedule, batches);
  const hopes = hopesOf(schedule, batches);
  const wanted = problem.tasks.map(({ order }, t) => order.number - (problem.delivered[t] ?? 0));
  const stages = stagesOf(book, problem);
  const eggs = eggSpreadOf(book);
  const byDue = problem.tasks
    .map((_, t) => t)
    .sort((a, b) => (problem.tasks[a]?.order.due ?? 0) - (problem.tasks[b]?.order.due ?? 0) || a - b);
  const orders = problem.tasks.map(() => new Float64Array(draws));
  const extra = batches.map(() => new Float64Array(draws));
  for (let d = 0; d < draws; d++) {
    const common = rng.normal();
    const season: Season = {
      z: stages.map(({ key }) => seasonShareOf(key, common, rng.normal())),
      eggs: bell(eggs.season, seasonShareOf('eggs', common, rng.normal())),
    };
    const drawn = models.map((model) =>
      drawBatch(rng, model, stages, season, eggs, book.lost, problem.assumed.ovulating),
    );
    // First what is planned, then what others leave.
    for (const ways of [links, hopes])
      for (const t of byDue) {
        const list = orders[t];
        if (list && (ways[t]?.length ?? 0) > 0)
          list[d] = (list[d] ?? 0) + takeAll(drawn, ways[t] ?? [], (wanted[t] ?? 0) - (list[d] ?? 0));
      }
    drawn.forEach((from, b) => {
      const { extraScale = 0, isExtraNursed = false } = models[b] ?? {};
      const list = extra[b];
      if (list) list[d] = take(from, { batch: b, scale: extraScale, isNursed: isExtraNursed }, Infinity);
    });
  }
  return { orders, extra, batches };
}

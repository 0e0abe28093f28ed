import { runNow } from '../../base/steps';
import type { Chance } from '../../maths/chance';
import { chanceOf } from '../../maths/chance';
import type { Candidate, Task } from '../problem';
import { addShare, addWithFemales, mostByFemales, mostByVats, spareOf } from './insert';
import type { Whim } from './insert';
import type { BatchProblem } from './problem';
import type { Batch, BatchSchedule } from './schedule';
import { copyOf, dropBatch, emptyBatches, plannedOnDay } from './schedule';

/** Females stripped for less than this share of an order are not worth it. */
const LEAST = 0.01;
const MET = 1e-5;
/** An order is spread over at most this many batches. */
const MOST_BATCHES = 8;

interface Place {
  readonly batch: Batch | undefined;
  readonly candidate: Candidate;
  readonly fish: number;
  readonly left: number;
}

/** Fish without one more female: the batch that covers it with least to spare, or else the most. */
function fromSpare(schedule: BatchSchedule, t: number, need: number): number {
  const places: Place[] = [];
  const look = (batch: Batch, candidate: Candidate): void => {
    const spare = spareOf(schedule, batch, t, candidate);
    if (spare < 1) return;
    const fish = Math.min(need, spare, mostByVats(schedule, batch, t, candidate, batch.pairs.length));
    if (fish >= 1) places.push({ batch, candidate, fish, left: spare - fish });
  };
  for (const batch of schedule.batches.values()) {
    const serves = batch.fixed?.serves.find(({ task }) => task === t);
    if (serves) look(batch, serves.candidate);
  }
  for (const candidate of schedule.problem.tasks[t]?.candidates ?? []) {
    const batch = plannedOnDay(schedule, candidate.day);
    if (batch) look(batch, candidate);
  }
  places.sort(
    (a, b) => b.fish - a.fish || Number(!b.batch?.fixed) - Number(!a.batch?.fixed) || a.left - b.left,
  );
  for (const { batch, candidate, fish } of places)
    for (const part of [fish, fish / 2])
      if (batch) {
        const got = addShare(schedule, batch, t, candidate, part);
        if (got > 0) return got;
      }
  return 0;
}

/** Fish that other orders still need and a batch of the day could give: days many orders share come first. */
function demandOn({ problem, need }: BatchSchedule, day: number): number {
  let fish = 0;
  for (const { task } of problem.byDay.get(day) ?? [])
    fish += (need[task] ?? 0) * (problem.tasks[task]?.product.eggsPerFish ?? 0);
  return fish;
}

function choose(
  schedule: BatchSchedule,
  places: readonly Place[],
  need: number,
  whim: Whim | undefined,
): Place[] {
  if (whim && places.length > 1 && whim.chance.even() < whim.part)
    return [...places]
      .map((place) => ({ place, at: whim.chance.even() }))
      .sort((a, b) => a.at - b.at)
      .map(({ place }) => place);
  const most = Math.max(...places.map(({ fish }) => fish));
  const enough = Math.min(need, most * 0.999);
  const rank = ({ batch, fish, candidate }: Place): readonly number[] => [
    fish >= enough ? 1 : 0,
    batch ? 1 : 0,
    demandOn(schedule, candidate.day),
    candidate.day,
  ];
  const ranked = places.map((place) => ({ place, by: rank(place) }));
  ranked.sort((a, b) => {
    for (let k = 0; k < a.by.length; k++) {
      const difference = (b.by[k] ?? 0) - (a.by[k] ?? 0);
      if (difference !== 0) return difference;
    }
    return 0;
  });
  return ranked.map(({ place }) => place);
}

/** The fewest females whose batch may promise anything. */
const leastFemales = ({ problem }: BatchSchedule, t: number): number => {
  const list =
    problem.safety.females[(problem.tasks[t]?.product.nurseryDays ?? 0) > 0 ? 'fingerlings' : 'fry'];
  const first = list.findIndex((share) => share > 0);
  return Math.max(1, first);
};

const EMPTY: readonly never[] = [];
/** Fish with more females: on a day that has a batch already, or on a new one. */
function fromFemales(schedule: BatchSchedule, t: number, need: number, whim: Whim | undefined): number {
  const { problem } = schedule;
  const task = problem.tasks[t];
  const least = Math.min(need, Math.max(1, LEAST * (task?.wanted ?? 0))) * (1 - MET);
  const places: Place[] = [];
  for (const candidate of task?.candidates ?? []) {
    const batch = plannedOnDay(schedule, candidate.day);
    const byFemales = mostByFemales(schedule, batch, candidate.day, t, candidate);
    if (byFemales < least) continue;
    const probe = batch ?? {
      id: -2,
      day: candidate.day,
      fixed: undefined,
      pairs: [],
      eggs: 0,
      shares: [],
      holds: EMPTY,
    };
    const fish = Math.min(
      need,
      byFemales,
      mostByVats(
        schedule,
        probe as Batch,
        t,
        candidate,
        Math.max(leastFemales(schedule, t), probe.pairs.length),
      ),
    );
    if (fish >= least) places.push({ batch, candidate, fish, left: 0 });
  }
  if (places.length === 0) return 0;
  for (const { candidate, fish } of choose(schedule, places, need, whim))
    for (const part of [fish, fish / 2]) {
      if (part < least) continue;
      const got = addWithFemales(schedule, candidate.day, t, candidate, part, whim);
      if (got > 0) return got;
    }
  return 0;
}

export function serve(schedule: BatchSchedule, t: number, whim?: Whim): void {
  const wanted = schedule.problem.tasks[t]?.wanted ?? 0;
  for (let i = 0; i < MOST_BATCHES * 2; i++) {
    const need = schedule.need[t] ?? 0;
    if (need <= MET * wanted || need < 0.5) return;
    if (fromSpare(schedule, t, need) > 0) continue;
    if (fromFemales(schedule, t, need, whim) === 0) return;
  }
}

/** All orders met whole are worth this share more: a whole order rather than two nearly so. */
const WHOLE_ORDERS = 0.004;
/** What a night, a female and a male weigh beside the worth of all orders: enough to decide between equals. */
const COST = { night: 4e-5, female: 2e-5, male: 1e-5 } as const;

export const isMetTask = ({ need, problem }: BatchSchedule, t: number): boolean =>
  (need[t] ?? 0) <= MET * (problem.tasks[t]?.wanted ?? 0) + 0.5;

/** Fish of the orders by their worth, a little for whole orders, less nights, females and males. */
export function worthOf(schedule: BatchSchedule): number {
  const { tasks } = schedule.problem;
  let [whole, worth, met, cost] = [0, 0, 0, 0];
  tasks.forEach(({ value, wanted }, t) => {
    whole += value * wanted;
    worth += value * (wanted - (schedule.need[t] ?? 0));
    if (isMetTask(schedule, t)) met++;
  });
  for (const { fixed, pairs } of schedule.batches.values())
    if (!fixed)
      cost +=
        COST.night + COST.female * pairs.length + COST.male * new Set(pairs.map(({ male }) => male)).size;
  return (
    worth + whole * ((WHOLE_ORDERS * met) / Math.max(1, tasks.length) - cost / Math.max(1, tasks.length))
  );
}

/** Sequences worth trying before chance is asked. */
function startingSequences({ tasks }: BatchProblem): number[][] {
  const all = tasks.map((_, t) => t);
  const by = (key: (t: Task) => number): number[] =>
    [...all].sort((a, b) => {
      const [x, y] = [tasks[a], tasks[b]];
      return x && y ? key(x) - key(y) || a - b : 0;
    });
  return [
    by((t) => t.order.due),
    by((t) => -t.wanted * t.product.eggsPerFish),
    by((t) => t.product.eggsPerFish / t.value),
    by((t) => -t.order.due),
    by((t) => t.candidates.length),
  ];
}

/** Batches near a time are taken out, and their orders, with those still short, are served anew. */
function stirred(best: BatchSchedule, chance: Chance): BatchSchedule {
  const schedule = copyOf(best);
  const { tasks } = schedule.problem;
  const planned = [...schedule.batches.values()].filter(({ fixed }) => !fixed);
  const short = tasks.flatMap((_, t) => (isMetTask(schedule, t) ? [] : [t]));
  const pick = <T>(list: readonly T[]): T | undefined => list[Math.floor(chance.even() * list.length)];
  const shortTask = short.length > 0 && chance.even() < 0.7 ? pick(short) : undefined;
  const centre =
    shortTask !== undefined
      ? (tasks[shortTask]?.candidates[0]?.day ?? pick(planned)?.day)
      : pick(planned)?.day;
  const near = planned
    .map((batch) => ({ batch, at: Math.abs(batch.day - (centre ?? 0)) * (0.5 + chance.even()) }))
    .sort((a, b) => a.at - b.at);
  const count = Math.min(near.length, 1 + Math.floor(chance.even() * 4));
  const freed = new Set<number>();
  for (const { batch } of near.slice(0, count)) {
    for (const { task } of batch.shares) freed.add(task);
    dropBatch(schedule, batch);
  }
  const whim: Whim | undefined =
    chance.even() < 0.3 ? undefined : { chance, part: 0.05 + 0.4 * chance.even() };
  const list = [...freed, ...short.filter((t) => !freed.has(t))];
  const isFirst = chance.even() < 0.5;
  const order = list
    .map((t) => ({
      t,
      at:
        chance.even() < 0.5
          ? (tasks[t]?.order.due ?? 0)
          : (tasks[t]?.order.due ?? 0) + 40 * (chance.even() - 0.5),
      first: isFirst && t === shortTask ? 0 : 1,
    }))
    .sort((a, b) => a.first - b.first || a.at - b.at);
  for (const { t } of order) serve(schedule, t, whim);
  return schedule;
}

export interface BatchEffort {
  /** Looks at vats, at the most. */
  readonly looks: number;
  readonly mostTries: number;
  readonly seed: number;
  /** Sequences tried before chance is asked; all when left out. */
  readonly sequences?: number;
}
export const BATCH_EFFORT: BatchEffort = { looks: 4e5, mostTries: 1500, seed: 20 };
/** So many tries that bring nothing end the search. */
const PATIENCE = 150;
/** A try costs more than its looks; each counts as this many. */
const TRY = 400;

export function construct(problem: BatchProblem, sequence: readonly number[], whim?: Whim): BatchSchedule {
  const schedule = emptyBatches(problem);
  for (const t of sequence) serve(schedule, t, whim);
  return schedule;
}

/**
 * The schedule of batches that is worth most: built order by order, each from what batches have to spare, then
 * with more females, then on a new night; then parts of it are taken out and built anew as a seeded chance has
 * it, and what is no worse is kept. The same problem gives the same schedule everywhere. Yields the share of
 * the effort spent.
 */
export function* searchSteps(
  problem: BatchProblem,
  effort: BatchEffort = BATCH_EFFORT,
): Generator<number, BatchSchedule> {
  const chance = chanceOf(effort.seed);
  let best = emptyBatches(problem);
  let bestWorth = worthOf(best);
  let looks = 0;
  for (const sequence of startingSequences(problem).slice(0, effort.sequences)) {
    const schedule = construct(problem, sequence);
    looks += schedule.looks + TRY;
    const worth = worthOf(schedule);
    if (worth > bestWorth) [best, bestWorth] = [schedule, worth];
    yield Math.min(1, looks / effort.looks);
    if (looks > effort.looks) return best;
  }
  let since = 0;
  for (let tries = 0; tries < effort.mostTries && looks < effort.looks && since < PATIENCE; tries++) {
    const schedule = stirred(best, chance);
    since++;
    looks += schedule.looks - best.looks + TRY + problem.tasks.length * 4;
    const worth = worthOf(schedule);
    if (worth > bestWorth + 1e-9 * Math.abs(bestWorth)) since = 0;
    if (worth >= bestWorth) [best, bestWorth] = [schedule, worth];
    if (tries % 8 === 0) yield Math.min(1, looks / effort.looks);
  }
  return best;
}
export const search = (problem: BatchProblem, effort: BatchEffort = BATCH_EFFORT): BatchSchedule =>
  runNow(searchSteps(problem, effort));

import { runNow, within } from '../../../base/steps';
import type { Rng } from '../../../maths/rng';
import { rngOf } from '../../../maths/rng';
import type { Task } from '../../problem';
import type { BatchProblem } from '../problem';
import type { BatchSchedule, Perturbation } from './schedule';
import { copyOf, dropBatch, emptyBatches } from './schedule';
import { isMetTask, serve, serveInTurns } from './serve';

/** The search for the schedule of batches that is worth most. */

/** All orders met whole are worth this share more: a whole order rather than two nearly so. */
const WHOLE_ORDERS = 0.004;
/** What a night, a female and a male weigh beside the worth of all orders: enough to decide between equals. */
const COST = { night: 4e-5, female: 2e-5, male: 1e-5 } as const;

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

/** Orders that are short and could have a batch, the nearest to a day first. */
const MOST_SHORT = 12;
function shortNear({ need, problem }: BatchSchedule, short: readonly number[], day: number): number[] {
  const far = (t: number): number => Math.abs((problem.tasks[t]?.candidates[0]?.day ?? Infinity) - day);
  return short
    .filter((t) => (need[t] ?? 0) > 0)
    .map((t) => ({ t, far: far(t) }))
    .sort((a, b) => a.far - b.far)
    .slice(0, MOST_SHORT)
    .map(({ t }) => t);
}

/** Some batches near a day are taken out; the orders they were for. */
function takeOut(schedule: BatchSchedule, day: number, rng: Rng): Set<number> {
  const near = [...schedule.batches.values()]
    .filter(({ fixed }) => !fixed)
    .map((batch) => ({ batch, at: Math.abs(batch.day - day) * (0.5 + rng.even()) }))
    .sort((a, b) => a.at - b.at);
  const count = Math.min(near.length, 1 + Math.floor(rng.even() * (rng.even() < 0.3 ? 8 : 4)));
  const freed = new Set<number>();
  for (const { batch } of near.slice(0, count)) {
    for (const { task } of batch.shares) freed.add(task);
    dropBatch(schedule, batch);
  }
  return freed;
}

/** By their day, shaken a little or altogether; now and then the one it is about comes first. */
function sequenceOf(
  { problem }: BatchSchedule,
  list: readonly number[],
  first: number | undefined,
  rng: Rng,
): number[] {
  const isMixed = rng.even() < 0.4;
  const isFirst = rng.even() < 0.5;
  const due = (t: number): number => problem.tasks[t]?.order.due ?? 0;
  return list
    .map((t) => ({
      t,
      at: isMixed ? rng.even() : due(t) + (rng.even() < 0.5 ? 0 : 40 * (rng.even() - 0.5)),
      first: isFirst && t === first ? 0 : 1,
    }))
    .sort((a, b) => a.first - b.first || a.at - b.at)
    .map(({ t }) => t);
}

/** Batches near a time are taken out, and their orders, with those still short, are served anew. */
function stirred(best: BatchSchedule, rng: Rng): BatchSchedule {
  const schedule = copyOf(best);
  const { tasks } = schedule.problem;
  const pick = <T>(list: readonly T[]): T | undefined => list[Math.floor(rng.even() * list.length)];
  const short = tasks.flatMap(({ candidates }, t) =>
    candidates.length === 0 || isMetTask(schedule, t) ? [] : [t],
  );
  const about = short.length > 0 && rng.even() < 0.7 ? pick(short) : undefined;
  const day = tasks[about ?? -1]?.candidates[0]?.day ?? pick([...schedule.batches.values()])?.day ?? 0;
  const freed = takeOut(schedule, day, rng);
  const perturbation: Perturbation | undefined =
    rng.even() < 0.3 ? undefined : { rng, part: 0.05 + 0.4 * rng.even() };
  const list = [...freed, ...shortNear(schedule, short, day).filter((t) => !freed.has(t))];
  const sequence = sequenceOf(schedule, list, about, rng);
  schedule.perturbation = perturbation;
  if (rng.even() < 0.4) serveInTurns(schedule, sequence, perturbation);
  for (const t of sequence) serve(schedule, t, perturbation);
  schedule.perturbation = undefined;
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
export const BATCH_EFFORT: BatchEffort = { looks: 4e5, mostTries: 3000, seed: 20 };
/** Books of up to this many orders are searched twice. */
const FEW_ORDERS = 8;
/** So many tries that bring nothing end the search. */
const PATIENCE = 900;
/** How much worse (of the worth of all orders) a step may be at the beginning, and when to go back to the best. */
const WARM = 0.01;
const BACK = 60;
/** A try costs more than its looks; each counts as this many. */
const TRY = 120;

function construct(problem: BatchProblem, sequence: readonly number[], isInTurns: boolean): BatchSchedule {
  const schedule = emptyBatches(problem);
  if (isInTurns) serveInTurns(schedule, sequence);
  for (const t of sequence) serve(schedule, t);
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
  const rng = rngOf(effort.seed);
  let best = emptyBatches(problem);
  let bestWorth = worthOf(best);
  let looks = 0;
  const starts = startingSequences(problem).slice(0, effort.sequences);
  // A small book costs little: chance is asked a second time, and the better one kept.
  const part = problem.tasks.length > FEW_ORDERS ? 1 : 0.5;
  for (const [i, sequence] of [...starts, ...starts].entries()) {
    const schedule = construct(problem, sequence, i >= starts.length);
    looks += schedule.looks + TRY;
    const worth = worthOf(schedule);
    if (worth > bestWorth) [best, bestWorth] = [schedule, worth];
    yield part * Math.min(1, looks / effort.looks);
    if (looks > effort.looks) return best;
  }
  const found = yield* within(improved(best, rng, effort, looks), 0, part);
  if (part === 1) return found;
  const other = yield* within(improved(best, rngOf(effort.seed + 1), effort, looks), part, 1 - part);
  return worthOf(other) > worthOf(found) ? other : found;
}

/** Steps from the best so far, at first now and then to something worse. Yields the share of the effort spent. */
function* improved(
  first: BatchSchedule,
  rng: Rng,
  effort: BatchEffort,
  spent: number,
): Generator<number, BatchSchedule> {
  const { tasks } = first.problem;
  let [best, bestWorth, looks] = [first, worthOf(first), spent];
  let [since, from, fromWorth] = [0, best, bestWorth];
  const start = tasks.reduce((sum, { value, wanted }) => sum + value * wanted, 0) * WARM;
  for (let tries = 0; tries < effort.mostTries && looks < effort.looks && since < PATIENCE; tries++) {
    const schedule = stirred(from, rng);
    looks += schedule.looks - from.looks + TRY + tasks.length * 4;
    const worth = worthOf(schedule);
    const warmth = start * (1 - Math.max(tries / effort.mostTries, looks / effort.looks));
    if (rng.even() < Math.exp((worth - fromWorth) / Math.max(warmth, 1e-12)))
      [from, fromWorth] = [schedule, worth];
    since = worth > bestWorth + 1e-9 * Math.abs(bestWorth) ? 0 : since + 1;
    if (worth >= bestWorth) [best, bestWorth] = [schedule, worth];
    if (since % BACK === BACK - 1) [from, fromWorth] = [best, bestWorth];
    if (tries % 8 === 0) yield Math.min(1, looks / effort.looks);
  }
  return best;
}
export const search = (problem: BatchProblem, effort: BatchEffort = BATCH_EFFORT): BatchSchedule =>
  runNow(searchSteps(problem, effort));

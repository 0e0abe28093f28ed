// Long: the ways of giving fish share their arithmetic.
import type { Pair } from '../../parents';
import { chooseFemales, pairUp, readyMales, restedFemales } from '../../parents';
import type { Candidate } from '../../problem';
import { shareFor } from '../chance/safety';
import type { Batch, BatchSchedule, Share, Perturbation } from './schedule';
import {
  eggsNeeded,
  freeVats,
  fromOf,
  hasBegun,
  litresFor,
  mixed,
  plannedOnDay,
  releaseParents,
  settleVats,
  strays,
  takeParents,
} from './schedule';

/** Ways of giving a batch fish for one more order. */

const keyOf = (schedule: BatchSchedule, task: number): 'fry' | 'fingerlings' =>
  (schedule.problem.tasks[task]?.product.nurseryDays ?? 0) > 0 ? 'fingerlings' : 'fry';

/** Larvae at first food that a fish of an order takes. */
export const feedingPerFish = ({ problem }: BatchSchedule, task: number): number =>
  problem.tasks[task]?.product.stages[1]?.fishPerFish ?? Infinity;

/** What a batch that stands may still promise, in larvae at first food, and what its shares take of it. */
function spareOfFixed(
  schedule: BatchSchedule,
  { shares }: Batch,
  fixed: NonNullable<Batch['fixed']>,
  task: number,
): number {
  const { safety } = schedule.problem;
  const females = Math.max(1, fixed.batch.pairs.length);
  const sure = (t: number): number => {
    const key = keyOf(schedule, t);
    return fixed.standing.ahead < 2 ? shareFor(safety, key, females) : safety.feeding[key];
  };
  const taken = shares.reduce(
    (sum, share) => sum + (share.fish * feedingPerFish(schedule, share.task)) / sure(share.task),
    0,
  );
  return Math.max(0, ((fixed.standing.feeding - taken) * sure(task)) / feedingPerFish(schedule, task));
}

interface Parents {
  readonly females: readonly number[];
  readonly males: readonly number[];
  readonly most: number;
}
/** Rested fish and hands on the day of a batch, its own parents counted as free. */
function parentsFor(schedule: BatchSchedule, day: number, own: readonly Pair[]): Parents {
  const { problem, use, hands } = schedule;
  schedule.looks += problem.females.length + problem.males.length;
  const females = restedFemales(problem, use, day);
  const males = readyMales(problem, use, day);
  for (const { female } of own) if (!females.includes(female)) females.push(female);
  for (const { male } of own) if (male >= 0 && !males.includes(male)) males.push(male);
  if (own.length > 0) {
    const rank = new Map(problem.byEggs.map((female, i) => [female, i]));
    females.sort((a, b) => (rank.get(a) ?? 0) - (rank.get(b) ?? 0));
    males.sort((a, b) => a - b);
  }
  const handsLeft =
    problem.without === 'hands' ? Infinity : problem.femalesPerDay - (hands.get(day) ?? 0) + own.length;
  const byMales = problem.without === 'males' ? Infinity : males.length * problem.femalesPerMale;
  return { females, males, most: Math.max(0, Math.min(females.length, handsLeft, byMales)) };
}

/** Fish of an order that a batch's own females give on top of what they are there for. */
export function spareOf(schedule: BatchSchedule, batch: Batch, task: number, candidate: Candidate): number {
  if (batch.fixed) return spareOfFixed(schedule, batch, batch.fixed, task);
  const { problem } = schedule;
  if (problem.without === 'females') return batch.pairs.length > 0 ? Infinity : 0;
  const females = batch.pairs.length;
  if (females === 0) return 0;
  const left = batch.eggs - eggsNeeded(schedule, batch.shares, females);
  const each = problem.tasks[task]?.product.eggsPerFish ?? Infinity;
  return Math.max(
    0,
    (left * candidate.eggFactor * shareFor(problem.safety, keyOf(schedule, task), females)) / each,
  );
}

/** The most fish of an order a batch can have with the best females of the day, at most `more` on top of its own. */
export function mostByFemales(
  schedule: BatchSchedule,
  batch: Batch | undefined,
  day: number,
  task: number,
  candidate: Candidate,
  more = Infinity,
): number {
  if (batch?.fixed) return 0;
  const { problem } = schedule;
  const own = batch?.pairs ?? [];
  const all = parentsFor(schedule, day, own);
  const parents = { ...all, most: Math.min(all.most, own.length + more) };
  if (problem.without === 'females') return parents.most > 0 || parents.females.length === 0 ? Infinity : 0;
  const each = (problem.tasks[task]?.product.eggsPerFish ?? Infinity) / candidate.eggFactor;
  return mostEggs(schedule, batch?.shares ?? [], parents, keyOf(schedule, task)) / each;
}
/** Eggs for a product that the best n females leave above the shares, for the best n. */
function mostEggs(
  schedule: BatchSchedule,
  shares: readonly Share[],
  { females, most }: Parents,
  key: 'fry' | 'fingerlings',
): number {
  const { problem } = schedule;
  let [eggs, best] = [0, 0];
  for (let n = 1; n <= most; n++) {
    eggs += problem.females[females[n - 1] ?? -1]?.eggs ?? 0;
    best = Math.max(best, (eggs - eggsNeeded(schedule, shares, n)) * shareFor(problem.safety, key, n));
  }
  return best;
}

/** The most fish of an order that the vats allow a batch. */
export function mostByVats(
  schedule: BatchSchedule,
  batch: Batch,
  task: number,
  candidate: Candidate,
  females: number,
): number {
  const { problem } = schedule;
  if (problem.without === 'vats') return Infinity;
  let most = Infinity;
  for (let stage = 0; stage < candidate.spans.length && most > 0; stage++) {
    const span = candidate.spans[stage];
    if (!span || hasBegun(batch, stage)) continue;
    const from = fromOf(batch, stage) ?? span[0];
    if (batch.fixed && from <= problem.today) continue;
    const scale =
      stage === 0 && females > 0 ? 1 / shareFor(problem.safety, keyOf(schedule, task), females) : 1;
    most = Math.min(
      most,
      roomInStage(schedule, batch, stage, from, span[1]) / (litresFor(problem, task, stage) * scale),
    );
  }
  return most;
}

/** Litres left to a batch in a stage until a time: at every earlier end of its shares they must suffice too. */
function roomInStage(schedule: BatchSchedule, batch: Batch, stage: number, from: number, to: number): number {
  const { problem } = schedule;
  const ends = new Map<number, number>([[to, 0]]);
  for (const { task, candidate, fish } of batch.shares) {
    const end = candidate.spans[stage]?.[1];
    if (end !== undefined) ends.set(end, (ends.get(end) ?? 0) + fish * litresFor(problem, task, stage));
  }
  const own = batch.holds.filter((hold) => hold.stage === stage);
  let [room, needed] = [Infinity, 0];
  for (const [end, litres] of [...ends].sort(([x], [y]) => y - x)) {
    needed += litres;
    if (end > to + 1e-9) continue;
    let free = freeVats(schedule, batch.id, stage, from, end);
    // Its own vats of this stage are its own to give anew.
    for (const { vat, to: until } of own)
      if (!free.includes(vat) && (until >= end - 1e-9 || isFreeAfter(schedule, batch, vat, until, end)))
        free = [...free, vat];
    const litresFree = free.reduce((sum, i) => sum + (problem.vats[i]?.litres ?? 0), 0);
    room = Math.min(room, litresFree - needed);
  }
  return Math.max(0, room);
}
const isFreeAfter = (
  schedule: BatchSchedule,
  { id }: Batch,
  vat: number,
  from: number,
  to: number,
): boolean =>
  (schedule.occupancy[vat] ?? []).every(
    (stay) => stay.run === id || stay.to <= from || stay.from >= to + schedule.problem.cleaningDays - 1e-6,
  );

/** Pairs whose eggs do for the shares: as few females as do it, and of these the ones with least to spare. */
function choosePairs(
  schedule: BatchSchedule,
  batch: Batch,
  perturbation?: Perturbation,
): readonly Pair[] | undefined {
  const { problem } = schedule;
  const { females, males, most } = parentsFor(schedule, batch.day, batch.pairs);
  const isStray = strays(perturbation);
  const order = isStray ? mixed(females, perturbation.rng) : females;
  const eggsOf = (list: readonly number[]): number =>
    list.reduce((sum, i) => sum + (problem.females[i]?.eggs ?? 0), 0);
  const pairsOf = (list: readonly number[]): Pair[] =>
    problem.without === 'males' ? list.map((female) => ({ female, male: -1 })) : pairUp(problem, list, males);
  for (let n = 1; n <= most; n++) {
    const needed = eggsNeeded(schedule, batch.shares, n);
    if (eggsOf(order.slice(0, n)) < needed * (1 - 1e-9)) continue;
    schedule.looks += 2 ** Math.min(10, females.length) / 4;
    const tight = isStray ? order.slice(0, n) : chooseFemales(problem.females, females, needed, n, false);
    for (const list of [tight, order.slice(0, n)]) {
      const pairs = pairsOf(list);
      const eggs = eggsOf(pairs.map(({ female }) => female));
      if (pairs.length > 0 && eggs >= eggsNeeded(schedule, batch.shares, pairs.length) * (1 - 1e-9))
        return pairs;
    }
  }
  // Kin stands in the way: as many of the best as can be paired.
  const able = pairsOf(females).slice(0, most);
  const eggs = eggsOf(able.map(({ female }) => female));
  return able.length > 0 && eggs >= eggsNeeded(schedule, batch.shares, able.length) * (1 - 1e-9)
    ? able
    : undefined;
}

/** Gives up to `fish` of an order to a batch with the parents it has; the fish given, 0 when it cannot be. */
export function addShare(
  schedule: BatchSchedule,
  batch: Batch,
  task: number,
  candidate: Candidate,
  fish: number,
): number {
  const known = batch.shares.find((share) => share.task === task);
  const share: Share = known ?? { task, candidate, fish: 0 };
  const whole = fish >= 1 ? fish : 0;
  if (whole === 0) return 0;
  if (!known) batch.shares.push(share);
  share.fish += whole;
  if (settleVats(schedule, batch)) {
    schedule.need[task] = Math.max(0, (schedule.need[task] ?? 0) - whole);
    return whole;
  }
  share.fish -= whole;
  if (!known) batch.shares.splice(batch.shares.indexOf(share), 1);
  return 0;
}

/** The same with females chosen anew; a batch is begun where there is none on the day. */
export function addWithFemales(
  schedule: BatchSchedule,
  day: number,
  task: number,
  candidate: Candidate,
  fish: number,
  perturbation?: Perturbation,
): number {
  const { problem } = schedule;
  const known = plannedOnDay(schedule, day);
  const batch: Batch = known ?? {
    id: schedule.nextId++,
    day,
    fixed: undefined,
    pairs: [],
    eggs: 0,
    shares: [],
    holds: [],
  };
  const before = batch.pairs;
  const share = batch.shares.find((other) => other.task === task) ?? { task, candidate, fish: 0 };
  const isNew = share.fish === 0;
  if (isNew) batch.shares.push(share);
  share.fish += fish;
  const pairs =
    problem.without === 'females' && before.length > 0 ? before : choosePairs(schedule, batch, perturbation);
  const isEndless = problem.without === 'females';
  if (pairs || isEndless) {
    releaseParents(schedule, batch);
    takeParents(schedule, batch, pairs ?? []);
    if (settleVats(schedule, batch)) {
      if (!known) schedule.batches.set(batch.id, batch);
      schedule.need[task] = Math.max(0, (schedule.need[task] ?? 0) - fish);
      return fish;
    }
    releaseParents(schedule, batch);
    takeParents(schedule, batch, before);
  }
  share.fish -= fish;
  if (isNew) batch.shares.splice(batch.shares.indexOf(share), 1);
  return 0;
}

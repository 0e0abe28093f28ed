import type { Candidate } from '../../problem';
import { addShare, addWithFemales, mostByFemales, mostByVats, spareOf } from './insert';
import type { Batch, BatchSchedule, Perturbation } from './schedule';
import { litresFor, mixed, plannedOnDay, strays } from './schedule';

/** How an order gets its fish: from what batches have to spare, then with more females, then on a new night. */

/** Females stripped for less than this share of an order are not worth it. */
const LEAST = 0.01;
export const MET = 1e-5;
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
  perturbation: Perturbation | undefined,
): Place[] {
  if (places.length > 1 && strays(perturbation)) return mixed(places, perturbation.rng);
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

/** A size that fills some of the vats, or uses some of the females: sizes worth having when less is made. */
function someSize(
  { problem }: BatchSchedule,
  t: number,
  candidate: Candidate,
  { rng }: Perturbation,
): number {
  const stage = Math.floor(rng.even() * (candidate.spans.length + 1));
  const some = <T>(list: readonly T[]): T[] =>
    mixed(list, rng).slice(0, 1 + Math.floor(rng.even() * Math.min(6, list.length)));
  if (stage < candidate.spans.length) {
    const bit = 1 << stage;
    const litres = some(problem.vats.filter(({ holds }) => (holds & bit) !== 0)).reduce(
      (sum, vat) => sum + vat.litres,
      0,
    );
    return litres / litresFor(problem, t, stage);
  }
  // A few females, the best givers or any.
  const count = 1 + Math.floor(rng.even() * Math.min(4, problem.females.length));
  const best = rng.even() < 0.5 ? problem.byEggs : mixed(problem.byEggs, rng);
  const eggs = best.slice(0, count).reduce((sum, i) => sum + (problem.females[i]?.eggs ?? 0), 0);
  return (eggs * candidate.eggFactor) / (problem.tasks[t]?.product.eggsPerFish ?? Infinity);
}

/** A batch that nobody has thought of yet. */
const newBatch = (day: number): Batch => ({
  id: -2,
  day,
  fixed: undefined,
  pairs: [],
  eggs: 0,
  shares: [],
  holds: [],
});

/** What a day could give an order with more females; nothing when it is less than `least`. */
function placeOn(
  schedule: BatchSchedule,
  t: number,
  candidate: Candidate,
  need: number,
  least: number,
  more: number | undefined,
): readonly Place[] {
  const batch = plannedOnDay(schedule, candidate.day);
  const byFemales = mostByFemales(schedule, batch, candidate.day, t, candidate, more);
  if (byFemales < least) return [];
  const probe = batch ?? newBatch(candidate.day);
  const females = Math.max(leastFemales(schedule, t), probe.pairs.length);
  const fish = Math.min(need, byFemales, mostByVats(schedule, probe, t, candidate, females));
  return fish >= least ? [{ batch, candidate, fish, left: 0 }] : [];
}

/** Fish with more females: on a day that has a batch already, or on a new one. */
function fromFemales(
  schedule: BatchSchedule,
  t: number,
  need: number,
  perturbation: Perturbation | undefined,
  more?: number,
): number {
  const task = schedule.problem.tasks[t];
  const least = Math.min(need, Math.max(1, LEAST * (task?.wanted ?? 0))) * (1 - MET);
  const places = (task?.candidates ?? []).flatMap((candidate) =>
    placeOn(schedule, t, candidate, need, least, more),
  );
  if (places.length === 0) return 0;
  for (const { candidate, fish } of choose(schedule, places, need, perturbation))
    for (const part of [
      strays(perturbation) ? Math.min(fish, someSize(schedule, t, candidate, perturbation)) : fish,
      fish / 2,
    ]) {
      if (part < least) continue;
      const got = addWithFemales(schedule, candidate.day, t, candidate, part, perturbation);
      if (got > 0) return got;
    }
  return 0;
}

export function serve(schedule: BatchSchedule, t: number, perturbation?: Perturbation): void {
  const wanted = schedule.problem.tasks[t]?.wanted ?? 0;
  for (let i = 0; i < MOST_BATCHES * 2; i++) {
    const need = schedule.need[t] ?? 0;
    if (need <= MET * wanted || need < 0.5) return;
    if (fromSpare(schedule, t, need) > 0) continue;
    if (fromFemales(schedule, t, need, perturbation) === 0) return;
  }
}

/** Orders in turns: each gets what is to spare and one female more, then the next; false when it got nothing. */
export function serveInTurns(
  schedule: BatchSchedule,
  sequence: readonly number[],
  perturbation?: Perturbation,
): void {
  let queue = [...sequence];
  for (let round = 0; queue.length > 0 && round < MOST_BATCHES * 2; round++)
    queue = queue.filter((t) => {
      const need = schedule.need[t] ?? 0;
      if (isMetTask(schedule, t)) return false;
      return (
        fromSpare(schedule, t, need) > 0 ||
        fromFemales(schedule, t, need, perturbation, leastFemales(schedule, t)) > 0
      );
    });
}

/** Nothing that counts is left to find. */
export const isMetTask = ({ need, problem }: BatchSchedule, t: number): boolean =>
  (need[t] ?? 0) <= MET * (problem.tasks[t]?.wanted ?? 0) + 0.5;

import type { Rng } from '../maths/rng';
import type { Pair, ParentUse } from './parents';
import { chooseFemales, firstUse, pairUp, readyMales, restedFemales } from './parents';
import type { Candidate, Problem, Task } from './problem';
import { stageBit } from './problem';
import type { Occupancy, Stay } from './vats';
import { addStay, chooseVats, isFree, removeRun } from './vats';

/** A run that has its day, its fish and its vats. */
export interface PlacedRun {
  readonly task: number;
  readonly candidate: Candidate;
  /** Fish counted out that it is planned for. */
  readonly fish: number;
  readonly pairs: readonly Pair[];
  /** Vats of each stage of the product. */
  readonly vats: readonly (readonly number[])[];
}

export interface Schedule {
  readonly problem: Problem;
  readonly occupancy: Occupancy;
  readonly use: ParentUse;
  readonly strippedOn: Map<number, number>;
  readonly runs: PlacedRun[];
}

/** Runs under way are no runs of the plan: they have a number no planned run has. */
const UNDERWAY = -1;
const takenStays = ({ taken }: Problem, place: number): Stay[] =>
  taken
    .filter(({ vat }) => vat === place)
    .map(({ from, until }) => ({ from, to: until, run: UNDERWAY }))
    .sort((a, b) => a.from - b.from);
export const emptySchedule = (problem: Problem): Schedule => ({
  problem,
  occupancy: problem.vats.map((_, i) => takenStays(problem, i)),
  use: firstUse(problem),
  strippedOn: new Map(problem.strippedOn),
  runs: [],
});

interface Room {
  readonly candidate: Candidate;
  /** Places of the free vats, by stage. */
  readonly free: readonly (readonly number[])[];
  readonly females: readonly number[];
  readonly males: readonly number[];
  /** Females that hands, males and rest allow. */
  readonly most: number;
  readonly byVats: number;
  readonly byFemales: number;
}

/** Eggs of the first few; females come best giver first. */
function eggsOfFirst({ females: all }: Problem, females: readonly number[], most: number): number {
  let sum = 0;
  for (let k = 0; k < most && k < females.length; k++) sum += all[females[k] ?? -1]?.eggs ?? 0;
  return sum;
}

/** Eggs a fish takes, as females give them in the middle of the year. */
const eggsPerFish = ({ product }: Task, { eggFactor }: Candidate): number => product.eggsPerFish / eggFactor;

/** What a run stripped on the candidate's day could be at most. */
export function roomFor(schedule: Schedule, task: Task, candidate: Candidate): Room {
  const { problem } = schedule;
  const run = schedule.runs.length;
  const { stripAt } = candidate.clock;
  const females = restedFemales(problem, schedule.use, Math.floor(stripAt));
  const males = readyMales(problem, schedule.use, Math.floor(stripAt));
  const hands =
    problem.without === 'hands'
      ? Infinity
      : problem.femalesPerDay - (schedule.strippedOn.get(candidate.day) ?? 0);
  const most = Math.max(
    0,
    Math.min(
      females.length,
      hands,
      problem.without === 'males' ? Infinity : males.length * problem.femalesPerMale,
    ),
  );
  const isEndless = problem.without === 'females' && hands > 0 && males.length > 0;
  const byFemales = isEndless
    ? Infinity
    : most === 0
      ? 0
      : eggsOfFirst(problem, females, most) / eggsPerFish(task, candidate);
  const free: number[][] = [];
  let byVats = Infinity;
  if (byFemales > 0 && problem.without !== 'vats') {
    for (const [s, stage] of task.product.stages.entries()) {
      const [from, to] = candidate.spans[s] ?? [0, 0];
      const bit = stageBit(stage.key);
      const open: number[] = [];
      let litres = 0;
      problem.vats.forEach((vat, i) => {
        if (
          (vat.holds & bit) === 0 ||
          !isFree(schedule.occupancy[i] ?? [], from, to, run, problem.cleaningDays)
        )
          return;
        open.push(i);
        litres += vat.litres;
      });
      free.push(open);
      byVats = Math.min(byVats, litres / stage.litresPerFish);
      if (byVats === 0) break;
    }
  }
  return { candidate, free, females, males, most, byFemales, byVats: byFemales > 0 ? byVats : 0 };
}
export const fishIn = (room: Room): number => Math.min(room.byVats, room.byFemales);

/** How a search strays from the usual choice. */
export interface Whim {
  readonly rng: Rng;
  readonly part: number;
}
const strays = (whim: Whim | undefined): boolean => whim !== undefined && whim.rng.even() < whim.part;

const mixed = (items: readonly number[], rng: Rng): number[] =>
  items
    .map((i) => ({ i, at: rng.even() }))
    .sort((a, b) => a.at - b.at)
    .map(({ i }) => i);

/** Vats are tried in another order when the search strays, so that another set is taken. */
function someVats(
  schedule: Schedule,
  free: readonly number[],
  litres: number,
  whim: Whim | undefined,
): number[] | undefined {
  if (!strays(whim) || !whim) return chooseVats(schedule.problem.vats, free, litres);
  const taken: number[] = [];
  let sum = 0;
  for (const i of mixed(free, whim.rng)) {
    if (sum >= litres * (1 - 1e-9)) break;
    taken.push(i);
    sum += schedule.problem.vats[i]?.litres ?? 0;
  }
  return taken;
}

/**
 * The size a run has when it fills some of the vats free to it, or uses some of the females: the sizes a
 * smaller run is worth having.
 */
export function smallerSize(schedule: Schedule, task: Task, room: Room, rng: Rng): number {
  const { vats, females } = schedule.problem;
  const stage = Math.floor(rng.even() * (task.product.stages.length + 1));
  const asked = task.product.stages[stage];
  const from = asked ? (room.free[stage] ?? []) : room.females;
  const some = mixed(from, rng).slice(
    0,
    1 + Math.floor(rng.even() * (asked ? from.length : Math.min(from.length, room.most))),
  );
  return asked
    ? some.reduce((sum, i) => sum + (vats[i]?.litres ?? 0), 0) / asked.litresPerFish
    : some.reduce((sum, i) => sum + (females[i]?.eggs ?? 0), 0) / eggsPerFish(task, room.candidate);
}

/** Females in any order until there are eggs enough. */
function someFemales(schedule: Schedule, room: Room, eggs: number, rng: Rng): number[] {
  const taken: number[] = [];
  let sum = 0;
  for (const i of mixed(room.females, rng)) {
    if (sum >= eggs * (1 - 1e-9) || taken.length >= room.most) break;
    taken.push(i);
    sum += schedule.problem.females[i]?.eggs ?? 0;
  }
  return taken;
}

/** Vats for every stage, taken at once; undefined, and none taken, when one stage has too few. */
function takeVats(
  schedule: Schedule,
  task: Task,
  room: Room,
  fish: number,
  whim: Whim | undefined,
): number[][] | undefined {
  const { occupancy, runs } = schedule;
  const run = runs.length;
  const vats: number[][] = [];
  if (schedule.problem.without === 'vats') return vats;
  for (const [s, stage] of task.product.stages.entries()) {
    const [from, to] = room.candidate.spans[s] ?? [0, 0];
    const taken = someVats(schedule, room.free[s] ?? [], fish * stage.litresPerFish, whim);
    if (!taken) {
      removeRun(occupancy, run);
      return undefined;
    }
    for (const i of taken) addStay(occupancy[i] ?? [], { from, to, run });
    vats.push(taken);
  }
  return vats;
}

/**
 * Eggs of the paired females; without limit where females are taken as endless, unless none of them can be
 * paired.
 */
const eggsOf = (problem: Problem, chosen: readonly number[], pairs: readonly Pair[]): number =>
  problem.without === 'females' && (chosen.length === 0 || pairs.length > 0)
    ? Infinity
    : pairs.reduce((sum, { female }) => sum + (problem.females[female]?.eggs ?? 0), 0);

/** Puts a run of up to `need` fish into the schedule; gives its fish, 0 when it cannot be. */
export function placeRun(
  schedule: Schedule,
  taskIndex: number,
  task: Task,
  room: Room,
  need: number,
  whim?: Whim,
): number {
  const { problem, use, strippedOn, runs } = schedule;
  const { candidate } = room;
  const target = Math.min(need, room.byVats);
  const eggsNeeded = target * eggsPerFish(task, candidate);
  const chosen =
    whim && strays(whim)
      ? someFemales(schedule, room, eggsNeeded, whim.rng)
      : chooseFemales(problem.females, room.females, eggsNeeded, room.most, strays(whim));
  const pairs =
    problem.without === 'males'
      ? chosen.map((female) => ({ female, male: -1 }))
      : pairUp(problem, chosen, room.males);
  const eggs = eggsOf(problem, chosen, pairs);
  const fish = Math.min(target, eggs / eggsPerFish(task, candidate));
  const vats = fish >= 1 ? takeVats(schedule, task, room, fish, whim) : undefined;
  if (!vats) return 0;
  for (const { female, male } of pairs) {
    use.females[female]?.push(candidate.day);
    if (use.males[male]?.at(-1) !== candidate.day) use.males[male]?.push(candidate.day);
  }
  strippedOn.set(candidate.day, (strippedOn.get(candidate.day) ?? 0) + pairs.length);
  runs.push({ task: taskIndex, candidate, fish, pairs, vats });
  return fish;
}

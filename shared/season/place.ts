import type { Chance } from './odds/chance';
import type { Pair, ParentUse } from './parents';
import { chooseFemales, firstUse, pairUp, readyMales, restedFemales } from './parents';
import type { Candidate, Problem, Task } from './problem';
import { stageBit } from './problem';
import type { Occupancy } from './vats';
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

export const emptySchedule = (problem: Problem): Schedule => ({
  problem, occupancy: problem.vats.map(() => []), use: firstUse(problem), strippedOn: new Map(), runs: [],
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

const sumTop = (eggs: number[], most: number): number => eggs.sort((a, b) => b - a).slice(0, most).reduce((sum, e) => sum + e, 0);

/** What a run stripped on the candidate's day could be at most. */
export function roomFor(schedule: Schedule, task: Task, candidate: Candidate): Room {
  const { problem } = schedule;
  const run = schedule.runs.length;
  const { stripAt } = candidate.clock;
  const females = restedFemales(problem, schedule.use, Math.floor(stripAt));
  const males = readyMales(problem, schedule.use, Math.floor(stripAt));
  const hands = problem.femalesPerDay - (schedule.strippedOn.get(candidate.day) ?? 0);
  const most = Math.max(0, Math.min(females.length, hands, males.length * problem.femalesPerMale));
  const byFemales = most === 0 ? 0 : sumTop(females.map((i) => problem.females[i]?.eggs ?? 0), most) / task.product.eggsPerFish;
  const free: number[][] = [];
  let byVats = Infinity;
  if (byFemales > 0) {
    for (const [s, stage] of task.product.stages.entries()) {
      const [from, to] = candidate.spans[s] ?? [0, 0];
      const bit = stageBit(stage.key);
      const open: number[] = [];
      let litres = 0;
      problem.vats.forEach((vat, i) => {
        if ((vat.holds & bit) === 0 || !isFree(schedule.occupancy[i] ?? [], from, to, run, problem.cleaningDays)) return;
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
export interface Whim { readonly chance: Chance; readonly part: number }
const strays = (whim: Whim | undefined): boolean => whim !== undefined && whim.chance.even() < whim.part;

/** Vats are tried in another order when the search strays, so that another set is taken. */
function someVats(schedule: Schedule, free: readonly number[], litres: number, whim: Whim | undefined): number[] | undefined {
  if (!strays(whim) || !whim) return chooseVats(schedule.problem.vats, free, litres);
  const mixed = free.map((i) => ({ i, at: whim.chance.even() })).sort((a, b) => a.at - b.at).map(({ i }) => i);
  const taken: number[] = [];
  let sum = 0;
  for (const i of mixed) {
    if (sum >= litres * (1 - 1e-9)) break;
    taken.push(i);
    sum += schedule.problem.vats[i]?.litres ?? 0;
  }
  return taken;
}

/** Puts a run of up to `need` fish into the schedule; gives its fish, 0 when it cannot be. */
export function placeRun(schedule: Schedule, taskIndex: number, task: Task, room: Room, need: number, whim?: Whim): number {
  const { problem, occupancy, use, strippedOn, runs } = schedule;
  const { candidate } = room;
  const target = Math.min(need, room.byVats);
  const chosen = chooseFemales(problem.females, room.females, target * task.product.eggsPerFish, room.most, strays(whim));
  const pairs = pairUp(problem, chosen, room.males);
  const eggs = pairs.reduce((sum, { female }) => sum + (problem.females[female]?.eggs ?? 0), 0);
  const fish = Math.min(target, eggs / task.product.eggsPerFish);
  if (!(fish >= 1)) return 0;
  const run = runs.length;
  const vats: number[][] = [];
  for (const [s, stage] of task.product.stages.entries()) {
    const [from, to] = candidate.spans[s] ?? [0, 0];
    const taken = someVats(schedule, room.free[s] ?? [], fish * stage.litresPerFish, whim);
    if (!taken) {
      removeRun(occupancy, run);
      return 0;
    }
    for (const i of taken) addStay(occupancy[i] ?? [], { from, to, run });
    vats.push(taken);
  }
  for (const { female, male } of pairs) {
    use.females[female]?.push(candidate.day);
    if (use.males[male]?.at(-1) !== candidate.day) use.males[male]?.push(candidate.day);
  }
  strippedOn.set(candidate.day, (strippedOn.get(candidate.day) ?? 0) + pairs.length);
  runs.push({ task: taskIndex, candidate, fish, pairs, vats });
  return fish;
}

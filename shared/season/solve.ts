import type { Rng } from '../maths/rng';
import { rngOf } from '../maths/rng';
import type { Schedule, Whim } from './place';
import { emptySchedule, fishIn, placeRun, roomFor, smallerSize } from './place';
import type { Problem, Task } from './problem';
import { runNow } from '../base/steps';

/** A run smaller than this share of its order is not worth a night. */
const LEAST_RUN = 0.01;
/** An order is split over at most this many runs. */
const MOST_RUNS = 8;
/** Less than this share of an order short counts as met. */
const MET = 1e-6;

type Rooms = ReturnType<typeof roomFor>;

/** The latest day that does all that is left, or else the day that does most. */
function bestRoom(rooms: readonly Rooms[], need: number): Rooms | undefined {
  let best: Rooms | undefined;
  for (const room of rooms) {
    const fish = fishIn(room);
    if (fish >= need * (1 - MET)) return room;
    if (!best || fish > fishIn(best) * 1.001) best = room;
  }
  return best;
}

function chooseRoom(
  schedule: Schedule,
  task: Task,
  need: number,
  whim: Whim | undefined,
  tried: ReadonlySet<number>,
): Rooms | undefined {
  const least = Math.min(need, Math.max(1, LEAST_RUN * task.wanted)) * (1 - MET);
  const rooms: Rooms[] = [];
  for (const candidate of task.candidates) {
    if (tried.has(candidate.day)) continue;
    const room = roomFor(schedule, task, candidate);
    const fish = fishIn(room);
    if (fish < least) continue;
    // Candidates come latest first: the first that does it all is the one wanted.
    if (!whim && fish >= need * (1 - MET)) return room;
    rooms.push(room);
  }
  if (whim && rooms.length > 1 && whim.rng.even() < whim.part)
    return rooms[Math.floor(whim.rng.even() * rooms.length)];
  return bestRoom(rooms, need);
}

interface Turn {
  readonly task: number;
  readonly need: number;
  readonly runs: number;
}

/**
 * Runs for an order until it is met, or until the search strays and lets the next order come first; gives
 * what is left to do.
 */
function serve(
  schedule: Schedule,
  { task: t, need: wanted, runs: before }: Turn,
  whim: Whim | undefined,
  isInTurns: boolean,
): Turn | undefined {
  const task = schedule.problem.tasks[t];
  if (!task) return undefined;
  let need = wanted;
  const tried = new Set<number>();
  for (let runs = before; runs < MOST_RUNS && need > MET * task.wanted;) {
    const room = chooseRoom(schedule, task, need, whim, tried);
    if (!room) return undefined;
    // Now and then a run is made smaller than it could be, to leave room for another.
    const size = whim && whim.rng.even() < whim.part ? smallerSize(schedule, task, room, whim.rng) : need;
    const fish = placeRun(schedule, t, task, room, Math.min(need, size), whim);
    if (fish === 0) {
      tried.add(room.candidate.day);
      continue;
    }
    need -= fish;
    runs++;
    if (isInTurns || (whim && whim.rng.even() < whim.part)) return { task: t, need, runs };
  }
  return undefined;
}

/**
 * Orders one after another, each as far as it goes; in turns, each gets one run before any gets its second.
 */
export function construct(
  problem: Problem,
  sequence: readonly number[],
  whim?: Whim,
  isInTurns = false,
): Schedule {
  const schedule = emptySchedule(problem);
  const queue: Turn[] = sequence.map((task) => ({ task, need: problem.tasks[task]?.wanted ?? 0, runs: 0 }));
  for (const turn of queue) {
    const left = serve(schedule, turn, whim, isInTurns);
    if (left) queue.push(left);
  }
  return schedule;
}

/** Fish of each order, not more than wanted. */
export function deliveredOf({ problem, runs }: Schedule): number[] {
  const fish = problem.tasks.map(() => 0);
  for (const run of runs) fish[run.task] = (fish[run.task] ?? 0) + run.fish;
  return fish.map((n, t) => Math.min(n, problem.tasks[t]?.wanted ?? 0));
}

/**
 * All orders met whole are worth this share more: a buyer would rather have one order whole than two nearly
 * so.
 */
const WHOLE_ORDERS = 0.004;
/** Worth of what is delivered; of two equal ones the one with fewer runs is better by a hair. */
export function worthOf(schedule: Schedule): number {
  const { tasks } = schedule.problem;
  const whole = tasks.reduce((sum, t) => sum + t.value * t.wanted, 0);
  const delivered = deliveredOf(schedule);
  const met = delivered.filter((n, t) => n >= (tasks[t]?.wanted ?? 0) * (1 - 1e-5)).length;
  const worth = delivered.reduce((sum, n, t) => sum + n * (tasks[t]?.value ?? 0), 0);
  return worth + whole * ((WHOLE_ORDERS * met) / Math.max(1, tasks.length) - 1e-7 * schedule.runs.length);
}
export const isMet = (schedule: Schedule): boolean =>
  deliveredOf(schedule).every((n, t) => n >= (schedule.problem.tasks[t]?.wanted ?? 0) * (1 - 1e-5));

/** Sequences worth trying before chance is asked. */
function startingSequences({ tasks }: Problem): number[][] {
  const all = tasks.map((_, t) => t);
  const by = (key: (t: Task) => number): number[] =>
    [...all].sort((a, b) => {
      const [x, y] = [tasks[a], tasks[b]];
      return x && y ? key(x) - key(y) || a - b : 0;
    });
  const litreDays = (t: Task): number =>
    t.product.stages.reduce((sum, s, i) => {
      const [from, to] = t.candidates[0]?.spans[i] ?? [0, 1];
      return sum + s.litresPerFish * (to - from);
    }, 0);
  return [
    by((t) => t.order.due),
    by((t) => litreDays(t) / t.value),
    by((t) => t.product.eggsPerFish / t.value),
    by((t) => -t.order.due),
    by((t) => t.candidates.length),
  ];
}

/** A sequence with a short order moved forward, or two exchanged. */
function stirred(sequence: readonly number[], short: readonly number[], rng: Rng): number[] {
  const next = [...sequence];
  const pick = (n: number): number => Math.floor(rng.even() * n);
  const moves = 1 + pick(2);
  for (let i = 0; i < moves; i++) {
    const t =
      short.length > 0 && rng.even() < 0.7
        ? (short[pick(short.length)] ?? 0)
        : (next[pick(next.length)] ?? 0);
    const at = next.indexOf(t);
    next.splice(at, 1);
    next.splice(pick(next.length + 1), 0, t);
  }
  return next;
}

/** Work of building a schedule once, in looks at a vat or a fish: bounds how often it is tried. */
const workOf = ({ tasks, vats, females, males }: Problem): number =>
  tasks.reduce(
    (sum, t) =>
      sum +
      2 *
        Math.max(1, t.candidates.length) *
        (t.product.stages.length * vats.length + females.length + males.length + 8),
    0,
  );
/** From about this work on a try costs so much that fewer are made. */
const LARGE = 1e5;
export interface Effort {
  readonly work: number;
  readonly mostTries: number;
  readonly seed: number;
}
export const EFFORT: Effort = { work: 1.2e6, mostTries: 4000, seed: 20 };

/**
 * The schedule that delivers most.
 *
 * Orders are planned one after another on the latest day that does it, with the least water and the fewest
 * spare eggs. When that leaves one short, other sequences are tried, then sequences and choices strayed by a
 * seeded chance from the best found so far, until everything is met or the effort is spent. The same problem
 * gives the same schedule everywhere. Yields the share of the effort spent.
 */
export function* solveSteps(problem: Problem, effort: Effort = EFFORT): Generator<number, Schedule> {
  const rng = rngOf(effort.seed);
  const work = workOf(problem);
  const tries = Math.max(
    1,
    Math.min(effort.mostTries, Math.floor(effort.work / (work * (1 + work / LARGE)))),
  );
  let [best, bestWorth, bestSequence]: [Schedule, number, readonly number[]] = [
    emptySchedule(problem),
    -1,
    [],
  ];
  let count = 0;
  const look = (sequence: readonly number[], whim?: Whim, isInTurns = false): boolean => {
    const schedule = construct(problem, sequence, whim, isInTurns);
    const worth = worthOf(schedule);
    if (worth > bestWorth - 1e-12) [best, bestWorth, bestSequence] = [schedule, worth, sequence];
    count++;
    return isMet(best) || count >= tries;
  };
  for (const sequence of startingSequences(problem)) {
    if (look(sequence)) return best;
    yield count / tries;
  }
  for (;;) {
    const delivered = deliveredOf(best);
    const short = delivered.flatMap((n, t) => (n < (problem.tasks[t]?.wanted ?? 0) * (1 - 1e-5) ? [t] : []));
    const whim = rng.even() < 0.3 ? undefined : { rng, part: 0.05 + 0.4 * rng.even() };
    if (look(stirred(bestSequence, short, rng), whim, rng.even() < 0.2)) return best;
    yield count / tries;
  }
}

export const solve = (problem: Problem, effort: Effort = EFFORT): Schedule =>
  runNow(solveSteps(problem, effort));

import type { Candidate, Problem, Task } from '../../shared/season/problem';
import { stageBit } from '../../shared/season/problem';

/**
 * The most that can be delivered, by trying every set of females, every set of vats for every stage and every
 * day of every run. Written apart from the scheduler: it shares only the numbers of the problem. For small
 * problems with unrelated, sufficient males.
 */
interface Stay {
  readonly vat: number;
  readonly from: number;
  readonly to: number;
  readonly run: number;
}
interface State {
  readonly stays: readonly Stay[];
  readonly strips: readonly { readonly female: number; readonly day: number }[];
  readonly runs: number;
}

const setsOf = (items: readonly number[]): number[][] => {
  const sets: number[][] = [];
  for (let bits = 1; bits < 1 << items.length; bits++)
    sets.push(items.filter((_, i) => (bits & (1 << i)) !== 0));
  return sets;
};
/** Sets that hold the litres, none of which holds them without one of its vats. */
const leastSets = (items: readonly number[], litresOf: (i: number) => number, litres: number): number[][] => {
  const holds = (set: readonly number[]): boolean =>
    set.reduce((sum, i) => sum + litresOf(i), 0) >= litres * (1 - 1e-9);
  return setsOf(items).filter(
    (set) => holds(set) && set.every((left) => !holds(set.filter((i) => i !== left))),
  );
};

export function mostWorth(problem: Problem, runsEach: number): number {
  const bound = (from: number, need: number): number =>
    problem.tasks
      .slice(from + 1)
      .reduce((sum, t) => sum + t.wanted * t.value, need * (problem.tasks[from]?.value ?? 0));
  let best = 0;

  const vatsFor = (
    state: State,
    task: Task,
    candidate: Candidate,
    stage: number,
    fish: number,
    then: (state: State) => void,
  ): void => {
    const asked = task.product.stages[stage];
    if (!asked) {
      then({ ...state, runs: state.runs + 1 });
      return;
    }
    const [from, to] = candidate.spans[stage] ?? [0, 0];
    const free = problem.vats
      .map((_, i) => i)
      .filter(
        (i) =>
          ((problem.vats[i]?.holds ?? 0) & stageBit(asked.key)) !== 0 &&
          state.stays.every(
            (s) =>
              s.vat !== i ||
              s.to + (s.run === state.runs ? 0 : problem.cleaningDays) <= from + 1e-6 ||
              to + (s.run === state.runs ? 0 : problem.cleaningDays) <= s.from + 1e-6,
          ),
      );
    for (const set of leastSets(free, (i) => problem.vats[i]?.litres ?? 0, fish * asked.litresPerFish))
      vatsFor(
        { ...state, stays: [...state.stays, ...set.map((vat) => ({ vat, from, to, run: state.runs }))] },
        task,
        candidate,
        stage + 1,
        fish,
        then,
      );
  };
  /**
   * Fish the free water allows: no smaller set of vats is a better choice for a run that could be larger, but
   * a smaller run may be.
   */
  const sizes = (state: State, task: Task, candidate: Candidate, eggs: number, need: number): number[] => {
    const whole = Math.min(need, eggs / task.product.eggsPerFish);
    const limits = new Set<number>([whole]);
    task.product.stages.forEach((stage, s) => {
      const [from, to] = candidate.spans[s] ?? [0, 0];
      const free = problem.vats
        .map((_, i) => i)
        .filter(
          (i) =>
            ((problem.vats[i]?.holds ?? 0) & stageBit(stage.key)) !== 0 &&
            state.stays.every(
              (stay) =>
                stay.vat !== i ||
                stay.to + problem.cleaningDays <= from + 1e-6 ||
                to + problem.cleaningDays <= stay.from + 1e-6,
            ),
        );
      for (const set of setsOf(free))
        limits.add(
          Math.min(
            whole,
            set.reduce((sum, i) => sum + (problem.vats[i]?.litres ?? 0), 0) / stage.litresPerFish,
          ),
        );
    });
    return [...limits].filter((n) => n >= 1).sort((a, b) => b - a);
  };

  const visit = (state: State, t: number, runsLeft: number, need: number, worth: number): void => {
    best = Math.max(best, worth);
    const task = problem.tasks[t];
    if (!task || worth + bound(t, need) <= best * (1 + 1e-9)) return;
    if (runsLeft > 0 && need >= 1) {
      for (const candidate of task.candidates) {
        const able = problem.females
          .map((_, i) => i)
          .filter(
            (i) =>
              (problem.females[i]?.used ?? []).every(
                (day) => Math.abs(candidate.day - day) >= problem.restDays,
              ) &&
              state.strips.every(
                ({ female, day }) => female !== i || Math.abs(day - candidate.day) >= problem.restDays,
              ),
          );
        for (const set of setsOf(able)) {
          if (
            set.length + state.strips.filter(({ day }) => day === candidate.day).length >
            problem.femalesPerDay
          )
            continue;
          const eggs = set.reduce((sum, i) => sum + (problem.females[i]?.eggs ?? 0), 0);
          for (const fish of sizes(state, task, candidate, eggs, need))
            vatsFor(state, task, candidate, 0, fish, (next) => {
              visit(
                {
                  ...next,
                  strips: [...state.strips, ...set.map((female) => ({ female, day: candidate.day }))],
                },
                t,
                runsLeft - 1,
                need - fish,
                worth + fish * task.value,
              );
            });
        }
      }
    }
    visit(state, t + 1, runsEach, problem.tasks[t + 1]?.wanted ?? 0, worth);
  };
  visit({ stays: [], strips: [], runs: 0 }, 0, runsEach, problem.tasks[0]?.wanted ?? 0, 0);
  return best;
}

import type { Problem, ProblemFemale } from './problem';

/** When each female was or will be stripped, and each male used; ascending order is not kept. */
export interface ParentUse {
  readonly females: number[][];
  readonly males: number[][];
}

export const firstUse = (problem: Problem): ParentUse => ({
  females: problem.females.map(({ used }) => [...used]),
  males: problem.males.map(({ used }) => [...used]),
});

/** Rest on both sides: a run may be planned before one that already is. */
const rested = (uses: readonly number[], at: number, rest: number): boolean => {
  for (const used of uses) if (Math.abs(at - used) < rest - 1e-9) return false;
  return true;
};
const UNUSED: readonly number[] = [];

/** The best giver first. */
export const restedFemales = (problem: Problem, use: ParentUse, day: number): number[] =>
  problem.byEggs.filter((i) => rested(use.females[i] ?? UNUSED, day, problem.restDays));

/** Males whose milt is taken with the gland are used once; where they live they rest. */
export function readyMales(problem: Problem, use: ParentUse, day: number): number[] {
  const ready: number[] = [];
  for (let i = 0; i < use.males.length; i++) {
    const uses = use.males[i] ?? UNUSED;
    if (problem.males[i]?.isGone) continue;
    if (problem.malesSurvive ? rested(uses, day, problem.restDays) : uses.length === 0) ready.push(i);
  }
  return ready;
}

export interface Pair {
  readonly female: number;
  readonly male: number;
}
const isKin = (a: string, b: string): boolean => a !== '' && a === b;

/**
 * Males for females so that no brother meets his sister: the females with the fewest possible males first,
 * each with the male that already serves most and still has room. Females no male is left for are left out.
 */
export function pairUp(problem: Problem, females: readonly number[], males: readonly number[]): Pair[] {
  const load = new Map<number, number>();
  const possible = (f: number): number[] =>
    males.filter((m) => !isKin(problem.females[f]?.family ?? '', problem.males[m]?.family ?? ''));
  const choices = females
    .map((female) => ({ female, males: possible(female) }))
    .sort((a, b) => a.males.length - b.males.length);
  const pairs: Pair[] = [];
  for (const { female, males: able } of choices) {
    let best = -1;
    let bestLoad = -1;
    for (const m of able) {
      const served = load.get(m) ?? 0;
      if (served < problem.femalesPerMale && served > bestLoad) {
        best = m;
        bestLoad = served;
      }
    }
    if (best < 0) continue;
    load.set(best, bestLoad + 1);
    pairs.push({ female, male: best });
  }
  return pairs;
}

/** Up to this many females every set of them is weighed. */
const ALL_SETS = 10;
const ENOUGH = 1 - 1e-9;

/**
 * Females that give the eggs: the set with the fewest eggs to spare, at most `most` of them. With `under` the
 * set with the most eggs that does not pass the need, where there is one. When all are not enough, the best
 * givers. `byEggs` lists the best giver first.
 */
export function chooseFemales(
  all: readonly ProblemFemale[],
  byEggs: readonly number[],
  eggs: number,
  most: number,
  under: boolean,
): number[] {
  const eggsOf = (i: number): number => all[i]?.eggs ?? 0;
  const top = byEggs.slice(0, most);
  if (top.reduce((sum, i) => sum + eggsOf(i), 0) < eggs * ENOUGH) return top;
  if (byEggs.length <= ALL_SETS) return bestSet(byEggs, eggsOf, eggs, most, under);
  const taken: number[] = [];
  let left = eggs;
  for (const [k, i] of byEggs.entries()) {
    if (eggsOf(i) < left * ENOUGH && taken.length + 1 < most) {
      taken.push(i);
      left -= eggsOf(i);
      continue;
    }
    if (eggsOf(i) < left * ENOUGH) return top;
    let last = k;
    while (last + 1 < byEggs.length && eggsOf(byEggs[last + 1] ?? -1) >= left * ENOUGH) last++;
    return [...taken, byEggs[last] ?? i];
  }
  return taken;
}

function bestSet(
  able: readonly number[],
  eggsOf: (i: number) => number,
  eggs: number,
  most: number,
  under: boolean,
): number[] {
  let best = 0;
  let bestCost = Infinity;
  for (let set = 1; set < 1 << able.length; set++) {
    let sum = 0;
    let size = 0;
    for (let k = 0; k < able.length; k++) {
      if ((set & (1 << k)) === 0) continue;
      sum += eggsOf(able[k] ?? -1);
      size++;
    }
    if (size > most) continue;
    const isEnough = sum >= eggs * ENOUGH;
    const cost = (under !== isEnough ? Math.abs(sum - eggs) : Math.abs(sum - eggs) + 1e12) + size * 1e-3;
    if (cost < bestCost) {
      best = set;
      bestCost = cost;
    }
  }
  return able.filter((_, k) => (best & (1 << k)) !== 0);
}

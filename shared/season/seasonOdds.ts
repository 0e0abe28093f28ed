import { eggsPerFemale } from '../families/brood/kernels/eggs';
import type { Assumed } from '../families/assumptions';
import type { OrderBook } from './orderBook';
import { femalesFor, femalesInSeasons } from '../families/money/odds/femalesNeeded';
import type { Range } from '../maths/quantiles';
import { rangeOf, shareReaching } from '../maths/quantiles';
import type { ChainRun, SeasonChain, StageSpread } from '../families/money/odds/simulate';
import { simulateSeason } from '../families/money/odds/simulate';
import type { PlacedRun } from './place';
import type { Problem, Task } from './problem';
import { SPREAD_SHARES, eggSpreadOf, shareSpreadOf } from './spreads';

export interface OrderOdds {
  readonly odds: Range & { readonly certainty: number };
  readonly femalesForNinety: number;
}

const NINETY = 0.9;
/** Enough for a number of females: it moves by one at most between seeds. */
const FEMALE_DRAWS = 1000;
const MOST_FEMALES = 3000;

const stageSpreads = (book: OrderBook, a: Assumed): readonly StageSpread[] => [
  ...SPREAD_SHARES.map((key) => shareSpreadOf(book, a, key)),
  { mean: a.gradingShare, runs: 0, season: 0 },
];
const stagesOf = (task: Task): readonly number[] =>
  task.product.nurseryDays > 0 ? [0, 1, 2, 3, 4] : [0, 1, 2, 4];
/** What a longer or shorter stage makes of the usual survivals. */
const scaleOf = (task: Task, a: Assumed): number => {
  const [, , fry = 1, nursery = 1] = task.product.survivals;
  return (fry / a.frySurvival) * (task.product.nurseryDays > 0 ? nursery / a.nurserySurvival : 1);
};

function runOf(
  problem: Problem,
  a: Assumed,
  { task: t, candidate, pairs, vats }: PlacedRun,
): ChainRun | undefined {
  const task = problem.tasks[t];
  if (!task) return undefined;
  const most = task.product.stages.map(
    (stage, s) =>
      (vats[s] ?? []).reduce((sum, v) => sum + (problem.vats[v]?.litres ?? 0), 0) / stage.litresPerFish,
  );
  return {
    order: t,
    stages: stagesOf(task),
    scale: scaleOf(task, a),
    most: Math.floor(Math.min(...most)),
    eggs: pairs.map(
      ({ female }) =>
        candidate.eggFactor *
        eggsPerFemale(problem.females[female]?.kilograms ?? 0, a.eggShare, a.eggsPerGram),
    ),
  };
}

/** The season of a schedule as chance sees it. */
export const chainOf = (
  book: OrderBook,
  problem: Problem,
  a: Assumed,
  placed: readonly PlacedRun[],
): SeasonChain => ({
  runs: placed.map((run) => runOf(problem, a, run)).filter((run) => run !== undefined),
  orders: problem.tasks.length,
  stages: stageSpreads(book, a),
  eggs: eggSpreadOf(book),
  ovulating: a.ovulating,
  lost: book.lost,
});

function femalesForNinety(
  book: OrderBook,
  a: Assumed,
  task: Task,
  placed: readonly PlacedRun[],
  weight: number,
): number {
  const runs = placed.length;
  const factor =
    runs > 0
      ? placed.reduce((sum, { candidate }) => sum + candidate.eggFactor, 0) / runs
      : (task.candidates[0]?.eggFactor ?? 1);
  const stages = stageSpreads(book, a);
  return femalesFor(
    femalesInSeasons(
      {
        wanted: Math.max(0, task.order.number - task.underway),
        stages: stagesOf(task).map((i) => stages[i] ?? { mean: 1, runs: 0, season: 0 }),
        eggs: eggSpreadOf(book),
        ovulating: a.ovulating,
        eggsPerFemale: factor * eggsPerFemale(weight, a.eggShare, a.eggsPerGram) * scaleOf(task, a),
        runs: Math.max(1, runs),
        lost: book.lost,
        most: MOST_FEMALES,
      },
      FEMALE_DRAWS,
      book.seed,
    ),
    NINETY,
  );
}

/**
 * P10, P50 and P90 of each order, how surely it is met, and the females that would make it nine times in ten.
 * Yields the share done.
 */
export function* seasonOddsSteps(
  book: OrderBook,
  problem: Problem,
  a: Assumed,
  placed: readonly PlacedRun[],
  draws: number,
): Generator<number, OrderOdds[]> {
  const totals = simulateSeason(chainOf(book, problem, a, placed), draws, book.seed);
  const weight = book.females.reduce((sum, f) => sum + f.kilograms, 0) / Math.max(1, book.females.length);
  const odds: OrderOdds[] = [];
  for (const [t, task] of problem.tasks.entries()) {
    // Fish under way are counted as expected: they are past the steps that vary most.
    const sorted = (totals[t] ?? new Float64Array(draws)).map((n) => n + task.underway).sort();
    const own = placed.filter((run) => run.task === t);
    odds.push({
      odds: { ...rangeOf(sorted), certainty: shareReaching(sorted, task.order.number) },
      femalesForNinety: weight > 0 ? femalesForNinety(book, a, task, own, weight) : Infinity,
    });
    yield (t + 1) / problem.tasks.length;
  }
  return odds;
}

import { rngOf } from '../../../maths/rng';
import { shareSpread } from './shareSpread';
import type { EggSpread, StageSpread } from './simulate';

export interface FemalesQuestion {
  readonly wanted: number;
  readonly eggsPerFemale: number;
  readonly stages: readonly StageSpread[];
  readonly eggs: EggSpread;
  readonly ovulating: number;
  /** Females are spread evenly over this many runs. */
  readonly runs: number;
  readonly lost: number;
  readonly most: number;
}

/** A reading of the spreads, made once for all draws. */
const readers = (
  question: FemalesQuestion,
): readonly { readonly at: (z: number) => number; readonly shared: number; readonly own: number }[] =>
  question.stages.map(({ mean, runs, season }) => {
    const total = Math.hypot(runs, season);
    return {
      at: shareSpread(mean, total),
      shared: total > 0 ? season / total : 0,
      own: total > 0 ? runs / total : 0,
    };
  });

/**
 * Females that would have met the wish in each drawn season, ascending: females are added one by one, run
 * after run in turn, until the fish they bring reach it. The share p of the list is the answer for a
 * certainty p, so more certainty never takes fewer. The chance of single eggs is left out: it is a hundredth
 * of the rest. A season that `most` females cannot meet counts as Infinity. In: the wish and the spreads,
 * draws, seed. Out: ascending list. Source: DEFINITION.
 */
export function femalesInSeasons(question: FemalesQuestion, draws: number, seed: number): Float64Array {
  const rng = rngOf(seed);
  const stages = readers(question);
  const { eggs, runs, most, ovulating, lost } = question;
  const counts = new Float64Array(draws);
  const fishPerEgg = new Float64Array(runs);
  const bell = (deviation: number): number =>
    deviation > 0 ? Math.exp(deviation * (rng.normal() - deviation / 2)) : 1;
  for (let draw = 0; draw < draws; draw++) {
    const season = stages.map(() => rng.normal());
    const seasonEggs = bell(eggs.season);
    for (let r = 0; r < runs; r++) {
      let share = seasonEggs * bell(eggs.runs);
      stages.forEach(({ at, shared, own }, i) => {
        share *= at(shared * (season[i] ?? 0) + own * rng.normal());
      });
      fishPerEgg[r] = lost > 0 && rng.even() < lost ? 0 : share;
    }
    let fish = 0;
    // Where every run is lost, no number of females helps.
    let females = fishPerEgg.some((f) => f > 0) ? 0 : most;
    while (fish < question.wanted && females < most) {
      const gives = ovulating >= 1 || rng.even() < ovulating;
      if (gives) fish += question.eggsPerFemale * bell(eggs.females) * (fishPerEgg[females % runs] ?? 0);
      females++;
    }
    counts[draw] = fish >= question.wanted ? females : Infinity;
  }
  return counts.sort();
}

/** Females for a certainty: the smallest number that met the wish in at least that share of the seasons. */
export const femalesFor = (ascending: ArrayLike<number>, certainty: number): number =>
  ascending[Math.max(0, Math.ceil(certainty * ascending.length - 1e-9) - 1)] ?? NaN;

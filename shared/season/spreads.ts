import type { EggSpread, StageSpread } from './odds/simulate';

/**
 * How much a season and its runs vary, until the hatchery's own runs say. Chosen here, no source; the published means they surround
 * differ far more (hatch 28 to 59 % between two seasons, GRAAF95).
 */
const RUNS = 0.3; // of √(m(1 − m)), between runs of a season; chosen here, no source
const SEASON = 0.2; // of √(m(1 − m)), shared by a season; chosen here, no source

export const shareSpreadOf = (mean: number): StageSpread => {
  const most = Math.sqrt(mean * (1 - mean));
  return { mean, runs: RUNS * most, season: SEASON * most };
};
/** Deviations of the logarithm of eggs; chosen here, no source. */
export const EGG_SPREAD: EggSpread = { females: 0.3, runs: 0.15, season: 0.2 };

import type { RateCurve } from './rateCurve';
import { curveFromBase, curveFromHours } from './rateCurve';
import type { Stage, Tolerance } from './tolerance';
import { toleranceFor } from './tolerance';

export type { Stage };

/**
 * Hours of one stage against temperature, as one publication gives them.
 * memory   – the table was recalled, the printed page not seen
 * seen     – the hours were read in the publication or an abstract of it
 * computed – one measured duration, carried to other temperatures with a published base temperature
 */
export interface Profile {
  readonly stage: Stage;
  readonly name: string;
  readonly curve: RateCurve;
  /** Published spread around the hours of the curve, as shares of them. */
  readonly spread: readonly [number, number];
  readonly source: string;
  readonly standing: 'memory' | 'seen' | 'computed';
  readonly species: string;
  readonly note: string;
  /** Temperatures that kill, where published. */
  readonly tolerance: Tolerance | undefined;
}

type About = Pick<Profile, 'name' | 'source' | 'species' | 'note'> & {
  readonly spread?: readonly [number, number];
};
const EXACT: readonly [number, number] = [1, 1];

export const fromTable = (
  stage: Stage,
  standing: 'memory' | 'seen',
  rows: readonly (readonly [number, number])[],
  about: About,
): Profile => ({
  stage,
  standing,
  curve: curveFromHours(rows),
  spread: EXACT,
  tolerance: toleranceFor(about.species, stage),
  ...about,
});

/** One duration known for a narrow band: the same hours across it, nothing beyond it. */
export const fromBand = (
  stage: Stage,
  low: number,
  high: number,
  shortest: number,
  longest: number,
  about: About,
): Profile => {
  const middle = (shortest + longest) / 2;
  return {
    stage,
    standing: 'seen',
    curve: curveFromHours([
      [low, middle],
      [high, middle],
    ]),
    spread: [shortest / middle, longest / middle],
    tolerance: toleranceFor(about.species, stage),
    ...about,
  };
};

/** Base temperature of African catfish embryos and larvae, °C (PROKES15). */
export const CLARIAS_BASE = 15.4;
/**
 * Thermal optimum of early life of African catfish, °C (PROKES15): the reach given to a carried measurement.
 */
const CLARIAS_OPTIMUM = [22.9, 30.3] as const;

export const fromClariasBase = (stage: Stage, temperature: number, hours: number, about: About): Profile => ({
  stage,
  standing: 'computed',
  curve: curveFromBase(temperature, hours, CLARIAS_BASE, ...CLARIAS_OPTIMUM),
  spread: EXACT,
  tolerance: toleranceFor(about.species, stage),
  ...about,
});

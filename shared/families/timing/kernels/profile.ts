import type { Waiting } from '../../preparations';
import { CLARIAS_BASE } from './base';
import type { RateCurve } from './rateCurve';
import { curveFromBase, curveFromHours, highest, lowest } from './rateCurve';
import type { LifeStage, Tolerance } from './tolerance';
import { toleranceFor } from './tolerance';

export type { LifeStage };

/**
 * Hours of one stage against temperature, as one publication gives them.
 * memory   – the table was recalled, the printed page not seen
 * seen     – the hours were read in the publication or an abstract of it
 * computed – one measured duration, carried to other temperatures with a published base temperature
 */
export interface Profile {
  readonly stage: LifeStage;
  readonly name: string;
  readonly curve: RateCurve;
  /** Published spread around the hours of the curve, as shares of them. */
  readonly spread: readonly [number, number];
  /** Where the measured or best hours lie, as shares of the hours of the curve. */
  readonly usual: readonly [number, number];
  /** Temperatures the trials had; in the rest of the curve hours are carried, which is thinner. */
  readonly tested: readonly [number, number];
  readonly source: string;
  readonly standing: 'memory' | 'seen' | 'computed';
  readonly species: string;
  readonly note: string;
  /** Temperatures that kill, where published. */
  readonly tolerance: Tolerance | undefined;
}

type About = Pick<Profile, 'name' | 'source' | 'species' | 'note'> & {
  readonly spread?: readonly [number, number];
  readonly tested?: readonly [number, number];
};
const EXACT: readonly [number, number] = [1, 1];

/** How far a temperature is from what was tried: in the trials, carried from them, or outside it all. */
export const evidenceAt = ({ curve, tested }: Profile, temperature: number): 'tried' | 'thin' | 'none' =>
  !(temperature >= lowest(curve) && temperature <= highest(curve))
    ? 'none'
    : temperature >= tested[0] - 1e-9 && temperature <= tested[1] + 1e-9
      ? 'tried'
      : 'thin';

export const fromTable = (
  stage: LifeStage,
  standing: 'memory' | 'seen',
  rows: readonly (readonly [number, number])[],
  about: About,
): Profile => ({
  stage,
  standing,
  curve: curveFromHours(rows),
  spread: EXACT,
  usual: EXACT,
  tested: [rows[0]?.[0] ?? NaN, rows.at(-1)?.[0] ?? NaN],
  tolerance: toleranceFor(about.species, stage),
  ...about,
});

/** One duration known for a narrow band: the same hours across it, nothing beyond it. */
export const fromBand = (
  stage: LifeStage,
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
    usual: [shortest / middle, longest / middle],
    tested: [low, high],
    tolerance: toleranceFor(about.species, stage),
    ...about,
  };
};

/** Thermal optimum of early life of African catfish, °C (PROKES15). */
const CLARIAS_OPTIMUM = [22.9, 30.3] as const;
/**
 * How far a measurement is carried with the base of 15.4 °C: down to where a table was printed, up to just
 * below the 33.2 °C that kill larvae (PROKES15).
 */
export const CARRIED = [20, 33] as const;

export const fromClariasBase = (
  stage: LifeStage,
  temperature: number,
  hours: number,
  about: About,
): Profile => ({
  stage,
  standing: 'computed',
  curve: curveFromBase(temperature, hours, CLARIAS_BASE, ...CARRIED),
  spread: EXACT,
  usual: EXACT,
  tested: CLARIAS_OPTIMUM,
  tolerance: toleranceFor(about.species, stage),
  ...about,
});

/** Waiting time of a preparation: the middle of its best hours, with the window of its trials around it. */
export const fromWaiting = (waiting: Waiting, about: Omit<About, 'spread' | 'tested'>): Profile => {
  const middle = (waiting.best[0] + waiting.best[1]) / 2;
  return {
    ...fromClariasBase('latency', CLARIAS_BASE + 1, middle, about),
    spread: [waiting.firstLook / middle, waiting.lastTested / middle],
    usual: [waiting.best[0] / middle, waiting.best[1] / middle],
    tested: waiting.trials,
  };
};

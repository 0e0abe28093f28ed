import type { Aim, Reach } from './nextDose';
import { expected, nextDose } from './nextDose';
import type { Cloud } from './cloud';
import type { Beliefs, Series } from './series';
import { quantile } from './cloud';
import { posterior } from './posterior';

export type Action =
  /** Give this part-dose, mix, wait, measure. */
  | 'dose'
  /** Inside the window and near enough: no more. */
  | 'stop'
  /** Past the window's top: no base. */
  | 'too high'
  /** Two readings at one dose differ: not mixed or still losing gas. */
  | 'wait'
  /** The last dose did nothing, or pH fell. */
  | 'check';

export interface Advice {
  readonly action: Action;
  /** mmol/L of product to add now; 0 unless dosing. */
  readonly dose: number;
  readonly limit: 'target' | 'step' | 'top' | 'doubt' | 'none';
  readonly now: Reach;
  readonly after: Reach;
  readonly cloud: Cloud;
  /** The model cannot follow the readings. */
  readonly isMisfit: boolean;
}

/** A repeat reading this far from the one before says the water is not at rest. */
const RESTLESS = 0.15;
/** The same in standard errors of a reading: paper strips scatter more than that. */
const RESTLESS_ERRORS = 4;
const SURELY = 0.95;
/**
 * From which misfit and which chance of organic acids the fit is in doubt, and the share of the secant then
 * allowed.
 */
const DOUBT = { misfit: 1.2, organic: 0.5, share: 1 } as const;
const DOUBT_WITHOUT_CARBON = { misfit: 1, organic: 0.25, share: 0.6 } as const;
const MISFIT = 3;

const last = (list: readonly number[], back = 1): number => list[list.length - back] ?? NaN;

/** What the slope of the last two readings asks for; undefined when they show none. */
const secantDose = (s: Series, aim: Aim): number | undefined => {
  const rise = last(s.readings) - last(s.readings, 2);
  const given = last(s.doses) - last(s.doses, 2);
  const wanted = Math.min(aim.target - last(s.readings), aim.step);
  return rise > 0.02 && given > 0 ? (wanted * given) / rise : undefined;
};

/** Chance that the water holds organic acids. */
export const chanceOrganic = (cloud: Cloud): number =>
  cloud.sites.reduce((sum, sites, i) => (sites > 0 ? sum + (cloud.weights[i] ?? 0) : sum), 0);

/** The last dose moved the pH by less than a meter shows. */
export const hardlyMoved = (s: Series): boolean =>
  s.readings.length > 1 &&
  last(s.doses) > last(s.doses, 2) &&
  Math.abs(last(s.readings) - last(s.readings, 2)) < 0.05;
/** Growth of the part-dose allowed when the one before was not seen in the pH. */
const MOST_TIMES = 5;

/**
 * A bound that needs no model. Full secant when the fit is in doubt (organic sites likely, or residuals above
 * 1.2 reading errors): a hidden buffer that is used up lets pH leap. Half of it, or nothing, when the model
 * cannot follow the readings at all.
 */
const modelFreeBound = (
  s: Series,
  aim: Aim,
  cloud: Cloud,
  isMisfit: boolean,
  bringsCarbon: boolean,
): number => {
  if (s.readings.length < 2) return Infinity;
  if (isMisfit) return 0.5 * (secantDose(s, aim) ?? 0);
  if (hardlyMoved(s)) return MOST_TIMES * (last(s.doses) - last(s.doses, 2));
  // Lime and caustic soda bring no carbon to catch the pH once a buffer is used up.
  const { misfit, organic, share } = bringsCarbon ? DOUBT : DOUBT_WITHOUT_CARBON;
  return cloud.misfit > misfit || chanceOrganic(cloud) > organic
    ? share * (secantDose(s, aim) ?? Infinity)
    : Infinity;
};

/**
 * What to do next at the vat, from the readings so far.
 *
 * The part-dose is the smallest of: the median dose to min(target, now + step), and the dose at which the pH
 * would pass the top of the window with the allowed risk, and the model-free bound above.
 * In: beliefs, series (mmol/L of product, pH), aim. Out: advice. Source: method of this project; priors are
 * judgement (PRACTICE).
 */
export const advise = (b: Beliefs, s: Series, aim: Aim): Advice => {
  const cloud = posterior(b, s);
  const now = expected(b, cloud, 0);
  const isMisfit = s.readings.length > 1 && cloud.misfit > MISFIT;
  const base: Advice = { action: 'stop', cloud, isMisfit, now, after: now, dose: 0, limit: 'none' };
  const unrest = restlessness(s, Math.max(RESTLESS, RESTLESS_ERRORS * b.noise));
  if (unrest) return { ...base, action: unrest };
  const level = isMisfit ? last(s.readings) : now.likely;
  if (level > aim.top) return { ...base, action: 'too high' };
  if (level >= aim.target - aim.near) return base;
  const choice = nextDose(b, cloud, aim);
  const bound = modelFreeBound(s, aim, cloud, isMisfit, b.carbonEach > 0);
  const dose = Math.min(choice.dose, bound);
  const after = expected(b, cloud, dose);
  // What is left to give moves less than a reading can show: leave it if the window is surely reached.
  const isIdle = !isMisfit && after.likely - now.likely < 0.1;
  if (isIdle && chanceInside(cloud, aim) >= SURELY) return base;
  if (!(dose > 0)) return { ...base, action: 'check' };
  return { ...base, action: 'dose', dose, after, limit: bound < choice.dose ? 'doubt' : choice.limit };
};

/** Readings that must be sorted out before anything is added. */
const restlessness = (s: Series, most: number): 'wait' | 'check' | undefined => {
  if (s.readings.length < 2) return undefined;
  const move = last(s.readings) - last(s.readings, 2);
  if (last(s.doses) === last(s.doses, 2)) return Math.abs(move) > most ? 'wait' : undefined;
  return move < -most ? 'check' : undefined;
};

/** Chance that the water is inside the window now. */
export const chanceInside = (cloud: Cloud, aim: Aim): number =>
  cloud.now.reduce(
    (sum, ph, i) => (ph >= aim.bottom && ph <= aim.top ? sum + (cloud.weights[i] ?? 0) : sum),
    0,
  );

/** The water's own figures before the first dose. */
export const figures = (
  cloud: Cloud,
): { alkalinity: Reach; carbonDioxide: Reach; offset: number; loss: number; sites: number } => {
  const reach = (values: readonly number[]): Reach => ({
    low: quantile(cloud, values, 0.05),
    likely: quantile(cloud, values, 0.5),
    high: quantile(cloud, values, 0.95),
  });
  const mean = (values: readonly number[]): number =>
    values.reduce((sum, v, i) => sum + v * (cloud.weights[i] ?? 0), 0);
  return {
    alkalinity: reach(cloud.firstAlkalinity),
    carbonDioxide: reach(cloud.firstCO2),
    offset: mean(cloud.offsets),
    loss: mean(cloud.losses),
    sites: mean(cloud.sites),
  };
};

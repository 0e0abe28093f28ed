// Long: one decision, its order of questions is the method.
import type { Aim, Limit, DoseReach } from './nextDose';
import {
  airedAfter,
  airedOutdoors,
  airedReach,
  chanceOf,
  endsSurely,
  expected,
  nextDose,
  oddsOf,
  STATED_FIT,
} from './nextDose';
import type { Cloud } from './cloud';
import { chanceOrganic, quantile } from './cloud';
import type { Log, Suspect } from './log';
import type { Segment } from './segments';
import { cloudOf, eventOf, levelOf, tolerance, walk } from './segments';
import type { Beliefs, Series } from './series';

export type Action =
  /** Put the vat under air, or shake a jar, and read again before any product. */
  | 'airFirst'
  /** Give this part-dose, mix, wait, measure. */
  | 'dose'
  /** The pair of readings differ: not mixed or not at rest. */
  | 'waitSettle'
  /** The reading cannot come from those before it, or is unusual: read again. */
  | 'readAgain'
  /** Inside the window and staying there, as surely as the range says: no more. */
  | 'done'
  /** No product now, but it may end outside: read again tomorrow. */
  | 'watch'
  /** No product: above the window, or none is of use. */
  | 'stop';

/** Why, as codes with their numbers; sentences are drawn from them last. */
export type AdviceReason =
  | { readonly code: 'airMayDo'; readonly odds: number }
  | { readonly code: 'stillMoving' }
  | { readonly code: 'sinksBack'; readonly ph: number }
  | { readonly code: 'unexpected'; readonly read: number; readonly low: number; readonly high: number }
  | { readonly code: 'low'; readonly read: number }
  | { readonly code: 'high'; readonly read: number }
  | { readonly code: 'unusual'; readonly read: number }
  | { readonly code: 'differ'; readonly one: number; readonly other: number }
  | { readonly code: 'limited'; readonly by: Limit }
  | {
      readonly code: 'aboveTop';
      readonly read: number;
      readonly isBelowCeiling: boolean;
      readonly hasDose: boolean;
    }
  | { readonly code: 'inWindow'; readonly read: number }
  | { readonly code: 'climbs'; readonly ph: number; readonly isOwn: boolean }
  | { readonly code: 'risesAlone'; readonly ph: number }
  | { readonly code: 'willRise'; readonly ph: number }
  | { readonly code: 'littleLeft' }
  | { readonly code: 'mayEnd'; readonly low: number; readonly high: number }
  | { readonly code: 'atEdge'; readonly read: number; readonly bottom: number }
  | { readonly code: 'noUse' }
  | { readonly code: 'oneReading' }
  | { readonly code: 'misfit' }
  | { readonly code: 'organic'; readonly odds: number }
  | { readonly code: 'hardlyMoved' };

export interface Advice {
  readonly action: Action;
  /** mmol/L of product to add now; 0 unless dosing. */
  readonly dose: number;
  readonly limit: Limit;
  readonly now: DoseReach;
  /** At the next reading, if the dose is given. */
  readonly after: DoseReach;
  /** Once aired, with the dose if one is due, and without it. */
  readonly aired: DoseReach;
  readonly airedUntouched: DoseReach;
  /** Chance that the aired vat stands between the window's bottom and the ceiling. */
  readonly odds: number;
  readonly reasons: readonly AdviceReason[];
  readonly cloud: Cloud;
  readonly segment: Segment;
}

/** No vat is led above this, whatever the window (the top of what most texts want for eggs and fry). */
export const CEILING = 8;
/** Chance that air alone will do from which product waits for air. */
export const AIR_MAY_DO = 0.03;
/** The same once an hour of air has run. */
export const AIR_MAY_STILL_DO = 0.1;
/** A rise, pH, by the last hour of air that says gas is still leaving, whatever air may still do. */
export const RISING = 0.3;
/** So close below the window, pH, untouched water is given air as long as it rises by more than a meter's error. */
export const EDGE = 0.25;
export const CREEPING = 0.05;
/**
 * Untouched, aired water read so little below the window, pH, is left alone: a meter cannot tell it from water
 * inside, and product that is not needed is the worse mistake.
 */
export const AT_EDGE = 0.04;
/** Chance of standing inside at which dosed water gets no more product. */
export const SURELY = 0.92;
/** A part-dose is no more than so many times the last one: usually, and after readings that lay low. */
export const GROWTH = { usual: 2, doubtful: 1 } as const;
/** The same in the morning, when all gas has moved. */
export const STOOD = 0.8;
/** Dosed water should stand so far above the window's bottom, pH. */
export const CLEAR = 0.25;
/** Reading errors left unexplained from which the readings do not go together. */
export const MISFIT = 3;
/** Less than this, pH, is not worth a dose: a meter does not show it. */
export const IDLE = 0.05;
/** A rise, pH, that a meter does not show: a dose that brings no more has hardly moved the water. */
export const HARDLY = 0.05;
/** pH by which robbed water will sink, as gas comes in again, from which the air is put on. */
export const SINKS = 0.2;
/** Chance that water which cannot be aired rises into the window by itself, from which it is left alone. */
export const RISES_ALONE = 0.5;
/** Chance of a buffer beside carbon dioxide from which it is said. */
export const ORGANIC = 0.5;

const last = (list: readonly number[], back = 1): number => list[list.length - back] ?? NaN;

/** The last dose moved the pH by less than a meter shows. */
export const hardlyMoved = (s: Series): boolean =>
  s.readings.length > 1 &&
  last(s.doses) > last(s.doses, 2) &&
  Math.abs(last(s.readings) - last(s.readings, 2)) < HARDLY;

/** The last part-dose since this water came in, mmol/L; 0 before the first. */
const lastPart = (log: Log, { firstEntry }: Segment): number => {
  for (let i = log.length - 1; i > firstEntry; i--) {
    const part = (log[i]?.dose ?? 0) - (log[i - 1]?.dose ?? 0);
    if (part > 0) return part;
  }
  return 0;
};

/** Common ground of every answer: where the water is and where air alone takes it. */
interface View {
  readonly b: Beliefs;
  readonly log: Log;
  readonly aim: Aim;
  readonly segment: Segment;
  readonly cloud: Cloud;
  readonly now: DoseReach;
  readonly aired: DoseReach;
  readonly airedValues: readonly number[];
  readonly read: number;
  readonly wasLow: boolean;
  /** The model cannot follow the readings. */
  readonly isMisfit: boolean;
}

/** Product has robbed the water of gas, perhaps too much: an hour of air tells what no model can. */
const maySink = ({ aim, log, now, aired }: View): boolean =>
  aim.canAir &&
  hasDose(log) &&
  log.at(-1)?.event === '' &&
  now.likely - aired.likely > SINKS &&
  aired.low < aim.bottom;

/** The ends of an answer that gives no product: done where the stated range lies inside, else aired or watched. */
const rested = (v: View, reasons: readonly AdviceReason[]): Advice => {
  const ended = answer(v, 'done', reasons);
  if (endsSurely(ended.odds)) return ended;
  return maySink(v)
    ? answer(v, 'airFirst', [{ code: 'sinksBack', ph: v.aired.likely }])
    : {
        ...ended,
        action: 'watch',
        reasons: [...ended.reasons, { code: 'mayEnd', low: v.aired.low, high: v.aired.high }],
      };
};

const answer = (v: View, action: Action, reasons: readonly AdviceReason[]): Advice => ({
  action,
  dose: 0,
  limit: 'none',
  now: v.now,
  after: v.now,
  aired: v.aired,
  airedUntouched: v.aired,
  odds: oddsOf(v.b, v.cloud, 0, { bottom: v.aim.bottom, top: CEILING }),
  reasons: [...reasons, ...doubts(v)],
  cloud: v.cloud,
  segment: v.segment,
});

/** What does not fit, of a series and of what it says about the water. */
export const doubtsOf = (series: Series, cloud: Cloud): AdviceReason[] => {
  if (series.readings.length > 1 && cloud.misfit > MISFIT) return [{ code: 'misfit' }];
  const organic = chanceOrganic(cloud);
  if (series.readings.length > 2 && organic > ORGANIC) return [{ code: 'organic', odds: organic }];
  return hardlyMoved(series) ? [{ code: 'hardlyMoved' }] : [];
};

/** What does not fit, beside the answer. */
const doubts = ({ segment, cloud, log }: View): AdviceReason[] => {
  const found = doubtsOf(segment.series, cloud);
  return found.length === 0 && log.length === 1 ? [{ code: 'oneReading' }] : found;
};

const suspectReason = ({ read, expected: { low, high } }: Suspect): AdviceReason => ({
  code: 'unexpected',
  read,
  low,
  high,
});

/**
 * What to do next at the vat, from the log so far. Air comes before product: a dose is only due once air has
 * shown what it can do, or cannot do enough; it is sized for the pH once aired.
 *
 * In: beliefs, log (mmol/L of product, pH, what happened), aim. Out: action, dose, ranges now and once aired,
 * odds, reasons as codes. Source: method of this project; priors are judgement (PRACTICE).
 */
export const advise = (b: Beliefs, log: Log, aim: Aim): Advice => {
  const { segment, suspect, isUnusual, isLow, wasLow } = walk(b, log);
  const cloud = cloudOf(segment);
  const entry = log.at(-1);
  const airedValues = airedAfter(segment.beliefs, cloud, 0);
  const v: View = {
    b: segment.beliefs,
    log,
    aim,
    segment,
    cloud,
    now: expected(segment.beliefs, cloud, 0),
    aired: airedReach(segment.beliefs, cloud, 0),
    airedValues,
    read: segment.vatReading ?? (entry ? levelOf(entry) : NaN),
    wasLow,
    isMisfit: cloud.misfit > MISFIT,
  };
  if (suspect) return answer(v, 'readAgain', [suspectReason(suspect)]);
  if (isUnusual) return answer(v, 'readAgain', [{ code: 'unusual', read: v.read }]);
  const doubted = doubtful(v, entry);
  if (doubted) return doubted;
  const rest = atRest(v);
  if (rest) return rest;
  if (isLow) return answer(v, 'readAgain', [{ code: 'low', read: v.read }]);
  if (segment.isRestless) return answer(v, 'waitSettle', [{ code: 'stillMoving' }]);
  return below(v);
};

const hasDose = (log: Log): boolean => (log.at(-1)?.dose ?? 0) > 0;

/** Water without product has the benefit of the doubt; dosed water should stand clear of the edge. */
const endsInside = ({ b, aim, aired, cloud }: View, given: boolean): boolean => {
  if (!given) return aired.likely >= aim.bottom;
  if (aired.likely >= aim.target - aim.near) return true;
  const outdoors = airedOutdoors(b, cloud, 0);
  return (
    chanceOf(cloud, outdoors, (ph) => ph >= aim.bottom) >= SURELY &&
    quantile(cloud, outdoors, 0.5) >= aim.bottom + CLEAR
  );
};

/** A pair that does not agree, or a reading above the ceiling that stands alone. */
const doubtful = (v: View, entry: Log[number] | undefined): Advice | undefined => {
  if (entry?.again !== undefined && Math.abs(entry.again - entry.reading) > tolerance(v.b))
    return answer(v, 'waitSettle', [{ code: 'differ', one: entry.reading, other: entry.again }]);
  return v.read > CEILING && v.log.length > 1 && !v.segment.isSettled
    ? answer(v, 'readAgain', [{ code: 'high', read: v.read }])
    : undefined;
};

const isMorning = ({ log }: View): boolean => {
  const entry = log.at(-1);
  return entry !== undefined && eventOf(entry) === 'night';
};
/** Dosed water that stands inside after a night has come to rest there: what was done stays done. */
const stoodNight = (v: View): boolean =>
  hasDose(v.log) &&
  isMorning(v) &&
  Math.min(v.read, v.aired.likely) >= v.aim.bottom &&
  chanceOf(v.cloud, v.airedValues, (ph) => ph >= v.aim.bottom) >= STOOD;

/** Answers that give no product because the water is where it should be, or above. */
const atRest = (v: View): Advice | undefined => {
  const { aim, read, now, aired } = v;
  const given = hasDose(v.log);
  if (read > aim.top || now.likely > aim.top)
    return answer(v, 'stop', [
      { code: 'aboveTop', read, isBelowCeiling: read <= CEILING, hasDose: given },
      ...climbing(v),
    ]);
  if (read < aim.bottom && now.likely < aim.bottom) return undefined;
  if (endsInside(v, given) || stoodNight(v)) return rested(v, [{ code: 'inWindow', read }, ...climbing(v)]);
  // Base has robbed the water of gas: as gas comes in again the pH sinks.
  if (aired.likely < aim.bottom && now.likely - aired.likely > SINKS && aim.canAir)
    return answer(v, 'airFirst', [{ code: 'sinksBack', ph: aired.likely }]);
  return undefined;
};

const climbing = ({ aired, aim, log }: View): AdviceReason[] =>
  aired.likely > aim.top ? [{ code: 'climbs', ph: aired.likely, isOwn: (log.at(-1)?.dose ?? 0) === 0 }] : [];

/** pH by which the last two readings of one and the same dose differ. */
const risen = ({ log }: View): number => {
  const [before, now] = [log.at(-2), log.at(-1)];
  return before && now && before.dose === now.dose ? levelOf(now) - levelOf(before) : 0;
};

/** Untouched water just below the window that still rises. */
const isCreeping = (v: View): boolean =>
  !hasDose(v.log) && v.read >= v.aim.bottom - EDGE && risen(v) > CREEPING;
/** Gas is still leaving, and what is left of it may do. */
const isOnTheWay = (v: View, mayDo: number): boolean =>
  !v.segment.isSettled &&
  last(v.segment.series.doses) === 0 &&
  (mayDo >= AIR_MAY_STILL_DO || risen(v) >= RISING);

/** So close below the window that the meter cannot tell; all readings of the stretch count. */
const isAtEdge = ({ log, segment: { isAired, series, vatReading }, aim }: View): boolean =>
  isAired &&
  !hasDose(log) &&
  vatReading === undefined &&
  series.readings.reduce((sum, ph) => sum + ph, 0) / series.readings.length >= aim.bottom - AT_EDGE;

/** The water stands below the window. */
const below = (v: View): Advice => {
  const { aim, segment, cloud, airedValues, aired } = v;
  const mayDo = chanceOf(cloud, airedValues, (ph) => ph >= aim.bottom);
  if (aim.canAir) {
    if (!segment.isAired && mayDo >= AIR_MAY_DO)
      return answer(v, 'airFirst', [{ code: 'airMayDo', odds: mayDo }, ...climbing(v)]);
    if (segment.isAired && (isCreeping(v) || isOnTheWay(v, mayDo)))
      return answer(v, 'airFirst', [{ code: 'stillMoving' }]);
    if (isAtEdge(v) && !isMorning(v))
      return rested(v, [{ code: 'atEdge', read: v.read, bottom: aim.bottom }]);
  } else if (mayDo >= RISES_ALONE && aired.likely >= aim.bottom)
    return answer(v, 'stop', [{ code: 'risesAlone', ph: aired.likely }]);
  return dosed(v);
};

/** What the slope of the last two readings asks for, up to the target; Infinity when they show none. */
const secant = ({ segment: { series: s }, aim }: View): number => {
  const rise = last(s.readings) - last(s.readings, 2);
  const part = last(s.doses) - last(s.doses, 2);
  return rise > 0.02 && part > 0 ? ((aim.target - last(s.readings)) * part) / rise : Infinity;
};

/** Twice the last part-dose at most; no more than the last where the readings lay lower than expected. */
const grown = (v: View, wanted: number): { dose: number; isHeld: boolean } => {
  const dose = Math.min(wanted, secant(v));
  const part = lastPart(v.log, v.segment);
  if (part === 0) return { dose, isHeld: false };
  const most = part * (v.wasLow ? GROWTH.doubtful : GROWTH.usual);
  return dose > most ? { dose: most, isHeld: true } : { dose, isHeld: false };
};

/** Enough has been given, as far as the readings tell: what is left to do is to let the gas out. */
const willRise = ({ aim, aired, read }: View): boolean =>
  aim.canAir && read < aim.bottom && aired.likely >= aim.bottom;

/** No dose worth giving is left. */
const idle = (v: View, dose: number): Advice => {
  if (Number.isFinite(dose) && willRise(v))
    return answer(v, 'airFirst', [{ code: 'willRise', ph: v.aired.likely }]);
  const isSure = chanceOf(v.cloud, v.airedValues, (ph) => ph >= v.aim.bottom) >= SURELY;
  const isClose = v.aired.likely >= v.aim.bottom - 2 * IDLE;
  // Base that has robbed the water of gas leaves no room for more until the air has brought gas back.
  if (!isClose && hasDose(v.log) && v.aim.canAir && v.log.at(-1)?.event === '')
    return answer(v, 'airFirst', [{ code: 'sinksBack', ph: v.aired.likely }]);
  return (dose > 0 && isSure && v.read >= v.aim.bottom) || (hasDose(v.log) && isClose)
    ? rested(v, [{ code: 'littleLeft' }])
    : answer(v, 'stop', [{ code: 'noUse' }]);
};

const dosed = (v: View): Advice => {
  const { b, cloud, aim } = v;
  const choice = nextDose(b, cloud, aim);
  const bounded = grown(v, v.isMisfit ? 0.5 * choice.dose : choice.dose);
  const { dose } = bounded;
  const after = expected(b, cloud, dose);
  const values = airedAfter(b, cloud, dose);
  const gain = quantile(cloud, values, 0.5) - v.aired.likely;
  if (
    !(dose > 0) ||
    !Number.isFinite(dose) ||
    (gain < IDLE && after.likely - v.now.likely < IDLE && !bounded.isHeld)
  )
    return idle(v, dose);
  const limit: Limit = bounded.isHeld ? 'last' : v.isMisfit ? 'doubt' : choice.limit;
  const given = answer(v, 'dose', [{ code: 'limited', by: limit }]);
  return {
    ...given,
    dose,
    limit,
    after,
    aired: airedReach(b, cloud, dose),
    odds: oddsOf(b, cloud, dose, { bottom: aim.bottom, top: CEILING }),
  };
};

/** Chance that the water is inside the window now. */
export const chanceInside = (cloud: Cloud, aim: Aim): number =>
  chanceOf(cloud, cloud.now, (ph) => ph >= aim.bottom && ph <= aim.top);

/** The water's own figures before the first dose. */
export const figures = (
  cloud: Cloud,
): { alkalinity: DoseReach; carbonDioxide: DoseReach; offset: number; loss: number; sites: number } => {
  const reach = (values: readonly number[]): DoseReach => ({
    low: quantile(cloud, values, STATED_FIT),
    likely: quantile(cloud, values, 0.5),
    high: quantile(cloud, values, 1 - STATED_FIT),
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

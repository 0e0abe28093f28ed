// Long: one dose is chosen in one search over the same cloud; its steps hand each other all of its state.
import { carbonDioxideAt, sampleDose, samplePH } from './model';
import { airedDose, airedPH } from './open';
import type { Cloud } from './cloud';
import type { Beliefs } from './series';
import { ERRORS_IN_90 } from './beliefs';
import { chanceOrganic, quantile } from './cloud';
import { VERDICT_LOOKS, verdictOf } from '../../../maths/verdict';

export interface Aim {
  readonly target: number;
  /** The window the pH has to end in. */
  readonly bottom: number;
  readonly top: number;
  /** Most pH units in one step. */
  readonly step: number;
  /** Near enough to the target to stop. */
  readonly near: number;
  /** Chance allowed, at each step, that the pH passes the top. */
  readonly risk: number;
  /** The vat can be put under air. */
  readonly canAir: boolean;
  /** Fish are in: the step holds for the pH freshly mixed too. */
  readonly isStocked: boolean;
}

export interface DoseReach {
  readonly low: number;
  readonly likely: number;
  readonly high: number;
}

export const reachOf = (cloud: Cloud, values: readonly number[]): DoseReach => ({
  low: quantile(cloud, values, 0.05),
  likely: quantile(cloud, values, 0.5),
  high: quantile(cloud, values, 0.95),
});

/** pH of every sample after a further dose, mmol/L, freshly mixed. */
export const closedAfter = (b: Beliefs, cloud: Cloud, dose: number): number[] =>
  cloud.now.map((now, i) =>
    dose === 0
      ? now
      : samplePH(
          b.conditions,
          (cloud.balances[i] ?? 0) + b.equivalents * dose,
          (cloud.carbons[i] ?? 0) + b.carbonEach * dose,
          cloud.sites[i] ?? 0,
          now,
        ),
  );

/** The same with the share of gas gone, or come in, that each sample has seen between readings. */
const readAfter = (b: Beliefs, cloud: Cloud, dose: number): number[] =>
  closedAfter(b, cloud, dose).map((ph, i) => {
    const loss = cloud.losses[i] ?? 0;
    if (loss === 0 || dose === 0) return ph;
    const carbon = (cloud.carbons[i] ?? 0) + b.carbonEach * dose;
    const left =
      carbon - loss * (carbonDioxideAt(b.conditions, carbon, ph) - (cloud.airs[i] ?? 1) * b.airCO2);
    return samplePH(
      b.conditions,
      (cloud.balances[i] ?? 0) + b.equivalents * dose,
      left,
      cloud.sites[i] ?? 0,
      ph,
    );
  });

/**
 * What the model leaves out of a step, pH: the scale, the mixing, gas that moves unevenly, acids that are not those
 * of the model (judgement). It widens what is stated of a dose, not the dose.
 * A base without carbon uses up the gas, and little is left to hold the pH; acids that are used up after some doses
 * let it leap.
 */
export const STEP_ERROR = { clear: 0.04, bare: 0.06, organic: 0.1, leap: 0.2 } as const;
/** Part-doses after which acids may be used up. */
export const LEAPS_AFTER = 3;
const widened = (b: Beliefs, { low, likely, high }: DoseReach, cloud: Cloud): DoseReach => {
  const organic = chanceOrganic(cloud);
  const clear = b.carbonEach > 0 ? STEP_ERROR.clear : STEP_ERROR.bare;
  const error = (acids: number): number =>
    ERRORS_IN_90 * Math.sqrt((1 - organic) * clear ** 2 + organic * acids ** 2);
  return {
    low: likely - Math.hypot(likely - low, error(STEP_ERROR.organic)),
    likely,
    high:
      likely +
      Math.hypot(high - likely, error(cloud.steps >= LEAPS_AFTER ? STEP_ERROR.leap : STEP_ERROR.organic)),
  };
};

/**
 * Share of the weight beyond either end of what is said to hold 90 of 100 after a dose. The beliefs a dose is sized by
 * are wider than most waters on purpose; with 5 of 100 at either end such ranges held 95 to 98 of simulated vats.
 */
export const STATED = 0.115;
/** The same of a curve, which goes farther than one dose, and of the water that a fit finds. */
export const STATED_CURVE = 0.05;
export const STATED_FIT = 0.075;
/**
 * The same below, after the first and the second part-dose of water nobody called brown: acids of peat that it may
 * hold show themselves only by then. With STATED such ranges held 65 and 70 of 100 in simulated brown water.
 */
export const STATED_UNSHOWN = [0.04, 0.07] as const;
const beneath = (b: Beliefs, { steps }: Cloud): number =>
  (b.isBrown === true ? undefined : STATED_UNSHOWN[steps]) ?? STATED;

const rangeOf = (
  b: Beliefs,
  cloud: Cloud,
  dose: number,
  [low, high]: readonly [number, number],
): DoseReach => {
  const values = readAfter(b, cloud, dose);
  const reach = reachOf(cloud, values);
  return dose === 0
    ? reach
    : widened(
        b,
        { ...reach, low: quantile(cloud, values, low), high: quantile(cloud, values, 1 - high) },
        cloud,
      );
};
/** The pH the cloud expects at the next reading after a further dose, mmol/L, and what holds 90 of 100. */
export const expected = (b: Beliefs, cloud: Cloud, dose: number): DoseReach =>
  rangeOf(b, cloud, dose, [beneath(b, cloud), STATED]);
/** The same of a point of the curve. */
export const onCurve = (b: Beliefs, cloud: Cloud, dose: number): DoseReach =>
  rangeOf(b, cloud, dose, [STATED_CURVE, STATED_CURVE]);

/** The same of a dose that may be so large a share more or less than said, standard error. */
export const expectedByHand = (b: Beliefs, cloud: Cloud, dose: number, off: number): DoseReach => {
  const { low, likely, high } = expected(b, cloud, dose);
  const by = (share: number): number => quantile(cloud, readAfter(b, cloud, dose * share), 0.5) - likely;
  return {
    low: likely - Math.hypot(likely - low, ERRORS_IN_90 * by(1 - off)),
    likely,
    high: likely + Math.hypot(high - likely, ERRORS_IN_90 * by(1 + off)),
  };
};

/** A badly aired shed holds about twice the CO2 of the air outdoors; the aired pH is then lower (WATER facts). */
const SHED = 2;

/** In air of so many times the CO2 of that outdoors; in that of each sample's own place where none is given. */
const airedAt = (b: Beliefs, cloud: Cloud, dose: number, air?: number): number[] =>
  cloud.balances.map((balance, i) =>
    airedPH(b.conditions, (air ?? cloud.airs[i] ?? 1) * b.airCO2, {
      balance: balance + b.equivalents * dose,
      sites: cloud.sites[i] ?? 0,
    }),
  );

/** The pH of every sample once the gas is in balance with the air of its place, as far as the readings tell it. */
export const airedAfter = (b: Beliefs, cloud: Cloud, dose: number): number[] => airedAt(b, cloud, dose);

/** Where it may end lowest: in the air of a shed; in that of its own place once it has stood under air there. */
const airedLow = (b: Beliefs, cloud: Cloud, dose: number): number[] =>
  airedAt(b, cloud, dose, b.isUnderAir === true ? undefined : SHED);
/** Where it ends highest: in the air of outdoors. */
export const airedOutdoors = (b: Beliefs, cloud: Cloud, dose: number): number[] => airedAt(b, cloud, dose, 1);

/** Where the pH ends once aired. */
export const airedReach = (b: Beliefs, cloud: Cloud, dose: number): DoseReach => ({
  low: quantile(cloud, airedLow(b, cloud, dose), 0.1),
  likely: quantile(cloud, airedAt(b, cloud, dose), 0.5),
  high: quantile(cloud, airedOutdoors(b, cloud, dose), 0.95),
});

/** Chance from which an end is called safe: that of the one scale of verdicts. */
export const endsSurely = (odds: number): boolean => verdictOf(odds) === 'safe';
/** Most that is said of an end whose stated range passes the window: less than safe. */
const NOT_SAFE = VERDICT_LOOKS.safe.from - 0.01;
/**
 * Chance that the vat ends well: not below the window in the air that takes it lowest, not above the ceiling in that
 * of outdoors. It is worked out as the range once aired is, and never says more than that range does.
 */
export const oddsOf = (
  b: Beliefs,
  cloud: Cloud,
  dose: number,
  window: { readonly bottom: number; readonly top: number },
): number => {
  const low = airedLow(b, cloud, dose);
  const high = airedOutdoors(b, cloud, dose);
  const odds = cloud.weights.reduce(
    (sum, weight, i) =>
      (low[i] ?? NaN) >= window.bottom && (high[i] ?? NaN) <= window.top ? sum + weight : sum,
    0,
  );
  const reach = airedReach(b, cloud, dose);
  return reach.low >= window.bottom && reach.high <= window.top ? odds : Math.min(odds, NOT_SAFE);
};

export const chanceOf = (cloud: Cloud, values: readonly number[], is: (value: number) => boolean): number =>
  values.reduce((sum, value, i) => (is(value) ? sum + (cloud.weights[i] ?? 0) : sum), 0);

const samples = (cloud: Cloud): { balance: number; carbon: number; sites: number }[] =>
  cloud.balances.map((balance, i) => ({
    balance,
    carbon: cloud.carbons[i] ?? 0,
    sites: cloud.sites[i] ?? 0,
  }));

const dosesTo = (b: Beliefs, cloud: Cloud, ph: number): number[] =>
  samples(cloud).map((sample) => sampleDose(b.conditions, sample, b.equivalents, b.carbonEach, ph));

/** mmol/L after which each sample stands at a pH once aired: outdoors, or in the air of its own place. */
const airedDosesTo = (b: Beliefs, cloud: Cloud, ph: number, isOutdoors: boolean): number[] =>
  samples(cloud).map((sample, i) =>
    airedDose(b.conditions, (isOutdoors ? 1 : (cloud.airs[i] ?? 1)) * b.airCO2, sample, b.equivalents, ph),
  );

/** mmol/L after which the median stands at a pH, freshly mixed. */
export const medianDose = (b: Beliefs, cloud: Cloud, ph: number): number =>
  quantile(cloud, dosesTo(b, cloud, ph), 0.5);

/**
 * mmol/L at which the chance of having passed a pH reaches a risk: a low quantile of the doses that lead
 * there.
 */
export const boundDose = (b: Beliefs, cloud: Cloud, ph: number, risk: number): number =>
  quantile(cloud, dosesTo(b, cloud, ph), risk);

/** The same for the pH once aired outdoors, where it stands highest. */
export const airedBound = (b: Beliefs, cloud: Cloud, ph: number, share: number): number =>
  quantile(cloud, airedDosesTo(b, cloud, ph, true), share);
/** mmol/L after which the median stands at a pH, once aired where it is. */
export const airedMedian = (b: Beliefs, cloud: Cloud, ph: number): number =>
  quantile(cloud, airedDosesTo(b, cloud, ph, false), 0.5);

export type Limit = 'target' | 'step' | 'top' | 'last' | 'doubt' | 'none';
export interface Choice {
  readonly dose: number;
  readonly limit: Limit;
}

/**
 * The next part-dose, sized for the aired end: the smallest of what brings the median to the target once
 * aired, what lifts the aired pH by one step, what the top allows once aired, and what the top allows while
 * the product is freshly mixed.
 */
export const nextDose = (b: Beliefs, cloud: Cloud, aim: Aim): Choice => {
  const now = quantile(cloud, airedAfter(b, cloud, 0), 0.5);
  const choices: readonly Choice[] = [
    { dose: airedMedian(b, cloud, aim.target), limit: 'target' },
    { dose: airedMedian(b, cloud, Math.min(aim.target, now + aim.step)), limit: 'step' },
    { dose: airedBound(b, cloud, aim.top, aim.risk), limit: 'top' },
    { dose: boundDose(b, cloud, aim.top, aim.risk), limit: 'top' },
    ...(aim.isStocked
      ? [
          {
            dose: medianDose(b, cloud, quantile(cloud, cloud.now, 0.5) + aim.step),
            limit: 'step' as const,
          },
        ]
      : []),
  ];
  return choices.reduce((least, choice) => (choice.dose < least.dose ? choice : least));
};

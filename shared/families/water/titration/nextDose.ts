import { carbonDioxideAt, sampleDose, samplePH } from './model';
import { airedDose, airedPH } from './open';
import type { Cloud } from './cloud';
import type { Beliefs } from './series';
import { quantile } from './cloud';

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
    const left = carbon - loss * (carbonDioxideAt(b.conditions, carbon, ph) - b.airCO2);
    return samplePH(
      b.conditions,
      (cloud.balances[i] ?? 0) + b.equivalents * dose,
      left,
      cloud.sites[i] ?? 0,
      ph,
    );
  });

/** The pH the cloud expects at the next reading after a further dose, mmol/L: 5 %, 50 %, 95 %. */
export const expected = (b: Beliefs, cloud: Cloud, dose: number): DoseReach =>
  reachOf(cloud, readAfter(b, cloud, dose));

/** A badly aired shed holds about twice the CO2 of the air outdoors; the aired pH is then lower (WATER facts). */
const SHED = 2;

const airedAt = (b: Beliefs, cloud: Cloud, dose: number, air: number): number[] =>
  cloud.balances.map((balance, i) =>
    airedPH(b.conditions, air, {
      balance: balance + b.equivalents * dose,
      carbon: 0,
      sites: cloud.sites[i] ?? 0,
    }),
  );

/** The pH of every sample once the gas is in balance with outdoor air. */
export const airedAfter = (b: Beliefs, cloud: Cloud, dose: number): number[] =>
  airedAt(b, cloud, dose, b.airCO2);

/** Where the pH ends once aired: the low end in the air of a shed, the rest in that of outdoors. */
export const airedReach = (b: Beliefs, cloud: Cloud, dose: number): DoseReach => {
  const outdoors = reachOf(cloud, airedAfter(b, cloud, dose));
  return { ...outdoors, low: quantile(cloud, airedAt(b, cloud, dose, SHED * b.airCO2), 0.1) };
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

/** mmol/L after which each sample stands at a pH once aired. */
const airedDosesTo = (b: Beliefs, cloud: Cloud, ph: number): number[] =>
  samples(cloud).map((sample) => airedDose(b.conditions, b.airCO2, sample, b.equivalents, ph));

/** mmol/L after which the median stands at a pH, freshly mixed. */
export const medianDose = (b: Beliefs, cloud: Cloud, ph: number): number =>
  quantile(cloud, dosesTo(b, cloud, ph), 0.5);

/**
 * mmol/L at which the chance of having passed a pH reaches a risk: a low quantile of the doses that lead
 * there.
 */
export const boundDose = (b: Beliefs, cloud: Cloud, ph: number, risk: number): number =>
  quantile(cloud, dosesTo(b, cloud, ph), risk);

/** The same for the pH once aired. */
export const airedBound = (b: Beliefs, cloud: Cloud, ph: number, share: number): number =>
  quantile(cloud, airedDosesTo(b, cloud, ph), share);

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
    { dose: airedBound(b, cloud, aim.target, 0.5), limit: 'target' },
    { dose: airedBound(b, cloud, Math.min(aim.target, now + aim.step), 0.5), limit: 'step' },
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

import { sampleDose, samplePH } from './model';
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
}

export interface Reach {
  readonly low: number;
  readonly likely: number;
  readonly high: number;
}

/** The pH the cloud expects after a further dose, mmol/L: 5 %, 50 %, 95 %. */
export const expected = (b: Beliefs, cloud: Cloud, dose: number): Reach => {
  const ph = cloud.now.map((now, i) =>
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
  return {
    low: quantile(cloud, ph, 0.05),
    likely: quantile(cloud, ph, 0.5),
    high: quantile(cloud, ph, 0.95),
  };
};

const dosesTo = (b: Beliefs, cloud: Cloud, ph: number): number[] =>
  cloud.now.map((_, i) =>
    sampleDose(
      b.conditions,
      { balance: cloud.balances[i] ?? 0, carbon: cloud.carbons[i] ?? 0, sites: cloud.sites[i] ?? 0 },
      b.equivalents,
      b.carbonEach,
      ph,
    ),
  );

/** mmol/L after which the median stands at a pH. */
export const medianDose = (b: Beliefs, cloud: Cloud, ph: number): number =>
  quantile(cloud, dosesTo(b, cloud, ph), 0.5);

/**
 * mmol/L at which the chance of having passed a pH reaches a risk: a low quantile of the doses that lead
 * there.
 */
export const boundDose = (b: Beliefs, cloud: Cloud, ph: number, risk: number): number =>
  quantile(cloud, dosesTo(b, cloud, ph), risk);

export interface Choice {
  readonly dose: number;
  readonly limit: 'target' | 'step' | 'top';
}

/**
 * The next part-dose: the smallest of what reaches the target, what moves one step, and what the top of the
 * window allows.
 */
export const nextDose = (b: Beliefs, cloud: Cloud, aim: Aim): Choice => {
  const now = quantile(cloud, cloud.now, 0.5);
  const stepTo = now + aim.step;
  const wanted: Choice =
    stepTo < aim.target
      ? { dose: medianDose(b, cloud, stepTo), limit: 'step' }
      : { dose: medianDose(b, cloud, aim.target), limit: 'target' };
  const bound = boundDose(b, cloud, aim.top, aim.risk);
  return bound < wanted.dose ? { dose: bound, limit: 'top' } : wanted;
};

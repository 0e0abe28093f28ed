import type { MaterialName } from '../carbonate/materials';
import { MATERIALS } from '../carbonate/materials';
import type { Advice } from './advise';
import { GROWTH } from './advise';
import type { Aim, DoseReach } from './nextDose';
import { airedMedian, airedReach, medianDose, onCurve } from './nextDose';
import type { Cloud } from './cloud';
import type { Beliefs, Series } from './series';
import { posterior } from './posterior';

export interface Leg {
  readonly dose: number;
  readonly reach: DoseReach;
}

const MOST_LEGS = 8;

/**
 * How the dosing is likely to go on after the part-dose due now, if every reading falls where it is expected
 * and the gas comes to rest between the doses.
 */
export const forecast = (b: Beliefs, { cloud, dose }: Advice, aim: Aim): Leg[] => {
  const legs: Leg[] = [];
  const whole = airedMedian(b, cloud, aim.target);
  let total = dose;
  let part = dose;
  while (total < whole * 0.97 && legs.length < MOST_LEGS && part > 0) {
    part = Math.min(GROWTH.usual * part, whole - total);
    total += part;
    legs.push({ dose: part, reach: airedReach(b, cloud, total) });
  }
  return legs;
};

const POINTS = 12;

/** pH with its range against further product, up to a pH. */
export const pathOf = (b: Beliefs, cloud: Cloud, highest: number): Leg[] => {
  const most = medianDose(b, cloud, highest);
  if (!(most > 0) || !Number.isFinite(most)) return [];
  return Array.from({ length: POINTS + 1 }, (_, i) => ({
    dose: (most * i) / POINTS,
    reach: onCurve(b, cloud, (most * i) / POINTS),
  }));
};

const RIVALS: readonly MaterialName[] = ['soda ash', 'washing soda', 'baking soda', 'hydrated lime'];
/** Odds against the product named at which the bag is worth a look. */
const SUSPICIOUS = 50;
/** Misfit below which the product named is taken at its word. */
const POOR = 1;

/** Another product that explains the readings far better, at the same weights. */
export const likelierProduct = (
  b: Beliefs,
  s: Series,
  said: Cloud,
  name: MaterialName,
): { name: MaterialName; odds: number } | undefined => {
  if (s.readings.length < 3 || said.misfit < POOR) return undefined;
  const rivals = RIVALS.filter((rival) => rival !== name).map((rival) => {
    const scale = MATERIALS[name].molarMass / MATERIALS[rival].molarMass;
    const { equivalents, carbon } = MATERIALS[rival];
    const other = posterior(
      { ...b, equivalents, carbonEach: carbon },
      { ...s, doses: s.doses.map((dose) => dose * scale) },
    );
    return { name: rival, odds: Math.exp(other.logEvidence - said.logEvidence) };
  });
  const best = rivals.reduce((most, rival) => (rival.odds > most.odds ? rival : most));
  return best.odds > SUSPICIOUS ? best : undefined;
};

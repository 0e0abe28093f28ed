import { solve } from '../carbonate/carbonate';
import type { Constants } from '../carbonate/constants';
import { pressureOfCO2 } from '../carbonate/constants';
import type { Material } from '../carbonate/materials';
import type { Background } from '../carbonate/readings';
import { compose } from '../carbonate/readings';
import type { Beliefs } from './series';

/**
 * How well pH is read: random error and lasting offset, standard deviations in pH (judgement; poorly buffered
 * water is hard on electrodes).
 */
export const METERS = {
  good: { noise: 0.035, offset: 0.06 },
  cheap: { noise: 0.08, offset: 0.11 },
  strips: { noise: 0.25, offset: 0.2 },
} as const;
export type MeterName = keyof typeof METERS;

/**
 * log10 CO2 pressure of the untouched water, atm: mean and standard deviation (judgement). Air is −3.38;
 * wells reach −1.2.
 */
export const ORIGINS = {
  unknown: { mean: -2.4, sd: 0.8 },
  aerated: { mean: -3.3, sd: 0.15 },
  well: { mean: -1.8, sd: 0.5 },
  peat: { mean: -2.4, sd: 0.8 },
} as const;
export type OriginName = keyof typeof ORIGINS;

/**
 * Chance allowed at each step of passing the top of the window, tuned on simulated waters so that fewer than
 * 2 in 100 dosings ever do: a cheap meter hides a leap, and lime, which brings no carbon, leaps further.
 */
export const riskFor = (meter: MeterName, { carbon }: Material): number =>
  meter === 'good' && carbon > 0 ? 0.03 : 0.01;

export interface HeldBelief {
  readonly k: Constants;
  readonly back: Background;
  readonly material: Material;
  readonly meter: MeterName;
  readonly origin: OriginName;
  readonly kit: number | undefined;
  /** Half the width of the range, 90 of 100, in which that alkalinity lies; a kit's own error when not given. */
  readonly kitWithin?: number | undefined;
  /** µS/cm, 0 when not measured. */
  readonly conductivity: number;
  readonly airPpm: number;
  /** The meter was held in a buffer today and its error taken off the readings. */
  readonly isChecked?: boolean;
}

/**
 * Lasting error left after a check in a buffer: temperature, slope, weak water (judgement). The check is a reading
 * too: its own random error stays in all that follow.
 */
const CHECKED_OFFSET = 0.035;

/** Alkalinity above which few fresh waters lie, meq/L, when nothing else is known (judgement). */
const MOST_ALKALINITY = 5;
/** 1 meq/L of alkalinity goes with about 100 µS/cm (from memory); a little less is left as room. */
const MICROSIEMENS_PER_MEQ = 80;
/** A kit's step of 0.1 meq/L or 10 %, whichever is more (judgement). */
const kitError = (value: number): number => Math.max(0.1, 0.1 * Math.abs(value));

/** Standard errors from the middle to either end of a range that holds 90 of 100 (normal table). */
export const ERRORS_IN_90 = 1.645;

/** What is believed about a water and its meter before the readings speak. */
export const beliefsFrom = ({
  k,
  back,
  material,
  meter,
  origin,
  kit,
  kitWithin,
  conductivity,
  airPpm,
  isChecked = false,
}: HeldBelief): Beliefs => {
  const water = compose({ ...back, ionicStrength: Math.max(back.ionicStrength, 0.001) }, kit ?? 0, 0);
  const { noise, offset } = METERS[meter];
  const { conditions } = solve(k, water, { kind: 'at', ph: 6 });
  return {
    conditions,
    equivalents: material.equivalents,
    carbonEach: material.carbon,
    airCO2: conditions.kh * pressureOfCO2(airPpm),
    noise,
    offset: isChecked ? Math.min(Math.hypot(CHECKED_OFFSET, noise), offset) : offset,
    pressure: ORIGINS[origin],
    isBrown: origin === 'peat',
    kit:
      kit === undefined
        ? undefined
        : { value: kit, error: kitWithin === undefined ? kitError(kit) : kitWithin / ERRORS_IN_90 },
    mostAlkalinity: conductivity > 0 ? conductivity / MICROSIEMENS_PER_MEQ : MOST_ALKALINITY,
  };
};

import type { Constants } from '../carbonate/constants';
import type { Water } from '../carbonate/carbonate';
import { solve } from '../carbonate/carbonate';
import { afterDose, doseTo } from '../carbonate/dose';
import type { Unreachable } from '../carbonate/dose';
import type { Material } from '../carbonate/materials';

export interface Needed {
  /** mmol/L of the material still needed once the water is aired; 0 when air alone is enough. */
  readonly moles: number;
  /** pH once aired without and with it, and freshly mixed into the water as it is now. */
  readonly airedPH: number;
  readonly airedAfter: number;
  readonly nowAfter: number;
}

export interface NeededAsk {
  readonly k: Constants;
  readonly water: Water;
  readonly material: Material;
  readonly target: number;
  /** Aired at this pH or above the water is left alone. */
  readonly bottom: number;
  /** CO2 of the air, atm. */
  readonly pressure: number;
}

/**
 * What a water still needs after airing: nothing when air alone brings it to the bottom of the window,
 * otherwise the dose that stands at the target once aired.
 */
export const neededOnceAired = ({
  k,
  water,
  material,
  target,
  bottom,
  pressure,
}: NeededAsk): Needed | Unreachable => {
  const airedPH = solve(k, water, { kind: 'open', pressure }).ph;
  const moles = airedPH >= Math.min(bottom, target) ? 0 : doseTo(k, water, material, target, pressure);
  if (typeof moles !== 'number') return moles;
  return {
    moles,
    airedPH,
    airedAfter: afterDose(k, water, material, moles, pressure).state.ph,
    nowAfter: afterDose(k, water, material, moles, 'closed').state.ph,
  };
};

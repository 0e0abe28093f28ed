import type { Constants } from './constants';
import { solve } from './carbonate';
import { compose } from './readings';
import { afterDose } from './dose';
import { MATERIALS } from './materials';

/**
 * Where limestone stops dissolving in a soft water open to air: pH and alkalinity (meq/L) at calcite
 * saturation.
 */
export const limeLimit = (
  k: Constants,
  temperature: number,
  pressure: number,
): { ph: number; alkalinity: number } => {
  const water = compose({ temperature, calcium: 0, ionicStrength: 0 }, 0, 0);
  const { state } = afterDose(
    k,
    { ...water, carbon: solve(k, water, { kind: 'open', pressure }).carbon },
    MATERIALS['agricultural lime'],
    20,
    pressure,
  );
  return { ph: state.ph, alkalinity: state.alkalinity };
};

import { CAUTIONS } from '../functions/cautions';
import { MIX_MINUTES } from './waits';
import { MATERIAL_NAMES, cautionKeys } from '../families/water/carbonate/materials';

/** What the pane and the sheet say alike. */

export const WAIT = `Keep the water moving for ${MIX_MINUTES} minutes, the same time after every dose. Then measure at both ends of the vat: the two readings must agree. (${MIX_MINUTES} minutes is common practice, no source.)`;

export const MEASURE_AMMONIA = 'Fish are in the water: measure total ammonia before you raise the pH.';
export const limeAndFish = (material: string): string =>
  `Never put ${material} into water that holds fish. Use baking soda or soda ash.`;

/** Used as a safe stop: the numbers say no amount will do. */
export const unreachableWith = (material: string, target: number | string): string =>
  `No amount of ${material} brings this water to pH ${target}. Choose a lower pH or another product; baking soda ends near pH 8.3 in any water.`;

/** The cautions of this product alone, and of fish in the water. */
export const cautionsFor = (material: string, isStocked: boolean): readonly string[] => {
  const name = MATERIAL_NAMES.find((one) => one === material);
  return name ? cautionKeys(name, isStocked).map((key) => CAUTIONS[key] ?? '') : [];
};

export const AIR_FIRST =
  'Water straight from a well holds much carbon dioxide: as that leaves into the air, ' +
  'the pH goes on climbing for a day or more, also past the window. Aerate strongly ' +
  'for some hours before dosing, and measure again the day after.';

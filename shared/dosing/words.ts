import { CAUTIONS } from '../cautions';
import { LIMES } from './fields';

/** What the pane and the sheet say alike. */

/** Common practice, no source: what a stirred vat takes to mix, and a meter to come to rest. */
const WAIT_MINUTES = 15;
export const WAIT = `Keep the water moving for ${WAIT_MINUTES} minutes, the same time after every dose. Then measure at both ends of the vat: the two readings must agree. (${WAIT_MINUTES} minutes is common practice, no source.)`;

export const MEASURE_AMMONIA = 'Fish are in the water: measure total ammonia before you raise the pH.';
export const limeAndFish = (material: string): string => `Never put ${material} into water that holds fish. Use baking soda or soda ash.`;

/** Used as a safe stop: the numbers say no amount will do. */
export const unreachableWith = (material: string, target: number | string): string =>
  `No amount of ${material} brings this water to pH ${target}. Choose a lower pH or another product; baking soda ends near pH 8.3 in any water.`;

export const cautionsFor = (material: string, isStocked: boolean): readonly string[] =>
  [LIMES.includes(material) ? 'LIME' : 'SODA_ASH', ...(isStocked ? ['AMMONIA'] : [])].map((key) => CAUTIONS[key] ?? '');

export const BUCKET = 'Surer with one pH only: try a bucket first. Fill it from the vat, type its litres as the water in the vat, add a weak solution of the product step by step and write its readings here.';

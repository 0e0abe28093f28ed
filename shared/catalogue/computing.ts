import { broodFunctions } from '../families/brood';
import { countingFunctions } from '../families/counting';
import type { SheetFunction } from '../functions/define';
import { learningFunctions } from '../families/learning';
import { moneyFunctions } from '../families/money';
import { feedingFunctions } from '../families/feeding';
import { growthFunctions } from '../families/growth';
import { timingFunctions } from '../families/timing';
import { waterFunctions } from '../families/water';

/**
 * The functions that compute, in the order help shows them: what Excel loads on every start. The others (guides.ts)
 * come when the first of them is called.
 */
export const COMPUTING: readonly SheetFunction[] = [
  ...waterFunctions,
  ...timingFunctions,
  ...broodFunctions,
  ...countingFunctions,
  ...feedingFunctions,
  ...growthFunctions,
  ...moneyFunctions,
  ...learningFunctions,
];

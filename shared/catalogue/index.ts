import { broodFunctions } from '../families/brood';
import { careFunctions } from '../families/care';
import { checkFunctions } from '../records/functions';
import { countingFunctions } from '../families/counting';
import type { SheetFunction } from '../functions/define';
import { learningFunctions } from '../families/learning';
import { moneyFunctions } from '../families/money';
import { feedingFunctions } from '../families/feeding';
import { growthFunctions } from '../families/growth';
import { timingFunctions } from '../families/timing';
import { waterFunctions } from '../families/water';

/** Every sheet function, in the order help shows them. */
export const CATALOGUE: readonly SheetFunction[] = [
  ...waterFunctions,
  ...timingFunctions,
  ...broodFunctions,
  ...countingFunctions,
  ...feedingFunctions,
  ...growthFunctions,
  ...careFunctions,
  ...moneyFunctions,
  ...learningFunctions,
  ...checkFunctions,
];

const byName = new Map(CATALOGUE.map((fn) => [fn.name, fn]));
/** Finds a function by its full name, letter case ignored. */
export const findFunction = (name: string): SheetFunction | undefined => byName.get(name.toUpperCase());

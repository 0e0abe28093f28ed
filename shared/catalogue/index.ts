import { broodFunctions } from './brood';
import { checkFunctions } from './checks';
import { countingFunctions } from './counting';
import type { SheetFunction } from './define';
import { learningFunctions } from './learning';
import { planningFunctions } from './planning';
import { rearingFunctions } from './rearing';
import { timingFunctions } from './timing';
import { waterFunctions } from './water';

/** Every sheet function, in the order help shows them. */
export const CATALOGUE: readonly SheetFunction[] = [
  ...waterFunctions,
  ...timingFunctions,
  ...broodFunctions,
  ...countingFunctions,
  ...rearingFunctions,
  ...planningFunctions,
  ...learningFunctions,
  ...checkFunctions,
];

const byName = new Map(CATALOGUE.map((fn) => [fn.name, fn]));
/** Finds a function by its full name, letter case ignored. */
export const findFunction = (name: string): SheetFunction | undefined => byName.get(name.toUpperCase());

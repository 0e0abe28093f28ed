import type { SheetFunction } from '../functions/define';
import { COMPUTING } from './computing';
import { GUIDES } from './guides';

/** Every sheet function, in the order help shows them. */
export const CATALOGUE: readonly SheetFunction[] = [...COMPUTING, ...GUIDES];

const byName = new Map(CATALOGUE.map((fn) => [fn.name, fn]));
/** Finds a function by its full name, letter case ignored. */
export const findFunction = (name: string): SheetFunction | undefined => byName.get(name.toUpperCase());

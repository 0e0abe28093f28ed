import type { SheetFunction } from '../define';
import { femalesNeeded } from './females';
import { hormoneVolume } from './hormone';

export const broodFunctions: readonly SheetFunction[] = [hormoneVolume, femalesNeeded];

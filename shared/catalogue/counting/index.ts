import type { SheetFunction } from '../define';
import { eggsByWeight } from './lots';
import { shareOf } from './shares';

export const countingFunctions: readonly SheetFunction[] = [eggsByWeight, shareOf];

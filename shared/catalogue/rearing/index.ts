import type { SheetFunction } from '../define';
import { cystsForLarvae } from './cysts';
import { feedDaily } from './feed';
import { feedPlan } from './feedPlan';

export const rearingFunctions: readonly SheetFunction[] = [cystsForLarvae, feedDaily, feedPlan];

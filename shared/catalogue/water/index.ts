import type { SheetFunction } from '../define';
import { ammoniaShare } from './ammonia';

export const waterFunctions: readonly SheetFunction[] = [ammoniaShare];

import type { SheetFunction } from '../define';
import { ammoniaShare } from './ammonia';
import { bufferDose } from './bufferDose';

export const waterFunctions: readonly SheetFunction[] = [bufferDose, ammoniaShare];

import type { SheetFunction } from '../define';
import { incubationFactor, latencyOffset } from './clocks';
import { rateMean, ratePooled } from './pooled';
import { rateLimits, rateList } from './watch';

export const learningFunctions: readonly SheetFunction[] = [
  ratePooled,
  rateMean,
  latencyOffset,
  incubationFactor,
  rateLimits,
  rateList,
];

import type { SheetFunction } from '../../functions/define';
import { incubationFactor, latencyOffset } from './records/clocks';
import { rateMean, ratePooled } from './records/pooled';
import { rateLimits } from './records/watch';

export const learningFunctions: readonly SheetFunction[] = [
  ratePooled,
  rateMean,
  latencyOffset,
  incubationFactor,
  rateLimits,
];

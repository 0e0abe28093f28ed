import type { SheetFunction } from '../define';
import { feedingStart, hatchTime, hatchWindowFields, incubationHours, yolkGone } from './hatching';
import { injectionTime, latencyHours, stripTime, stripWindowFields } from './latency';

export const timingFunctions: readonly SheetFunction[] = [
  latencyHours, stripTime, stripWindowFields, injectionTime,
  incubationHours, hatchTime, hatchWindowFields, feedingStart, yolkGone,
];

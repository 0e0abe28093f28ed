import type { SheetFunction } from '../../functions/define';
import { baseFit, baseTemperature, degreeHoursValue, degreeTime } from './records/degrees';
import { feedingStart, hatchTime, hatchWindowFields, incubationHours, yolkGone } from './records/hatching';
import { injectionTime, latencyHours, stripTime, stripWindowFields } from './records/latency';
import { logCheck, logDegreeHours, logFinish, logProgress, logWindow } from './records/log';
import { runClock } from './records/runClock';
import { temperatureCheck } from './records/tolerance';

export const timingFunctions: readonly SheetFunction[] = [
  latencyHours,
  stripTime,
  stripWindowFields,
  injectionTime,
  incubationHours,
  hatchTime,
  hatchWindowFields,
  feedingStart,
  yolkGone,
  runClock,
  logFinish,
  logWindow,
  logProgress,
  logCheck,
  logDegreeHours,
  degreeHoursValue,
  degreeTime,
  baseTemperature,
  baseFit,
  temperatureCheck,
];

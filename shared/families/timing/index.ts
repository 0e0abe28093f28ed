import type { SheetFunction } from '../../functions/define';
import { baseFit, baseTemperature, degreeHoursValue, degreeTime } from './records/degrees';
import { stripAdvice, stripEvidence } from './records/evidence';
import { feedingStart, hatchTime, hatchWindowFields, incubationHours, yolkGone } from './records/hatching';
import { injectionTime, latencyHours, stripTime, stripWindowFields } from './records/latency';
import { profileList, profileTable } from './records/lists';
import { logCheck, logDegreeHours, logFinish, logProgress, logWindow } from './records/log';
import { runClock } from './records/runClock';
import { temperatureCheck } from './records/tolerance';

export const timingFunctions: readonly SheetFunction[] = [
  latencyHours,
  stripTime,
  stripWindowFields,
  stripAdvice,
  stripEvidence,
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
  profileList,
  profileTable,
];

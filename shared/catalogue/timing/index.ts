import type { SheetFunction } from '../define';
import { baseFit, baseTemperature, degreeHoursValue, degreeTime } from './degrees';
import { feedingStart, hatchTime, hatchWindowFields, incubationHours, yolkGone } from './hatching';
import { injectionTime, latencyHours, stripTime, stripWindowFields } from './latency';
import { profileList, profileTable } from './lists';
import { logCheck, logDegreeHours, logFinish, logProgress, logWindow } from './log';
import { runClock } from './runClock';
import { temperatureCheck } from './tolerance';

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
  profileList,
  profileTable,
];

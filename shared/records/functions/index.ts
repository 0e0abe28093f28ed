import type { SheetFunction } from '../../functions/define';
import { checkHistory, checkRound } from './lists';
import { checkConversion, checkFeed, checkGrowth, checkPH } from './rearing';
import { checkDose, checkEggs, checkShare, checkStages } from './spawning';
import { checkDates, checkHatchTime, checkLatency, checkTemperature } from './times';

export const checkFunctions: readonly SheetFunction[] = [
  checkStages,
  checkShare,
  checkEggs,
  checkDose,
  checkLatency,
  checkHatchTime,
  checkDates,
  checkTemperature,
  checkPH,
  checkFeed,
  checkGrowth,
  checkConversion,
  checkHistory,
  checkRound,
];

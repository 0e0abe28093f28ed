import type { SheetFunction } from '../../functions/define';
import { daysToSize, fromRation, gain, sgr, weightLater } from './records/growth';
import {
  cannibalismOnset,
  cannibalismStage,
  classes,
  condition,
  gradingDates,
  spread,
} from './records/sizes';
import { larvaWeight } from './records/larvae';
import { stockingCheck, stockingNumber, vatsNeeded, weightDensity } from './records/stocking';
import { fcr, load, survivalAfter, survivalDaily, survivalImplied } from './records/survival';
import { daysByTgc, tgc, weightByTgc } from './records/thermal';
import { ammoniaMade, flowAmmonia, flowOxygen, oxygenForFeed, oxygenUse } from './records/water';

export const growthFunctions: readonly SheetFunction[] = [
  stockingNumber,
  vatsNeeded,
  stockingCheck,
  weightDensity,
  larvaWeight,
  oxygenUse,
  oxygenForFeed,
  ammoniaMade,
  flowOxygen,
  flowAmmonia,
  fcr,
  sgr,
  gain,
  weightLater,
  daysToSize,
  fromRation,
  tgc,
  weightByTgc,
  daysByTgc,
  survivalDaily,
  survivalAfter,
  survivalImplied,
  spread,
  classes,
  gradingDates,
  cannibalismOnset,
  cannibalismStage,
  condition,
  load,
];

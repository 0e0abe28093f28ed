import type { SheetFunction } from '../define';
import { cystsForLarvae } from './cysts';
import { feedDaily } from './feed';
import { feedPlan } from './feedPlan';
import { daysToSize, fromRation, gain, sgr, weightLater } from './growth';
import {
  cystsDecapsulation,
  cystsEfficiency,
  cystsHatched,
  cystsOutput,
  cystsSynchrony,
  cystsWater,
} from './hatching';
import { rationGuide, rationLookup, rationStudies } from './ration';
import { cannibalismOnset, cannibalismStage, classes, condition, gradingDates, spread } from './sizes';
import { stockingCheck, stockingNumber, stockingStudies, vatsNeeded, weightDensity } from './stocking';
import { fcr, load, survivalAfter, survivalDaily, survivalImplied } from './survival';
import { daysByTgc, tgc, weightByTgc } from './thermal';
import { ammoniaMade, flowAmmonia, flowOxygen, oxygenForFeed, oxygenUse } from './water';
import { weaningPlan } from './weaning';

export const rearingFunctions: readonly SheetFunction[] = [
  stockingNumber,
  vatsNeeded,
  stockingCheck,
  stockingStudies,
  weightDensity,
  oxygenUse,
  oxygenForFeed,
  ammoniaMade,
  flowOxygen,
  flowAmmonia,
  cystsForLarvae,
  cystsWater,
  cystsEfficiency,
  cystsHatched,
  cystsOutput,
  cystsSynchrony,
  cystsDecapsulation,
  weaningPlan,
  feedDaily,
  rationLookup,
  rationGuide,
  rationStudies,
  feedPlan,
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

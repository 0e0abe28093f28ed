import type { SheetFunction } from '../../functions/define';
import { bagDead } from './records/arrival';
import { blankCheck } from './records/blank';
import { hatchWhy, larvaeWhy } from './records/causes';
import { feedGrain } from './records/feedSize';
import { deathsExpected } from './records/losses';
import { formalinVolume, unitRead } from './records/measures';
import { netArea } from './records/nets';
import { airMinutes, airSteps, waterChange } from './records/power';
import { ripeFemale, ripeMale } from './records/ripeness';
import { bagNumber, countOut } from './records/selling';
import { ammoniaCheck, phCheck } from './records/trials';
import { chlorineDose, chlorineNeutralise, limeMud, washSteps } from './records/wash';

/** The daily work around a vat: nets, washing, water, power, sizes, bags, losses, ripeness. */
export const careFunctions: readonly SheetFunction[] = [
  netArea,
  ripeFemale,
  ripeMale,
  waterChange,
  airMinutes,
  airSteps,
  phCheck,
  ammoniaCheck,
  feedGrain,
  deathsExpected,
  hatchWhy,
  larvaeWhy,
  bagNumber,
  bagDead,
  countOut,
  chlorineDose,
  chlorineNeutralise,
  limeMud,
  washSteps,
  formalinVolume,
  unitRead,
  blankCheck,
];

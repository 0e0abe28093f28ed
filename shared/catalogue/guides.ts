import { hormonePrepare, preparationList } from '../families/brood/records/preparations';
import { careFunctions } from '../families/care';
import { stripAdvice, stripEvidence } from '../families/timing/records/evidence';
import { rationStudies } from '../families/feeding/records/studies';
import { larvaWeight } from '../families/growth/records/larvae';
import { stockingStudies } from '../families/growth/records/studies';
import { rateList } from '../families/learning/records/rateList';
import { profileList, profileTable } from '../families/timing/records/lists';
import { saltCheck, saltLimits } from '../families/water/records/saltTrials';
import type { SheetFunction } from '../functions/define';
import { checkFunctions } from '../records/functions';

/**
 * Functions that mostly hand out words, lists, steps and findings: asked now and then, so the calculation
 * bundle does not carry them. guideIds.ts names them before they are there.
 */
export const GUIDES: readonly SheetFunction[] = [
  stripAdvice,
  stripEvidence,
  profileList,
  profileTable,
  hormonePrepare,
  preparationList,
  saltLimits,
  saltCheck,
  stockingStudies,
  larvaWeight,
  rationStudies,
  rateList,
  ...careFunctions,
  ...checkFunctions,
];

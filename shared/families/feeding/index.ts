import type { SheetFunction } from '../../functions/define';
import { cystsForLarvae } from './records/cysts';
import { feedDaily } from './records/feed';
import { feedPlan } from './records/feedPlan';
import {
  cystsDecapsulation,
  cystsEfficiency,
  cystsHatched,
  cystsOutput,
  cystsSynchrony,
  cystsWater,
} from './records/hatching';
import { rationGuide, rationLookup } from './records/ration';
import { weaningPlan } from './records/weaning';

export const feedingFunctions: readonly SheetFunction[] = [
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
  feedPlan,
];

import type { SheetFunction } from '../define';
import { countInterval, eggsCompare, sampleSize, samplesNeeded, shareCompare } from './compare';
import { eggsByWeight } from './lots';
import { shareOf } from './shares';
import { fertilisationShare, hatchShare, shareSamples, stagesProduct, survivalShare } from './stages';
import { eggsByVolume, fishByWeight, larvaeByVolume } from './volumes';

export const countingFunctions: readonly SheetFunction[] = [
  eggsByWeight,
  eggsByVolume,
  larvaeByVolume,
  fishByWeight,
  countInterval,
  shareOf,
  fertilisationShare,
  hatchShare,
  survivalShare,
  shareSamples,
  shareCompare,
  eggsCompare,
  sampleSize,
  samplesNeeded,
  stagesProduct,
];

import type { SheetFunction } from '../../functions/define';
import { countInterval, eggsCompare, sampleSize, samplesNeeded, shareCompare } from './records/compare';
import { eggsByWeight } from './records/lots';
import { shareOf } from './records/shares';
import { fertilisationShare, hatchShare, shareSamples, stagesProduct, survivalShare } from './records/stages';
import { eggsByVolume, fishByWeight, larvaeByVolume } from './records/volumes';

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

import type { SheetFunction } from '../../functions/define';
import {
  broodWeightNeeded,
  eggsExpected,
  femalesBySpawn,
  femalesNeeded,
  femalesSeason,
} from './records/females';
import {
  hormoneDose,
  hormoneSplit,
  hormoneTable,
  hormoneVials,
  hormoneVolume,
  pituitaryDonors,
} from './records/hormone';
import {
  breedersEffective,
  inbreedingAfterValue,
  inbreedingRateValue,
  lotBreeders,
  lotKeep,
  malesForRate,
} from './records/inbreeding';
import { malesNeeded, milt, miltDiluent } from './records/milt';
import { pairingCheck, pairingPlan } from './records/pairing';
import { formalinDose, frySaltDose } from './records/treatments';

export const broodFunctions: readonly SheetFunction[] = [
  hormoneVolume,
  hormoneDose,
  hormoneTable,
  hormoneSplit,
  hormoneVials,
  pituitaryDonors,
  femalesNeeded,
  femalesSeason,
  femalesBySpawn,
  broodWeightNeeded,
  eggsExpected,
  milt,
  malesNeeded,
  miltDiluent,
  breedersEffective,
  inbreedingRateValue,
  inbreedingAfterValue,
  malesForRate,
  pairingPlan,
  pairingCheck,
  lotBreeders,
  lotKeep,
  formalinDose,
  frySaltDose,
];

import type { SheetFunction } from '../define';
import { broodWeightNeeded, eggsExpected, femalesBySpawn, femalesNeeded, femalesSeason } from './females';
import {
  hormoneDose,
  hormoneSplit,
  hormoneTable,
  hormoneVials,
  hormoneVolume,
  pituitaryDonors,
} from './hormone';
import {
  breedersEffective,
  inbreedingAfterValue,
  inbreedingRateValue,
  lotBreeders,
  lotKeep,
  malesForRate,
} from './inbreeding';
import { malesNeeded, milt, miltDiluent } from './milt';
import { pairingCheck, pairingPlan } from './pairing';
import { formalinDose, frySaltDose } from './treatments';

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

import type { SheetFunction } from '../define';
import { aerationPH, carbonDioxide, carbonDioxideAir, driftPH, driftTable, waterPH } from './aeration';
import { ammoniaLimit, ammoniaRise, ammoniaShare, ammoniaToxic } from './ammonia';
import { bufferDose } from './bufferDose';
import { bufferEquivalent, bufferOutcome, bufferPH, bufferSteps, waterState } from './bufferOutcome';
import { alkalinityConvert, conductivityAt25, hardnessConvert, limeLimitFunction } from './hardness';
import { exchangeResult, exchangeVolume, flowMeasured, flowNeeded, turnoverTime, waterMix } from './mixing';
import { oxygenContent, oxygenPercent, oxygenSaturationFunction } from './oxygen';
import { alkalinityAerated, bufferJar, bufferKit, bufferRange, bufferTrial } from './phOnly';
import { bufferRule, bufferRuleCheck } from './rule';
import { saltCheck, saltDose, saltFromConductivity, saltLimits } from './salt';
import { bufferCurve, bufferFit, bufferNext } from './titration';
import { vatCone, vatDrum, vatOval, vatRectangle, vatRound, vatTapered } from './vats';

export const waterFunctions: readonly SheetFunction[] = [
  bufferDose,
  bufferNext,
  bufferFit,
  bufferCurve,
  bufferSteps,
  bufferPH,
  bufferOutcome,
  bufferRange,
  bufferTrial,
  bufferKit,
  bufferJar,
  bufferRule,
  bufferRuleCheck,
  bufferEquivalent,
  waterState,
  waterPH,
  waterMix,
  aerationPH,
  alkalinityAerated,
  driftPH,
  driftTable,
  limeLimitFunction,
  carbonDioxide,
  carbonDioxideAir,
  ammoniaShare,
  ammoniaToxic,
  ammoniaLimit,
  ammoniaRise,
  oxygenSaturationFunction,
  oxygenPercent,
  oxygenContent,
  alkalinityConvert,
  hardnessConvert,
  conductivityAt25,
  saltDose,
  saltFromConductivity,
  saltLimits,
  saltCheck,
  vatRectangle,
  vatRound,
  vatOval,
  vatCone,
  vatTapered,
  vatDrum,
  exchangeVolume,
  exchangeResult,
  turnoverTime,
  flowNeeded,
  flowMeasured,
];

import type { SheetFunction } from '../../functions/define';
import {
  aerationPH,
  carbonDioxide,
  carbonDioxideAir,
  driftPH,
  driftTable,
  waterPH,
} from './records/aeration';
import { ammoniaLimit, ammoniaRise, ammoniaShare, ammoniaToxic } from './records/ammonia';
import { bufferAired } from './records/buffer/bufferAired';
import { bufferDose } from './records/buffer/bufferDose';
import { bufferEquivalent, bufferOutcome, bufferPH, waterState } from './records/buffer/bufferOutcome';
import { bufferSteps } from './records/buffer/bufferSteps';
import { alkalinityConvert, conductivityAt25, hardnessConvert, limeLimitFunction } from './records/hardness';
import {
  exchangeResult,
  exchangeVolume,
  flowMeasured,
  flowNeeded,
  turnoverTime,
  waterMix,
} from './records/mixing';
import { oxygenContent, oxygenPercent, oxygenSaturationFunction } from './records/oxygen';
import { alkalinityAerated, bufferJar } from './records/buffer/bufferJar';
import { bufferKit } from './records/buffer/bufferKit';
import { bufferRange, bufferTrial } from './records/phOnly';
import { bufferRule, bufferRuleCheck } from './records/rule';
import { saltDose, saltFromConductivity } from './records/salt';
import { bufferCurve, bufferFit } from './records/buffer/bufferFit';
import { bufferNext } from './records/buffer/bufferNext';
import { vatCone, vatDrum, vatOval, vatRectangle, vatRound, vatTapered } from './records/vats';

export const waterFunctions: readonly SheetFunction[] = [
  bufferDose,
  bufferAired,
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

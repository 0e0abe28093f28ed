import { findFunction } from './index';
import { runNow } from '../base/steps';
import type { FreezeOptions, FreezeResult, Inspection, Repair, ShareProgress } from '../files/share';
import { freezeStepsBy, inspectStepsBy, repairStepsBy } from '../files/share';

/** Shared copies with the whole catalogue as the table of functions: versions, units and sources on the page. */
export const freezeSteps = (
  file: Uint8Array,
  options: FreezeOptions,
): Generator<ShareProgress, FreezeResult> => freezeStepsBy(findFunction, file, options);
export const freeze = (file: Uint8Array, options: FreezeOptions): FreezeResult =>
  runNow(freezeSteps(file, options));

export const inspectSteps = (file: Uint8Array): Generator<ShareProgress, Inspection> =>
  inspectStepsBy(findFunction, file);
export const inspect = (file: Uint8Array): Inspection => runNow(inspectSteps(file));
export const repairSteps = (file: Uint8Array): Generator<ShareProgress, Repair> =>
  repairStepsBy(findFunction, file);
export const repairCalls = (file: Uint8Array): Repair => runNow(repairSteps(file));

export * from '../files/share';

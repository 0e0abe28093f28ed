import { findFunction } from './index';
import { runNow } from '../base/steps';
import type { FreezeOptions, FreezeResult, ShareProgress } from '../files/share';
import { freezeStepsBy } from '../files/share';

/** Shared copies with the whole catalogue as the table of functions: versions, units and sources on the page. */
export const freezeSteps = (
  file: Uint8Array,
  options: FreezeOptions,
): Generator<ShareProgress, FreezeResult> => freezeStepsBy(findFunction, file, options);
export const freeze = (file: Uint8Array, options: FreezeOptions): FreezeResult =>
  runNow(freezeSteps(file, options));

export * from '../files/share';

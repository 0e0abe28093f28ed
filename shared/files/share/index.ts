import { freezeStepsBy } from './freeze';
import { choiceSteps } from './decisions/headings';
import { inspectSteps } from './decisions/inspect';
import type { Inspection } from './decisions/options';
import type { Repair } from './repair';
import { repairSteps } from './repair';
import { runNow } from '../../base/steps';
import type { Verification } from './proof/verify';
import { verifySteps } from './proof/verify';

/**
 * A copy that opens anywhere with the same values, and says where its numbers came from. Bytes in, bytes out;
 * the input is never changed.
 */

export const inspect = (file: Uint8Array): Inspection => runNow(inspectSteps(file));
export const verify = (file: Uint8Array, expected?: string): Verification =>
  runNow(verifySteps(file, expected));
export const repairCalls = (file: Uint8Array): Repair => runNow(repairSteps(file));

export { choiceSteps, freezeStepsBy, inspectSteps, repairSteps, verifySteps };
export { runInSlices } from './run';
export type { Slices } from './run';
export type {
  FreezeOptions,
  FreezeReport,
  FreezeResult,
  Inspection,
  ShareProgress,
  SheetSummary,
} from './decisions/options';
export type { ColumnChoice, SheetChoice } from './decisions/headings';
export type { ShareProblem } from './decisions/problems';
export type { Proof } from './proof/search';
export type { Repair, Verification };

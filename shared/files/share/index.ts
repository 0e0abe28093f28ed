import { freezeStepsBy } from './freeze';
import { choiceSteps } from './decisions/headings';
import { inspectStepsBy } from './decisions/inspect';
import type { Repair } from './repair';
import { repairStepsBy } from './repair';
import { runNow } from '../../base/steps';
import type { Verification } from './proof/verify';
import { verifySteps } from './proof/verify';

/**
 * A copy that opens anywhere with the same values, and says where its numbers came from. Bytes in, bytes out;
 * the input is never changed.
 */

export const verify = (file: Uint8Array, expected?: string): Verification =>
  runNow(verifySteps(file, expected));

export { choiceSteps, freezeStepsBy, inspectStepsBy, repairStepsBy, verifySteps };
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

import type { AuditAsk, AuditReport } from './findings/run';
import { auditSheets } from './findings/run';
import { readFileCells } from './read';

/** Called with the share done; cancels when it answers false. */
export type Watch = (share: number) => boolean | undefined;
export type CheckedFile =
  | { readonly report: AuditReport; readonly notes: readonly string[] }
  | { readonly fault: string }
  | { readonly isCancelled: true };

/**
 * Runs steps to their end, reporting each; undefined when it was cancelled. A host that must stay responsive
 * takes the steps itself.
 */
export function runToEnd<T>(steps: Generator<number, T>, watch: Watch): { readonly value: T } | undefined {
  for (let step = steps.next(); ; step = steps.next()) {
    if (step.done) return { value: step.value };
    if (watch(step.value) === false) return undefined;
  }
}

/** Half of the time goes into reading. */
const READING = 0.5;

/** Reads a file and checks it. Never throws for a bad file. */
export function checkFile(
  bytes: Uint8Array,
  fileName: string,
  ask: AuditAsk = {},
  watch: Watch = () => true,
): CheckedFile {
  const read = runToEnd(readFileCells(bytes, fileName), (share) => watch(READING * share));
  if (!read) return { isCancelled: true };
  if ('fault' in read.value) return read.value;
  const { sheets, notes } = read.value;
  const done = runToEnd(auditSheets(sheets, ask), (share) => watch(READING + (1 - READING) * share));
  if (!done) return { isCancelled: true };
  return done.value.tables.length === 0
    ? {
        fault:
          'No column of the file was recognised as a record of a hatchery. Name the columns in ' +
          'a header row (Date, Eggs, Temperature …) or choose them in the pane.',
      }
    : { report: done.value, notes };
}

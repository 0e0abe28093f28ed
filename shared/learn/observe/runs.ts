import type { RunRecord } from '../../records/schema';
import type { Observation } from './reading';

/** Rows of one run, or of one day where runs have no name. */
export const runNameOf = ({ values: v, sheet, row }: RunRecord): string => {
  const day = v.injected?.value ?? v.date?.value;
  return v.run?.value ?? (day === undefined ? `${sheet}!${row}` : String(Math.floor(day)));
};

/** Females and vats of one run share its luck: their rows are put together before runs are pooled. */
export function byRun(seen: readonly Observation[]): (readonly Observation[])[] {
  const runs = new Map<string, Observation[]>();
  for (const one of seen) {
    const run = runs.get(runNameOf(one.record));
    if (run) run.push(one);
    else runs.set(runNameOf(one.record), [one]);
  }
  return [...runs.values()];
}

import type { Observation } from './reading';

/** Rows of one run, or of one day where runs have no name. */
const runOf = ({ record: { values: v, sheet, row } }: Observation): string => {
  const day = v.injected?.value ?? v.date?.value;
  return v.run?.value ?? (day === undefined ? `${sheet}!${row}` : String(Math.floor(day)));
};

/** Females and vats of one run share its luck: their rows are put together before runs are pooled. */
export function byRun(seen: readonly Observation[]): (readonly Observation[])[] {
  const runs = new Map<string, Observation[]>();
  for (const one of seen) {
    const run = runs.get(runOf(one));
    if (run) run.push(one);
    else runs.set(runOf(one), [one]);
  }
  return [...runs.values()];
}

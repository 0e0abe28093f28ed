import type { RunRecord } from '../../records/schema';
import { isAccepted } from '../../records/schema';
import { gramsFromKilograms } from '../../units/convert';
import { runNameOf } from './runs';

/** What one female gave for her weight: eggs where all rows of the run say how many are in a gram, else grams. */
function givenBy({ values: v }: RunRecord): { readonly share: number; readonly perGram: number } | undefined {
  // Females weighed together say nothing of one of them.
  if ((v.females?.value ?? 1) > 1 || !v.femaleWeight) return undefined;
  const share = v.eggYield?.value ?? (v.eggWeight?.value ?? NaN) / gramsFromKilograms(v.femaleWeight.value);
  const perGram = v.eggsPerGram?.value ?? NaN;
  return share > 0 && share < 1 ? { share, perGram } : undefined;
}

/** Logarithms of what the females gave, run by run; only runs with several females that were measured one by one. */
export function femalesByRun(records: readonly RunRecord[]): (readonly number[])[] {
  const runs = new Map<string, { readonly share: number; readonly perGram: number }[]>();
  for (const record of records.filter(isAccepted)) {
    const given = givenBy(record);
    if (!given) continue;
    const run = runNameOf(record);
    runs.set(run, [...(runs.get(run) ?? []), given]);
  }
  return [...runs.values()]
    .map((run) => {
      const isCounted = run.every(({ perGram }) => perGram > 0);
      return run.map(({ share, perGram }) => Math.log(isCounted ? share * perGram : share));
    })
    .filter((run) => run.length > 1 && run.some((x) => Math.abs(x - (run[0] ?? 0)) > SAME));
}
/** Rows that differ by less were filled in from one weighing. */
const SAME = 1e-6;

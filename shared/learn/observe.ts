import type { RunRecord } from '../audit/schema';
import { isAccepted } from '../audit/schema';
import { ageRates } from './observe/ages';
import { countRates } from './observe/counts';
import { eggRates } from './observe/eggs';
import type { Observation, Reader, Settings, Skipped } from './observe/reading';
import { clockRates } from './observe/clocks';

export type { Observation, Settings, Skipped, TemperatureLog } from './observe/reading';

export interface Observed {
  readonly observations: readonly Observation[];
  /** What could not be used although the record says something, with the reason. */
  readonly skipped: readonly Skipped[];
  readonly records: number;
  /** Records left out because the check of records found something in them. */
  readonly refused: number;
}

const READERS: readonly Reader[] = [clockRates, eggRates, countRates, ageRates];

/** Accepted records → one observation per rate and run. Nothing is corrected: what does not fit is named and left out. */
export function observe(records: readonly RunRecord[], settings: Settings = {}): Observed {
  const accepted = records.filter(isAccepted);
  const observations: Observation[] = [];
  const skipped: Skipped[] = [];
  // Only a farm that writes down its failures says anything about them.
  const isFailureKept = accepted.some((r) => r.values.eggWeight?.value === 0 || r.values.eggs?.value === 0);
  for (const record of accepted)
    for (const read of READERS)
      for (const got of read(record, { ...settings, isFailureKept }))
        if ('because' in got) skipped.push({ ...got, record });
        else observations.push({ ...got, record });
  return { observations, skipped, records: accepted.length, refused: records.length - accepted.length };
}
